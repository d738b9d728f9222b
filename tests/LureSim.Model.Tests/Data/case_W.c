/*
 * Case W of docs/reference-cases.md as explicit equations, written from that text with ExplicitWalk.cs known; classical Runge-Kutta of order 4 with equal steps.
 *     gcc -O2 -o case_W case_W.c -lm && ./case_W 2.5e-7 > case_W_rk4.csv
 * The argument is the step, s; 0.005 s must be a whole number of steps. Prints one row per 5 ms, from 0 to 4 s;
 * tensions are means over the 5 ms before.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define N 40
#define INNER (N - 1)
#define V0 (3 * INNER)
#define HULL (6 * INNER)
#define ROD (HULL + 8)
#define DIM (ROD + 4)
#define STRIPS 21

static const double pi = 3.14159265358979323846;
static const double strip_x[STRIPS] = {
    -0.049080952, -0.043842857, -0.038604762, -0.033366667, -0.028128571, -0.022890476, -0.017652381, -0.012414286, -0.007176190, -0.001938095, 0.003300000,
    0.008538095, 0.013776190, 0.019014286, 0.024252381, 0.029490476, 0.034728571, 0.039966667, 0.045204762, 0.050442857, 0.055680952};
static const double strip_h[STRIPS] = {
    0.006946744, 0.010959673, 0.012108108, 0.012836314, 0.013296146, 0.013560463, 0.013672514, 0.013662059, 0.013552542, 0.013365498, 0.013125691,
    0.012857172, 0.012535890, 0.012137081, 0.011639210, 0.011018833, 0.010246190, 0.009278032, 0.008041500, 0.006384738, 0.003807433};
static const double g = 9.81, water = 1000.0, air = 1.225, arm = 0.0539, stroke = 0.20, retreat = 0.45;
static const double rest = 15.0 / N, diameter = 0.30e-3, k = 5000.0 / (15.0 / N), c = 4.5 / (15.0 / N);
static const double m11 = 0.01908, m22 = 0.02877713631, m23 = 2.454979372e-6, m33 = 2.1202747e-5;
static double tension[N];

static double smooth(double q)
{
    q = q < 0.0 ? 0.0 : q > 1.0 ? 1.0 : q;
    return q * q * (3.0 - 2.0 * q);
}

/* s, s', s'' of the stroke. */
static void pulse(double t, double s[3])
{
    double u = t - 0.5 * floor(t / 0.5), w = pi / 0.10, b = pi / 0.15;
    if (u < 0.10) {
        s[0] = 0.5 * (1.0 - cos(w * u)), s[1] = 0.5 * w * sin(w * u), s[2] = 0.5 * w * w * cos(w * u);
    } else if (u < 0.25) {
        double a = b * (u - 0.10);
        s[0] = 0.5 * (1.0 + cos(a)), s[1] = -0.5 * b * sin(a), s[2] = -0.5 * b * b * cos(a);
    } else {
        s[0] = s[1] = s[2] = 0.0;
    }
}

static void hull_rates(const double *h, const double pull[3], double area, double node_mass, double *d)
{
    double u = h[3], v = h[4], r = h[5], cs = cos(h[2]), sn = sin(h[2]);
    double fx = pull[0] * cs + pull[1] * sn, fy = -pull[0] * sn + pull[1] * cs;
    double xd = -0.04301642896 * fabs(u) * u, yd = 0.0, nd = 0.0, hook[2] = {0.0055, -0.0495};
    for (int i = 0; i < STRIPS; i++) {
        double w = v + r * strip_x[i], f = -0.5 * water * 1.1 * strip_h[i] * (0.110 / 21.0) * fabs(w) * w;
        yd += f, nd += f * strip_x[i];
    }
    for (int i = 0; i < 2; i++) {
        double w = v + r * hook[i], q = 0.5 * water * 6e-5 * sqrt(u * u + w * w);
        xd -= q * u, yd -= q * w, nd -= q * w * hook[i];
    }
    double a = r * (m22 * v + m23 * r) + xd + fx, b = -r * m11 * u + yd + fy;
    double e = -(m22 - m11) * u * v - m23 * u * r + nd + arm * fy, det = m22 * m33 - m23 * m23;
    double half = 0.5 * (water * g * area * rest * smooth(0.5 - h[6] / 0.010) - node_mass * g);
    d[0] = u * cs - v * sn, d[1] = u * sn + v * cs, d[2] = r;
    d[3] = a / m11, d[4] = (m33 * b - m23 * e) / det, d[5] = (m22 * e - m23 * b) / det;
    d[6] = h[7];
    d[7] = (pull[2] + half - 3.879457554 * h[6] - 0.09884074569 * h[7]) / 0.00699517399;
}

