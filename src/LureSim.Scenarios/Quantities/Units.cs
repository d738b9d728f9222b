using UnitsNet;

namespace LureSim.Scenarios.Quantities;

/// <summary>The list of units of every kind, one name each (<see cref="UnitSpelling"/> knows the others). UnitsNet's typed conversions do the arithmetic; its parser is never asked.</summary>
/// <remarks>SI units pass through untouched, so that a file in SI (and every default) costs no start-up of a quantity type. Each
/// quantity has a method of its own for the same reason: compiling a method loads every type that it names.</remarks>
internal static class Units
{
    /// <summary>Converts a number with its unit, by the one name of it; NaN when the unit is not in the list.</summary>
    public static double ToSi(QuantityKind kind, string unit, double x) => unit == SiName(kind) ? x : kind switch
    {
        QuantityKind.Length => LengthToSi(unit, x),
        QuantityKind.Mass => MassToSi(unit, x),
        QuantityKind.Force => ForceToSi(unit, x),
        QuantityKind.Angle => AngleToSi(unit, x),
        QuantityKind.Time => TimeToSi(unit, x),
        QuantityKind.Frequency => FrequencyToSi(unit, x),
        QuantityKind.Speed => SpeedToSi(unit, x),
        QuantityKind.TakeUp => unit.EndsWith("/turn", StringComparison.Ordinal) ? TakeUpToSi(unit[..^5], x) : double.NaN,
        QuantityKind.Temperature => TemperatureToSi(unit, x),
        QuantityKind.Density => DensityToSi(unit, x),
        QuantityKind.Torque => TorqueToSi(unit, x),
        QuantityKind.Modulus => ModulusToSi(unit, x),
        QuantityKind.Area => AreaToSi(unit, x),
        QuantityKind.AngularSpeed => AngularSpeedToSi(unit, x),
        QuantityKind.Inertia => InertiaToSi(unit, x),
        QuantityKind.TorquePerSpeed => unit is "uN m s" ? x / 1e6 : double.NaN,
        QuantityKind.TorquePerSpeedSquared => unit is "nN m s2" ? x / 1e9 : double.NaN,
        QuantityKind.ForcePerLength => unit is "lb/ft" or "oz/ft" ? ForceToSi(unit[..2], x) / LengthToSi("ft", 1.0) : double.NaN,
        QuantityKind.AnglePerLength => unit is "deg/m" ? AngleToSi("deg", x) : unit is "deg/ft" ? AngleToSi("deg", x) / LengthToSi("ft", 1.0) : double.NaN,
        QuantityKind.Ratio => unit is ":1" ? x : unit is "%" ? x / 100.0 : double.NaN,
        _ => double.NaN,
    };

    /// <summary>Converts back; every list is linear in its unit, so two points of the forward conversion are enough.</summary>
    public static double FromSi(QuantityKind kind, string unit, double si)
    {
        double zero = ToSi(kind, unit, 0.0);
        return (si - zero) / (ToSi(kind, unit, 1.0) - zero);
    }

    /// <summary>Whether a bare number is refused.</summary>
    public static bool NeedUnit(QuantityKind kind) => SiName(kind).Length > 0;

    /// <summary>The SI unit as it is written in files.</summary>
    public static string SiName(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "m",
        QuantityKind.Mass => "kg",
        QuantityKind.Force => "N",
        QuantityKind.Angle => "rad",
        QuantityKind.Time => "s",
        QuantityKind.Frequency => "/s",
        QuantityKind.Speed => "m/s",
        QuantityKind.TakeUp => "m/turn",
        QuantityKind.Temperature => "C",
        QuantityKind.Density => "kg/m3",
        QuantityKind.Torque => "N m",
        QuantityKind.Modulus => "Pa",
        QuantityKind.Area => "m2",
        QuantityKind.Salinity => "g/kg",
        QuantityKind.AngularSpeed => "rad/s",
        QuantityKind.Inertia => "kg m2",
        QuantityKind.TorquePerSpeed => "N m s",
        QuantityKind.TorquePerSpeedSquared => "N m s2",
        QuantityKind.ForcePerLength => "N/m",
        QuantityKind.AnglePerLength => "rad/m",
        _ => "",
    };

    /// <summary>What is due, with the list of units and an example: the second half of every message.</summary>
    public static string Due(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "a length is due in m, cm, mm, ft, in or yd, for example \"7 ft 6 in\" or \"2.1 m\"",
        QuantityKind.Mass => "a mass is due in oz, lb, g, kg or mg, for example \"5/8 oz\" or \"18 g\"",
        QuantityKind.Force => "a force is due in N, lb, oz, kg or g, for example \"8 lb\" or \"35 N\"",
        QuantityKind.Angle => "an angle is due in deg or rad, for example \"18 deg\"",
        QuantityKind.Time => "a time is due in s, ms or min, for example \"0.1 s\"",
        QuantityKind.Frequency => "a rhythm is due in /s, /min or Hz, for example \"2 /s\" or \"120 /min\"",
        QuantityKind.Speed => "a speed is due in m/s, cm/s, ft/s, in/s, km/h, mph or kn, for example \"3 m/s\"",
        QuantityKind.TakeUp => "a take-up is due in in/turn, cm/turn, ft/turn, mm/turn or m/turn, for example \"22 in/turn\"",
        QuantityKind.Temperature => "a temperature is due in C, F or K, for example \"22 C\" or \"72 F\"",
        QuantityKind.Density => "a density is due in kg/m3 or g/cm3, for example \"1140 kg/m3\"",
        QuantityKind.Torque => "a torque is due in N m, mN m, lb ft, lb in or kg cm, for example \"3 N m\"",
        QuantityKind.Modulus => "a modulus is due in GPa, MPa or Pa, for example \"2.2 GPa\"",
        QuantityKind.Area => "an area is due in cm2, mm2, m2 or in2, for example \"1.2 cm2\"",
        QuantityKind.Salinity => "a salt content is due in g/kg or ppt, for example \"35 g/kg\"",
        QuantityKind.AngularSpeed => "a turning speed is due in rad/s, deg/s or rpm, for example \"13 rad/s\"",
        QuantityKind.Inertia => "a moment of inertia is due in kg m2 or g cm2, for example \"15 g cm2\"",
        QuantityKind.TorquePerSpeed => "a torque over turning speed is due in N m s or uN m s, for example \"0.5 uN m s\"",
        QuantityKind.TorquePerSpeedSquared => "a torque over turning speed squared is due in N m s2 or nN m s2, for example \"1 nN m s2\"",
        QuantityKind.ForcePerLength => "a force over length is due in N/m, lb/ft or oz/ft, for example \"0.5 N/m\"",
        QuantityKind.AnglePerLength => "an angle over length is due in rad/m, deg/m or deg/ft, for example \"6 deg/m\"",
        QuantityKind.LineNumber => "a line number is due, for example \"PE 3\" (braid) or \"no. 3\"",
        QuantityKind.WholeNumber => "a whole number is due",
        _ => "a plain number is due, for example 0.7",
    };

