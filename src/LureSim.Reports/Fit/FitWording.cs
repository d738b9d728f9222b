using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Fit;

namespace LureSim.Reports.Fit;

/// <summary>Numbers, readings and advice of a fit in words.</summary>
internal static class FitWording
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>A kind of test in words, several of it.</summary>
    public static string Tests(FitKind kind) => kind switch
    {
        FitKind.Tow => "tows",
        FitKind.Push => "pushes",
        FitKind.Coast => "coast-downs",
        FitKind.Track => "films",
        FitKind.Swing => "swings",
        FitKind.Walk => "walks",
        _ => "bowl",
    };

    /// <summary>What a reading is of.</summary>
    public static string Name(FitQuantity quantity) => quantity switch
    {
        FitQuantity.Sheer => "sheer",
        FitQuantity.Swing => "swing of the nose",
        FitQuantity.TurnWay => "way until turned 45 deg",
        FitQuantity.Turned => "turned in all, at most",
        FitQuantity.Way => "way",
        FitQuantity.Place => "place",
        FitQuantity.Heading => "heading",
        FitQuantity.RollPeriod => "period of a roll",
        FitQuantity.RollLoss => "loss of a roll",
        FitQuantity.BobPeriod => "period of a bob",
        FitQuantity.BobLoss => "loss of a bob",
        FitQuantity.NodPeriod => "period of a nod",
        FitQuantity.NodLoss => "loss of a nod",
        FitQuantity.FloatAngle => "float angle",
        FitQuantity.NoseHeight => "nose over the water",
        FitQuantity.TailHeight => "tail over the water",
        FitQuantity.Advance => "advance per twitch",
        FitQuantity.PathWidth => "width of the path",
        FitQuantity.HeadingSwing => "heading, side to side",
        _ => "draft in the middle",
    };

    /// <summary>A value of a kind, for people.</summary>
    public static string Show(QuantityKind kind, double si, Shown shown) => kind switch
    {
        QuantityKind.Angle => $"{Trade.Fixed(si / Degree, 1)} deg",
        QuantityKind.Time => $"{Trade.Fixed(si, 3)} s",
        QuantityKind.Ratio => $"{Trade.Fixed(100.0 * si, 0)} %",
        _ => shown.OneFamily.Size(si),
    };

    /// <summary>A value of a reading, for people: the swing of a walk, in whole degrees, since it is large.</summary>
    public static string Show(FitReading reading, double si, Shown shown) =>
        reading.Quantity == FitQuantity.HeadingSwing ? $"{Trade.Fixed(si / Degree, 0)} deg" : Show(reading.Kind, si, shown);

    /// <summary>A number of the lure, in the unit of its key.</summary>
    public static string Show(FitUnknown unknown, double si, Shown shown) =>
        unknown.Kind == QuantityKind.Length ? Length(shown.OneFamily.Unit(ShownQuantity.Size, Math.Max(Math.Abs(si), 0.001)), si) : unknown.Unit.Length == 0 ? Digits(si) : Quantity.Show(si, unknown.Kind, unknown.Unit, 3);

    /// <summary>A band.</summary>
    public static string Range(FitUnknown unknown, double low, double high, Shown shown)
    {
        if (unknown.Kind == QuantityKind.Length)
        {
            ShownUnit unit = shown.OneFamily.Unit(ShownQuantity.Size, Math.Max(Math.Abs(low), Math.Abs(high)));
            return $"{Trade.Fixed(unit.Of(low), unit.MostPlaces)} to {Trade.Fixed(unit.Of(high), unit.MostPlaces)} {unit.Name}";
        }

        string to = Show(unknown, high, shown), from = Show(unknown, low, shown);
        return unknown.Unit.Length > 0 && from.EndsWith(" " + unknown.Unit, StringComparison.Ordinal) ? $"{from[..^(unknown.Unit.Length + 1)]} to {to}" : $"{from} to {to}";
    }

    /// <summary>How much was told.</summary>
    public static string Verdict(FitEstimate value) => value.Verdict switch
    {
        FitVerdict.Told => "told by your data",
        FitVerdict.Hardly => "hardly told",
        FitVerdict.OneReading => "one reading alone: not taken",
        _ => "not told: stays a guess",
    };

    /// <summary>A test to make, as an order.</summary>
    public static string Order(FitAdvice advice) => advice switch
    {
        FitAdvice.TowOn => "tows with hooks at two speeds, three times each",
        FitAdvice.TowOff => "tows without hooks at two speeds, three times each",
        FitAdvice.FilmOn => "three pushes with hooks, filmed from above for a second each",
        FitAdvice.FilmOff => "three pushes without hooks, filmed from above for a second each",
        FitAdvice.Roll => "three rolls: period and loss",
        FitAdvice.Bob => "three bobs: period and loss",
        FitAdvice.Nod => "three nods of the nose: period and loss",
        _ => "angle and height of the nose in a bowl",
    };

    /// <summary>SI unit of a kind; nothing for plain numbers.</summary>
    public static string SiUnit(QuantityKind kind) => Quantity.Format(0.0, kind)[1..].Trim();

    /// <summary>A number in words with its key.</summary>
    public static string Name(FitUnknown unknown) => unknown.Key is null ? unknown.Words : $"{unknown.Words} ({unknown.Name})";

    // Signed, and small beside a millimetre: no words for nothing.
    private static string Length(ShownUnit unit, double si) => $"{Trade.Fixed(unit.Of(si), unit.MostPlaces)} {unit.Name}";

    private static string Digits(double value) => Trade.Digits(value, 3);
}
