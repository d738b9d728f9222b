using LureSim.Model.Media;
using LureSim.References.Media;

namespace LureSim.Validation;

/// <summary>Water, air and the scales of a water surface.</summary>
public static class MediaChecks
{
    private static readonly double[] Temperatures = [0, 5, 10, 15, 20, 25, 30];

    [PublishedCheck]
    public static Check FreshWaterDensity()
    {
        double[] formula = [999.8428, 999.9668, 999.7027, 999.1026, 998.2067, 997.0470, 995.6488];
        (double T, double Rho)[] older = [(4, 999.9720), (10, 999.7026), (15, 999.1026), (20, 998.2071), (25, 997.0479), (30, 995.6502)];
        return new(
            "W1", "Density of fresh water at one atmosphere",
            "Tanaka, Girard, Davis, Peuto, Bignell 2001, Metrologia 38:301, eq. 1 (coefficients from memory, values recomputed); "
            + "an older printed list as cross-check",
            "Last printed digit of the recomputed values; 0.005 kg/m3 against the older list, which differs by up to 0.0014 through "
            + "temperature scale and age of its formula.",
            [
                .. Rows("density", "kg/m3", formula, FreshWater.Density, 5.1e-5, Tol.Absolute),
                .. older.Select(p => new Row($"older list, {p.T} deg C", "kg/m3", p.Rho, FreshWater.Density(p.T), 0.005, Tol.Absolute)),
            ]);
    }

    [PublishedCheck]
    public static Check FreshWaterViscosity()
    {
        double[] mu = [1791.8, 1518.2, 1305.9, 1137.6, 1001.60, 890.0, 797.2];
        double[] nu = [1.79204, 1.51822, 1.30629, 1.13859, 1.00340, 0.89266, 0.80071];
        Row Point(double t, double rho, double expected) => new(
            $"{t} K, {rho} kg/m3", "uPa s", expected, 1e6 * FreshWater.DynamicViscosity(t, rho), 6e-7, Tol.Absolute);
        double Nu(double t) => 1e6 * FreshWater.DynamicViscosity(t) / FreshWater.Density(t);
        return new(
            "W2", "Viscosity of fresh water",
            "IAPWS R12-08 (Huber et al. 2009, J. Phys. Chem. Ref. Data 38:101), its Table 4 (check points from memory); second formula: "
            + "Patek et al. 2009, J. Phys. Chem. Ref. Data 38:21 (from memory)",
            "Check points to their last digit; table values to their last digit; the independent short formula agrees to 4-5 digits.",
            [
                Point(298.15, 998, 889.735100), Point(298.15, 1200, 1437.649467), Point(373.15, 1000, 307.883622),
                .. Rows("dynamic", "uPa s", mu, t => 1e6 * FreshWater.DynamicViscosity(t), 0.06, Tol.Absolute),
                .. Rows("kinematic", "1e-6 m2/s", nu, Nu, 6e-6, Tol.Absolute),
                .. Temperatures.Skip(1).Select(t => new Row(
                    $"short formula, {t} deg C", "uPa s", ShortViscosity(t), 1e6 * FreshWater.DynamicViscosity(t), 1e-4, Tol.Relative)),
            ]);
    }

    [PublishedCheck]
    public static Check SurfaceTension()
    {
        double[] t = [5, 10, 15, 20, 25, 30];
        double[] formula = [74.942, 74.221, 73.486, 72.736, 71.972, 71.194];
        double[] second = [74.971, 74.241, 73.497, 72.739, 71.967, 71.181];
        double[] handbook = [double.NaN, 74.2, 73.5, 72.75, 72.0, 71.2];
        double Sigma(int i) => 1e3 * FreshWater.SurfaceTension(t[i]);
        return new(
            "W3", "Surface tension of fresh water",
            "IAPWS R1-76(2014) (coefficients from memory, values recomputed); Patek, Souckova, Klomfar 2016, J. Chem. Eng. Data; a handbook list",
            "Last digit against the recomputed formula; 0.05 mN/m against the second fit (its own worst error is 0.1); 0.05 mN/m "
            + "against the handbook's rounded list.",
            [
                .. t.Select((c, i) => new Row($"{c} deg C", "mN/m", formula[i], Sigma(i), 5.1e-4, Tol.Absolute)),
                .. t.Select((c, i) => new Row($"second fit, {c} deg C", "mN/m", second[i], Sigma(i), 0.05, Tol.Absolute)),
                .. t.Skip(1).Select((c, i) => new Row($"handbook, {c} deg C", "mN/m", handbook[i + 1], Sigma(i + 1), 0.05, Tol.Absolute)),
            ]);
    }

    [PublishedCheck]
    public static Check SeaWaterDensity()
    {
        (double S, double T, double Rho)[] points =
            [(0, 5, 999.96675), (0, 25, 997.04796), (35, 5, 1027.67547), (35, 25, 1023.34306), (8, 10, 1005.94659)];
        (double T, double Rho)[] table = [(5, 1027.675), (10, 1026.952), (15, 1025.973), (20, 1024.763), (25, 1023.343), (30, 1021.729)];
        return new(
            "W4", "Density of sea water at one atmosphere",
            "EOS-80: Fofonoff and Millard 1983, UNESCO Tech. Pap. Mar. Sci. 44, check values (from memory, recomputed); S 8 at 10 deg C from "
            + "the documentation of an oceanographic library",
            "Last printed digit; the library's value is met to one unit of its ninth.",
            [
                .. points.Select(p => new Row($"S {p.S}, {p.T} deg C", "kg/m3", p.Rho, SeaWater.Density(p.T, p.S), p.S == 8 ? 1.5e-5 : 6e-6, Tol.Absolute)),
                .. table.Select(p => new Row($"S 35, {p.T} deg C", "kg/m3", p.Rho, SeaWater.Density(p.T, 35), 6e-4, Tol.Absolute)),
            ]);
    }