    private static double AngleToSi(string unit, double x) => unit is "deg" ? Angle.FromDegrees(x).Radians : double.NaN;

    private static double TimeToSi(string unit, double x) => unit switch
    {
        "ms" => Duration.FromMilliseconds(x).Seconds,
        "min" => Duration.FromMinutes(x).Seconds,
        _ => double.NaN,
    };

    private static double DensityToSi(string unit, double x) => unit switch
    {
        "g/cm3" => Density.FromGramsPerCubicCentimeter(x).KilogramsPerCubicMeter,
        _ => double.NaN,
    };

    private static double ModulusToSi(string unit, double x) => unit switch
    {
        "GPa" => Pressure.FromGigapascals(x).Pascals,
        "MPa" => Pressure.FromMegapascals(x).Pascals,
        _ => double.NaN,
    };

    private static double LengthToSi(string unit, double x) => unit switch
    {
        "cm" => Length.FromCentimeters(x).Meters,
        "mm" => Length.FromMillimeters(x).Meters,
        "ft" => Length.FromFeet(x).Meters,
        "in" => Length.FromInches(x).Meters,
        "yd" => Length.FromYards(x).Meters,
        _ => double.NaN,
    };

    private static double TakeUpToSi(string unit, double x) => unit == "m" ? x : LengthToSi(unit, x);

    private static double MassToSi(string unit, double x) => unit switch
    {
        "g" => Mass.FromGrams(x).Kilograms,
        "mg" => Mass.FromMilligrams(x).Kilograms,
        "oz" => Mass.FromOunces(x).Kilograms,
        "lb" => Mass.FromPounds(x).Kilograms,
        _ => double.NaN,
    };

    private static double ForceToSi(string unit, double x) => unit switch
    {
        "lb" => Force.FromPoundsForce(x).Newtons,
        "oz" => Force.FromOunceForce(x).Newtons,
        "kg" => Force.FromKilogramsForce(x).Newtons,
        "g" => Force.FromKilogramsForce(x / 1000.0).Newtons,
        _ => double.NaN,
    };

    private static double FrequencyToSi(string unit, double x) => unit switch
    {
        "/min" => Frequency.FromCyclesPerMinute(x).Hertz,
        _ => double.NaN,
    };

    private static double SpeedToSi(string unit, double x) => unit switch
    {
        "cm/s" => Speed.FromCentimetersPerSecond(x).MetersPerSecond,
        "ft/s" => Speed.FromFeetPerSecond(x).MetersPerSecond,
        "in/s" => Speed.FromInchesPerSecond(x).MetersPerSecond,
        "km/h" => Speed.FromKilometersPerHour(x).MetersPerSecond,
        "mph" => Speed.FromMilesPerHour(x).MetersPerSecond,
        "kn" => Speed.FromKnots(x).MetersPerSecond,
        _ => double.NaN,
    };

    private static double TemperatureToSi(string unit, double x) => unit switch
    {
        "F" => Temperature.FromDegreesFahrenheit(x).DegreesCelsius,
        "K" => Temperature.FromKelvins(x).DegreesCelsius,
        _ => double.NaN,
    };

    private static double TorqueToSi(string unit, double x) => unit switch
    {
        "mN m" => x / 1e3,
        "lb ft" => Torque.FromPoundForceFeet(x).NewtonMeters,
        "lb in" => Torque.FromPoundForceInches(x).NewtonMeters,
        "kg cm" => Torque.FromKilogramForceCentimeters(x).NewtonMeters,
        _ => double.NaN,
    };

    private static double AngularSpeedToSi(string unit, double x) => unit switch
    {
        "deg/s" => RotationalSpeed.FromDegreesPerSecond(x).RadiansPerSecond,
        "rpm" => RotationalSpeed.FromRevolutionsPerMinute(x).RadiansPerSecond,
        _ => double.NaN,
    };

    private static double InertiaToSi(string unit, double x) => unit switch
    {
        "g cm2" => MassMomentOfInertia.FromGramSquareCentimeters(x).KilogramSquareMeters,
        _ => double.NaN,
    };

    private static double AreaToSi(string unit, double x) => unit switch
    {
        "cm2" => Area.FromSquareCentimeters(x).SquareMeters,
        "mm2" => Area.FromSquareMillimeters(x).SquareMeters,
        "in2" => Area.FromSquareInches(x).SquareMeters,
        _ => double.NaN,
    };
}
