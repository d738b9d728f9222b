#!/usr/bin/env python3
"""The tethered lure of docs/cross-check.md, integrated by SciPy; writes tethered-lure.csv beside this file.

Run:  apt-get install python3-scipy; /usr/bin/python3 tests/LureSim.Validation/Data/tethered-lure.py
Made with SciPy 1.10.1, NumPy 1.24.2, Python 3.11. Nothing here comes from the C# sources: the equations are those of the document.
"""
import os

import numpy as np
from scipy.integrate import solve_ivp

M11, M22, M23, M33 = 0.019, 0.029, 1.0e-5, 2.1e-5
TIE = 0.054
AXIAL = 0.043
STRIP_X = np.array([-0.04, -0.02, 0.0, 0.02, 0.04])
STRIP_K = np.array([0.12, 0.15, 0.16, 0.15, 0.12])
HOOK_X = np.array([0.005, -0.05])
HOOK_K = np.array([0.03, 0.03])
LENGTH, STIFFNESS = 3.0, 100.0
BACK, STROKE, PERIOD = 0.30, 0.16, 0.5
START = [3.049, 0.012, np.pi + 0.3, 0.0, 0.0, 0.0]
END, OUTPUT = 4.0, 0.25


def tip(t):
    return -BACK * t - 0.5 * STROKE * (1.0 - np.cos(2.0 * np.pi * t / PERIOD))


def stretch(t, s):
    dx = s[0] + TIE * np.cos(s[2]) - tip(t)
    dy = s[1] + TIE * np.sin(s[2])
    return np.hypot(dx, dy) - LENGTH


def rates(t, s, taut):
    x, y, psi, u, v, r = s
    c, n = np.cos(psi), np.sin(psi)
    fx = fy = 0.0
    if taut:
        dx, dy = x + TIE * c - tip(t), y + TIE * n
        d = np.hypot(dx, dy)
        pull = STIFFNESS * (d - LENGTH) / d
        fx, fy = -pull * (dx * c + dy * n), -pull * (dy * c - dx * n)
    w = v + r * STRIP_X
    strip = -STRIP_K * np.abs(w) * w
    wh = v + r * HOOK_X
    hook = -HOOK_K * np.sqrt(u * u + wh * wh)
    surge = -AXIAL * abs(u) * u + np.sum(hook) * u + fx
    sway = np.sum(strip) + np.sum(hook * wh) + fy
    yaw = np.sum(strip * STRIP_X) + np.sum(hook * wh * HOOK_X) + TIE * fy
    du = (r * (M22 * v + M23 * r) + surge) / M11
    b2 = -r * M11 * u + sway
    b3 = -(M22 - M11) * u * v - M23 * u * r + yaw
    det = M22 * M33 - M23 * M23
    return [u * c - v * n, u * n + v * c, r, du, (M33 * b2 - M23 * b3) / det, (M22 * b3 - M23 * b2) / det]


def integrate(method, rtol, atol):
    """Stops at every change between slack and taut, so that no step straddles the kink of the tether."""
    times = np.arange(0.0, END + 1e-9, OUTPUT)
    rows, t, s, taut, changes = [np.array(START)], 0.0, np.array(START), stretch(0.0, START) > 0.0, 0
    while t < END:
        def kink(time, state, _taut):
            return stretch(time, state)

        kink.terminal = True
        kink.direction = -1.0 if taut else 1.0
        wanted = times[times > t]
        got = solve_ivp(rates, (t, END), s, method, wanted, args=(taut,), events=kink, rtol=rtol, atol=atol, max_step=0.01)
        rows.extend(np.array(got.y).T if len(got.t) else [])
        if got.status != 1:
            break
        t, s, taut, changes = got.t_events[0][0], got.y_events[0][0], not taut, changes + 1
    return times, np.array(rows), changes


def main():
    times, rows, changes = integrate("DOP853", 1e-13, 1e-15)
    _, other, _ = integrate("Radau", 1e-11, 1e-13)
    difference = np.max(np.abs(rows - other), axis=0)
    print("changes between slack and taut:", changes)
    print("largest difference between DOP853 and Radau, by column:", " ".join(f"{d:.1e}" for d in difference))
    path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "tethered-lure.csv")
    with open(path, "w", encoding="ascii", newline="\n") as out:
        out.write("time_s,lure_x_m,lure_y_m,heading_rad,surge_m_s,sway_m_s,yaw_rate_rad_s\n")
        for t, row in zip(times, rows):
            out.write(f"{t:.2f}," + ",".join(f"{v:.12g}" for v in row) + "\n")


if __name__ == "__main__":
    main()
