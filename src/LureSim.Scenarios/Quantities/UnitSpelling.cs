using System.Text;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Quantities;

/// <summary>Units as people spell them, to the names of <see cref="Units"/>: <c>lbs</c>, <c>grams</c>, <c>30#</c>, <c>per second</c>, <c>cm^2</c>, any case.</summary>
internal static class UnitSpelling
{
    private static readonly (QuantityKind Kind, string Unit, string Spellings)[] Rows =
    [
        (QuantityKind.Length, "m", "metre|metres|meter|meters|mtr|mtrs"),
        (QuantityKind.Length, "cm", "centimetre|centimetres|centimeter|centimeters|cms"),
        (QuantityKind.Length, "mm", "millimetre|millimetres|millimeter|millimeters|mms"),
        (QuantityKind.Length, "ft", "'|foot|feet"),
        (QuantityKind.Length, "in", "\"|inch|inches|ins"),
        (QuantityKind.Length, "yd", "yds|yard|yards"),
        (QuantityKind.Mass, "g", "gram|grams|gramme|grammes|gm|gms|gs"),
        (QuantityKind.Mass, "mg", "milligram|milligrams"),
        (QuantityKind.Mass, "kg", "kgs|kilo|kilos|kilogram|kilograms"),
        (QuantityKind.Mass, "oz", "ounce|ounces|ozs"),
        (QuantityKind.Mass, "lb", "lbs|pound|pounds|#"),
        (QuantityKind.Force, "N", "newton|newtons"),
        (QuantityKind.Force, "lb", "lbs|lbf|pound|pounds|#|lb test|lbs test|pound test|# test|lb line|pound line"),
        (QuantityKind.Force, "oz", "ozf|ounce|ounces|ozs"),
        (QuantityKind.Force, "kg", "kgf|kgs|kilo|kilos|kilogram|kilograms|kg test"),
        (QuantityKind.Force, "g", "gf|gram|grams|gramme|grammes|gm|gms"),
        (QuantityKind.Angle, "deg", "\u00B0|degs|degree|degrees"),
        (QuantityKind.Angle, "rad", "rads|radian|radians"),
        (QuantityKind.Time, "s", "sec|secs|second|seconds"),
        (QuantityKind.Time, "ms", "msec|millisecond|milliseconds"),
        (QuantityKind.Time, "min", "mins|minute|minutes"),
        (QuantityKind.Frequency, "/s", "1/s|per s|hz|hertz|/sec|/second|per sec|per second|a second|times a second|twitches per second|twitches a second|twitches/s"),
        (QuantityKind.Frequency, "/min", "1/min|per min|/minute|per minute|a minute|times a minute|twitches per minute|twitches a minute|twitches/min|bpm|beats per minute"),
        (QuantityKind.Speed, "m/s", "mps|m/sec|m per s|meters per second|metres per second"),
        (QuantityKind.Speed, "cm/s", "cm/sec|cm per s|centimeters per second|centimetres per second"),
        (QuantityKind.Speed, "ft/s", "fps|ft/sec|ft per s|feet per second"),
        (QuantityKind.Speed, "in/s", "ips|in/sec|in per s|inches per second"),
        (QuantityKind.Speed, "km/h", "kmh|kph|km/hr|km per hour|kilometers per hour|kilometres per hour"),
        (QuantityKind.Speed, "mph", "mi/h|miles/h|miles per hour"),
        (QuantityKind.Speed, "kn", "kt|kts|kns|knot|knots"),
        (QuantityKind.TakeUp, "in/turn", "inch/turn|inches/turn|in per turn|inches per turn|inches per handle turn|inches per crank|in/crank|\"/turn"),
        (QuantityKind.TakeUp, "cm/turn", "cm per turn|centimeters per turn|centimetres per turn|cm per crank|cm/crank"),
        (QuantityKind.TakeUp, "mm/turn", "mm per turn"),
        (QuantityKind.TakeUp, "ft/turn", "feet/turn|ft per turn|feet per turn"),
        (QuantityKind.TakeUp, "m/turn", "m per turn|meters per turn|metres per turn"),
        (QuantityKind.Temperature, "C", "\u00B0C|deg C|degrees C|celsius|degrees celsius|centigrade"),
        (QuantityKind.Temperature, "F", "\u00B0F|deg F|degrees F|fahrenheit|degrees fahrenheit"),
        (QuantityKind.Temperature, "K", "kelvin"),
        (QuantityKind.Density, "kg/m3", ""),
        (QuantityKind.Density, "g/cm3", "g/cc|g/ml"),
        (QuantityKind.Torque, "N m", "Nm|newton metre|newton metres|newton meters"),
        (QuantityKind.Torque, "mN m", "mNm"),
        (QuantityKind.Torque, "lb ft", "ft lb|ft lbs|foot pounds|lbf ft|pound feet"),
        (QuantityKind.Torque, "lb in", "in lb|in lbs|inch pounds|lbf in|pound inches"),
        (QuantityKind.Torque, "kg cm", "kgf cm|kgcm"),
        (QuantityKind.Modulus, "GPa", ""),
        (QuantityKind.Modulus, "MPa", ""),
        (QuantityKind.Modulus, "Pa", ""),
        (QuantityKind.Area, "cm2", "sq cm|square cm"),
        (QuantityKind.Area, "mm2", "sq mm|square mm"),
        (QuantityKind.Area, "m2", "sq m|square m"),
        (QuantityKind.Area, "in2", "sq in|square in|square inches"),
        (QuantityKind.Salinity, "g/kg", "ppt|parts per thousand|psu"),
        (QuantityKind.AngularSpeed, "rad/s", "rad per s|radians per second"),
        (QuantityKind.AngularSpeed, "deg/s", "\u00B0/s|deg per s|degrees per second"),
        (QuantityKind.AngularSpeed, "rpm", "turns per minute|rev/min"),
        (QuantityKind.Inertia, "kg m2", ""),
        (QuantityKind.Inertia, "g cm2", ""),
        (QuantityKind.TorquePerSpeed, "N m s", "Nms"),
        (QuantityKind.TorquePerSpeed, "uN m s", "uNms"),
        (QuantityKind.TorquePerSpeedSquared, "N m s2", "Nms2"),
        (QuantityKind.TorquePerSpeedSquared, "nN m s2", "nNms2"),
        (QuantityKind.ForcePerLength, "N/m", "N per m|newtons per metre|newtons per meter"),
        (QuantityKind.ForcePerLength, "lb/ft", "lbs/ft|lb per ft|pounds per foot"),
        (QuantityKind.ForcePerLength, "oz/ft", "oz per ft|ounces per foot"),
        (QuantityKind.AnglePerLength, "rad/m", "rad per m|radians per metre|radians per meter"),
        (QuantityKind.AnglePerLength, "deg/m", "\u00B0/m|deg per m|degrees per metre|degrees per meter"),
        (QuantityKind.AnglePerLength, "deg/ft", "\u00B0/ft|deg per ft|degrees per foot"),
        (QuantityKind.Ratio, ":1", ": 1|to 1|to one"),
        (QuantityKind.Ratio, "%", "percent|per cent|pct"),
    ];