    [PublishedCheck]
    public static Check SeaWaterViscosity()
    {
        (double T, double Nu)[] fresh = [(0, 1.787), (10, 1.306), (20, 1.004), (30, 0.801)];
        (double T, double Nu)[] salt = [(0, 1.828), (10, 1.354), (15, 1.189), (20, 1.054), (30, 0.849)];
        Row Line(string what, double t, double s, double nu) => new(
            $"{what}, {t} deg C", "1e-6 m2/s", nu, 1e6 * WaterModel.Evaluate(new(t, s)).KinematicViscosityM2S, t > 0 ? 0.01 : 0.015, Tol.Relative);
        return new(
            "W5", "Kinematic viscosity of sea water; its surface tension",
            "Tupper, Introduction to Naval Architecture, Table 5.1 (3.5 % salt); ITTC value at 15 deg C; surface tension: Nayar et al. 2014, "
            + "J. Phys. Chem. Ref. Data 43:043103 (from memory)",
            "1 %: spread between the naval table and the correlation of Sharqawy et al. 2010; 1.5 % at the freezing end, that correlation's own "
            + "uncertainty (from memory). Surface tension: a surplus of 1.0 to 1.1 mN/m at S 35.",
            [
                .. fresh.Select(p => Line("fresh", p.T, 0, p.Nu)),
                .. salt.Select(p => Line("salt", p.T, 35, p.Nu)),
                BandRow.Of("surface tension over fresh, S 35, 20 deg C", "mN/m", 1.0, 1.1,
                    1e3 * (SeaWater.SurfaceTension(20, 35) - FreshWater.SurfaceTension(20))),
            ]);
    }

    [PublishedCheck]
    public static Check StandardAtmosphere()
    {
        (double H, double T, double P, double Rho, double Mu, double Nu)[] table =
        [
            (0, 288.15, 101325, 1.22500, 1.78938, 1.46072), (500, 284.90, 95460.8, 1.16727, 1.77366, 1.51949),
            (1000, 281.65, 89874.6, 1.11164, 1.75785, 1.58130), (2000, 275.15, 79495.2, 1.00649, 1.72596, 1.71483),
        ];
        AirState warm = AirModel.Evaluate(new(20.0, 0.0));
        return new(
            "W6", "Standard atmosphere",
            "US Standard Atmosphere 1976; dry air at 20 deg C and one atmosphere from the same laws",
            "Last printed digit.",
            [
                .. table.SelectMany(r => AirRows(r.H, r.T, r.P, r.Rho, r.Mu, r.Nu)),
                new("density, 20 deg C", "kg/m3", 1.2041, warm.DensityKgM3, 6e-5, Tol.Absolute),
                new("viscosity, 20 deg C", "1e-5 Pa s", 1.8134, 1e5 * warm.DynamicViscosityPaS, 6e-5, Tol.Absolute),
                new("kinematic, 20 deg C", "1e-5 m2/s", 1.5060, 1e5 * warm.KinematicViscosityM2S, 6e-5, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check CapillaryScales()
    {
        WaterState w = WaterModel.Evaluate(new(20.0));
        double length = CapillaryNumbers.Length(w);
        double speed = CapillaryNumbers.MinimumWaveSpeed(w);
        double wave = 2.0 * Math.PI * length;
        return new(
            "W7", "Capillary length and slowest surface wave at 20 deg C",
            "Lamb, Hydrodynamics, art. 267; 23 cm/s also in Raphael and co-workers (arXiv 1109.6200, 0704.3990); values recomputed",
            "Last printed digit.",
            [
                new("capillary length", "mm", 2.7259, 1e3 * length, 6e-5, Tol.Absolute),
                new("slowest wave", "m/s", 0.23122, speed, 6e-6, Tol.Absolute),
                new("its length", "mm", 17.13, 1e3 * wave, 6e-3, Tol.Absolute),
                new("its frequency", "Hz", 13.50, speed / wave, 6e-3, Tol.Absolute),
            ]);
    }

    private static IEnumerable<Row> AirRows(double h, double t, double p, double rho, double mu, double nu)
    {
        AirState air = AirModel.Evaluate(new(t - 273.15, h));
        yield return new($"temperature, {h} m", "K", t, StandardAir.TemperatureK(h), 6e-3, Tol.Absolute);
        yield return new($"pressure, {h} m", "Pa", p, StandardAir.Pressure(h), 0.06, Tol.Absolute);
        yield return new($"density, {h} m", "kg/m3", rho, air.DensityKgM3, 6e-6, Tol.Absolute);
        yield return new($"viscosity, {h} m", "1e-5 Pa s", mu, 1e5 * air.DynamicViscosityPaS, 6e-6, Tol.Absolute);
        yield return new($"kinematic, {h} m", "1e-5 m2/s", nu, 1e5 * air.KinematicViscosityM2S, 6e-6, Tol.Absolute);
    }

    private static double ShortViscosity(double t)
    {
        double r = (t + 273.15) / 300.0;
        return 280.68 * Math.Pow(r, -1.9) + 511.45 * Math.Pow(r, -7.7) + 61.131 * Math.Pow(r, -19.6) + 0.45903 * Math.Pow(r, -40.0);
    }

    private static IEnumerable<Row> Rows(
        string what, string unit, double[] expected, Func<double, double> computed, double tolerance, Tol kind) =>
        Temperatures.Select((t, i) => new Row($"{what}, {t} deg C", unit, expected[i], computed(t), tolerance, kind));
}