static void rates(double t, const double *y, double *d)
{
    const double area = 0.25 * pi * diameter * diameter, node_mass = 970.0 * area * rest, flex[3] = {0.8, 0.0, 0.6};
    const double *h = y + HULL, *q = y + ROD;
    double x[N + 1][3], v[N + 1][3], dir[N][3], s[3], cs = cos(h[2]), sn = sin(h[2]);
    pulse(t, s);
    for (int a = 0; a < 3; a++) {
        x[0][a] = flex[a] * (q[0] + q[2] - stroke * s[0]);
        v[0][a] = flex[a] * (q[1] + q[3] - stroke * s[1]);
    }
    x[0][0] -= retreat * t, x[0][2] += 0.8, v[0][0] -= retreat;
    memcpy(x[1], y, V0 * sizeof(double));
    memcpy(v[1], y + V0, V0 * sizeof(double));
    x[N][0] = h[0] + arm * cs, x[N][1] = h[1] + arm * sn, x[N][2] = h[6];
    v[N][0] = h[3] * cs - (h[4] + arm * h[5]) * sn, v[N][1] = h[3] * sn + (h[4] + arm * h[5]) * cs, v[N][2] = h[7];
    for (int j = 0; j < N; j++) {
        double e[3], length = 0.0, rate = 0.0;
        for (int a = 0; a < 3; a++) {
            e[a] = x[j + 1][a] - x[j][a], length += e[a] * e[a];
        }
        length = sqrt(length);
        for (int a = 0; a < 3; a++) {
            dir[j][a] = e[a] / length, rate += dir[j][a] * (v[j + 1][a] - v[j][a]);
        }
        double over = length - rest, pulled = k * over + c * rate;
        tension[j] = over > 0.0 && pulled > 0.0 ? pulled : 0.0;
    }
    memcpy(d, y + V0, V0 * sizeof(double));
    for (int i = 1; i < N; i++) {
        double u[3], norm = 0.0, along = 0.0, across = 0.0, n[3];
        for (int a = 0; a < 3; a++) {
            u[a] = dir[i - 1][a] + dir[i][a], norm += u[a] * u[a];
        }
        norm = sqrt(norm);
        for (int a = 0; a < 3; a++) {
            u[a] /= norm, along += u[a] * v[i][a];
        }
        for (int a = 0; a < 3; a++) {
            n[a] = v[i][a] - along * u[a], across += n[a] * n[a];
        }
        across = sqrt(across);
        double wet = smooth(0.5 - x[i][2] / 0.010), w = 0.5 * (air + 998.775 * wet) * diameter * rest;
        for (int a = 0; a < 3; a++) {
            double f = -w * (1.2 * across * n[a] + 0.01 * pi * fabs(along) * along * u[a]) + tension[i] * dir[i][a] - tension[i - 1] * dir[i - 1][a];
            f += a == 2 ? water * g * area * rest * wet - node_mass * g : 0.0;
            d[V0 + 3 * (i - 1) + a] = f / node_mass;
        }
    }
    double pull[3], tip = 0.0;
    for (int a = 0; a < 3; a++) {
        pull[a] = -tension[N - 1] * dir[N - 1][a], tip += tension[0] * dir[0][a] * flex[a];
    }
    hull_rates(h, pull, area, node_mass, d + HULL);
    d[ROD] = q[1], d[ROD + 2] = q[3];
    d[ROD + 1] = (tip + 1.5 * 0.008 * stroke * s[2] - 0.01357168026 * q[1] - 6.395503652 * q[0]) / 0.008;
    d[ROD + 3] = (tip - 0.8 * 0.004 * stroke * s[2] - 0.02261946711 * q[3] - 35.53057584 * q[2]) / 0.004;
}

static void print(double t, const double *y, double nose, double tip)
{
    const double *h = y + HULL;
    printf("%.4f,%.7f,%.7f,%.7f,%.6f,%.6f,%.5f,%.5f,%.5f\n", t, h[0], h[1], h[2], h[3], h[4], h[5], nose, tip);
}

int main(int count, char **words)
{
    double step = count > 1 ? atof(words[1]) : 2.5e-7, y[DIM] = {0}, k1[DIM], k2[DIM], k3[DIM], k4[DIM], z[DIM];
    long per_row = lround(0.005 / step);
    double far = sqrt(14.90 * 14.90 - 0.8 * 0.8);
    for (int i = 1; i < N; i++) {
        y[3 * (i - 1)] = far * i / N, y[3 * (i - 1) + 2] = 0.8 * (1.0 - (double)i / N);
    }
    y[HULL] = 14.931802751, y[HULL + 1] = 0.008054715, y[HULL + 2] = pi + 0.15;
    printf("time_s,lure_x_m,lure_y_m,heading_rad,surge_m_s,sway_m_s,yaw_rate_rad_s,nose_tension_N,tip_tension_N\n");
    print(0.0, y, 0.0, 0.0);
    double nose = 0.0, tip = 0.0;
    for (long n = 0; n < 800 * per_row; n++) {
        double t = n * step;
        rates(t, y, k1);
        nose += tension[N - 1] / per_row, tip += tension[0] / per_row;
        for (int i = 0; i < DIM; i++) z[i] = y[i] + 0.5 * step * k1[i];
        rates(t + 0.5 * step, z, k2);
        for (int i = 0; i < DIM; i++) z[i] = y[i] + 0.5 * step * k2[i];
        rates(t + 0.5 * step, z, k3);
        for (int i = 0; i < DIM; i++) z[i] = y[i] + step * k3[i];
        rates(t + step, z, k4);
        for (int i = 0; i < DIM; i++) y[i] += step / 6.0 * (k1[i] + 2.0 * k2[i] + 2.0 * k3[i] + k4[i]);
        if ((n + 1) % per_row == 0) {
            print((n + 1) * step, y, nose, tip);
            nose = tip = 0.0;
        }
    }
    return 0;
}