    private static readonly Dictionary<QuantityKind, Dictionary<string, string>> Known = Make();

    /// <summary>The unit's name in <see cref="Units"/>; what is not known comes back as it is.</summary>
    /// <param name="kind">Kind of the quantity.</param>
    /// <param name="unit">Unit as written, without blanks around it.</param>
    public static string Canonical(QuantityKind kind, string unit)
    {
        if (unit.Length == 0 || unit == Units.SiName(kind) || !Known.TryGetValue(kind, out Dictionary<string, string>? known))
        {
            return unit;
        }

        return known.GetValueOrDefault(unit) ?? known.GetValueOrDefault(Tidy(unit)) ?? unit;
    }

    /// <summary>Whether the kind has such a unit.</summary>
    /// <param name="kind">Kind of the quantity.</param>
    /// <param name="unit">Unit as written.</param>
    public static bool Knows(QuantityKind kind, string unit) => double.IsFinite(Units.ToSi(kind, Canonical(kind, unit), 1.0));

    /// <summary>The unit of the kind whose spelling is nearest, or null.</summary>
    /// <param name="kind">Kind of the quantity.</param>
    /// <param name="unit">Unit as written.</param>
    public static string? Near(QuantityKind kind, string unit)
    {
        string plain = Tidy(unit).ToLowerInvariant();
        return Known.TryGetValue(kind, out Dictionary<string, string>? known)
            && (Nearest.Of(plain, known.Keys.Select(k => k.ToLowerInvariant())) ?? FirstWord(plain, known)) is string near ? known.GetValueOrDefault(near) : null;
    }

    // "lb braid" begins with a unit.
    private static string? FirstWord(string unit, Dictionary<string, string> known) =>
        !unit.Any(char.IsAsciiDigit) && unit.Split(' ')[0] is { Length: > 0 } word && known.ContainsKey(word) ? word : null;

    // "-lb." is "lb", "cm^2" is "cm2", "N*m" is "N m", "in / turn" is "in/turn".
    private static string Tidy(string unit)
    {
        var tidy = new StringBuilder(unit.Length);
        foreach (char c in unit)
        {
            _ = c switch
            {
                '\u00B2' => tidy.Append('2'),
                '\u00B3' => tidy.Append('3'),
                '\u00B5' or '\u03BC' => tidy.Append('u'),
                '.' or '^' => tidy,
                '\u00B7' or '*' or '-' or '\t' => tidy.Append(' '),
                _ => tidy.Append(c),
            };
        }

        string plain = string.Join(' ', tidy.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return plain.Replace(" /", "/", StringComparison.Ordinal).Replace("/ ", "/", StringComparison.Ordinal);
    }

    private static Dictionary<QuantityKind, Dictionary<string, string>> Make()
    {
        var known = new Dictionary<QuantityKind, Dictionary<string, string>>();
        foreach ((QuantityKind kind, string unit, string spellings) in Rows)
        {
            if (!known.TryGetValue(kind, out Dictionary<string, string>? units))
            {
                known[kind] = units = new(StringComparer.OrdinalIgnoreCase);
            }

            units.Add(unit, unit);
            foreach (string spelling in spellings.Split('|', StringSplitOptions.RemoveEmptyEntries))
            {
                units.Add(spelling, unit);
            }
        }

        return known;
    }
}
