using LureSim.Model.Lines;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>The drag window and what to make of it, in sentences.</summary>
internal static class DragStory
{
    // Drag over the label of the line that people set: common practice, no source.
    private const double PracticeLow = 0.25, PracticeHigh = 0.33;

    /// <summary>Window, recommendation, other readings of the thresholds.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Sentences(StrikeReport report, Shown shown) =>
        [.. Found(report, shown), .. report.Window.Range.LowN is null ? [] : Readings(report.Window, shown)];

    /// <summary>The same without the other readings, for where a drawing shows them.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Found(StrikeReport report, Shown shown) =>
        report.Window.Range.LowN is null ? RemedyStory.Sentences(report, shown) : [Window(report, shown), .. Advice(report, shown), Practice(report, shown)];

    private static string Window(StrikeReport report, Shown shown)
    {
        DragRange range = report.Window.Range;
        string points = StrikeNames.Points(report.Strike.Setup.Hook.Points), from = $"From {shown.Pull(range.LowN!.Value)} of drag on, pulled straight off the full spool, the strike sets {points}";
        return range.HighN is not double high ? $"{from}; but {Gives(range)} at any drag."
            : range.Gives is null ? $"{from}, and nothing gives up to {shown.Pull(high)}, all that this drag holds."
            : $"{from}, and up to {shown.Pull(high)} nothing gives; above that {Gives(range)}.{(range.IsEmpty ? " So no one drag does both." : "")}";
    }

    private static IEnumerable<string> Advice(StrikeReport report, Shown shown)
    {
        DragWindow window = report.Window;
        if (window.Advice.Reason == DragAdviceReason.TooWeak)
        {
            yield return "Nothing to recommend: other tackle is due, or a softer stroke with fewer or sharper points.";
        }
        else if (window.Advice.At is DragPoint at)
        {
            yield return $"Recommended: {shown.Pull(at.DragN)}, {Trade.Fixed(100.0 * at.DragN / window.LabelN, 0)} % of the label; {Reason(window, shown)}.";
            yield return Holds(report, at, shown);
        }
    }

    private static string Reason(DragWindow window, Shown shown) => window.Advice.Reason switch
    {
        DragAdviceReason.Middle => $"it may be off by {Trade.Digits(Math.Sqrt(window.Range.HighN!.Value / window.Range.LowN!.Value))} times either way and still does both",
        DragAdviceReason.Shut => $"shut, because the strike harms nothing and every bit of line that slips lets the fish deeper into the plants{Ease(window, shown)}",
        DragAdviceReason.HighAmongPlants => $"a fifth under what the strike spares, because line that slips lets the fish deeper into the plants{Ease(window, shown)}",
        _ => $"the least that sets the hook{Ease(window, shown)}",
    };

    private static string Ease(DragWindow window, Shown shown) => window.Range is { Case: DragCase.Boat, HighN: double boat } && boat < window.Advice.DragN
        ? $"; ease it to {shown.Pull(boat)} or less once the fish is at the boat" : "";

    // What the thresholds may be for the advice to hold: the numbers that nobody has measured, turned round.
    private static string Holds(StrikeReport report, DragPoint at, Shown shown)
    {
        int points = report.Strike.Setup.Hook.Points;
        double strike = at.HookForceN / points, boat = at.DragN * report.Window.BoatFactor / points;
        string hold = boat > strike ? $"{shown.Pull(boat)}, as much as a fish at the boat can put on {(points == 1 ? "it" : "each")} before this drag slips" : $"{shown.Pull(strike)} too";
        return $"With it the hook gets {shown.Pull(at.HookForceN)}: {StrikeNames.Points(points)} {(points == 1 ? "goes" : "go")} in if {(points == 1 ? "it" : "each")} needs no more than {shown.Pull(strike)}, "
            + $"and {(points == 1 ? "holds if it bears" : "hold if each bears")} {hold}.";
    }

    private static string Practice(StrikeReport report, Shown shown)
    {
        DragWindow window = report.Window;
        double low = PracticeLow * window.LabelN, high = PracticeHigh * window.LabelN;
        string material = report.Strike.Setup.Line.Material switch { LineMaterial.Braid => "braid", LineMaterial.Nylon => "nylon", _ => "fluorocarbon" };
        return $"A quarter to a third of the label (common practice, no source) is {shown.Range(ShownQuantity.Pull, low, high)} on this {shown.Pull(window.LabelN)} {material}: {Beside(window.Range, low, high)}.";
    }

    private static string Beside(DragRange range, double low, double high) =>
        range.IsEmpty ? "no drag is right here, this one neither"
        : low >= range.LowN && high <= range.HighN ? "inside what is found here"
        : high < range.LowN ? "too little to set this hook"
        : low > range.HighN ? range.Gives is null ? "more than this reel holds" : "more than is found here: hook and rod decide, not the line"
        : "partly inside what is found here";

    private static IEnumerable<string> Readings(DragWindow window, Shown shown)
    {
        string[] told = [.. window.Bands.Select(b => $"if {If(b, shown)}, {Told(b.Range, shown)}")];
        if (told.Length > 0)
        {
            yield return $"Those forces are guesses. {Trade.Capital(string.Join("; ", told))}.";
        }
    }

    private static string If(DragBand band, Shown shown) => band.Case switch
    {
        ThresholdCase.SetsEasily => $"a point goes in at {shown.Pull(band.SetN)}",
        ThresholdCase.SetsHard => $"it takes {shown.Pull(band.SetN)}",
        ThresholdCase.HoldsWeakly => $"a point tears out at {shown.Pull(band.HoldN)}",
        ThresholdCase.HoldsStrongly => $"it holds to {shown.Pull(band.HoldN)}",
        _ => "one point alone holds the fish",
    };

    private static string Told(DragRange range, Shown shown) =>
        range.LowN is not double low ? "no drag sets the hook"
        : range.HighN is not double high ? "something gives at any drag"
        : range.IsEmpty ? $"{shown.Pull(low)} would set it and {shown.Pull(high)} is the most that spares everything"
        : shown.Range(ShownQuantity.Pull, low, high);

    private static string Gives(DragRange range) => $"{StrikeNames.Of(range.Gives!.Value)} gives first, {(range.Case == DragCase.Boat ? "when a fish at the boat pulls as hard as the drag lets it" : "in the strike")}";
}
