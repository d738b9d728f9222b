using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;
using OxyPlot;

namespace LureSim.Reports.Strike;

/// <summary>What the drag window says in words.</summary>
internal static class DragWindowWords
{
    /// <summary>The window and the recommendation.</summary>
    /// <param name="window">Window.</param>
    /// <param name="points">Points of the hook that share the load.</param>
    /// <param name="shown">Units.</param>
    public static string Title(DragWindow window, int points, Shown shown)
    {
        DragRange range = window.Range;
        string all = StrikeNames.Points(points);
        if (range.LowN is not double low)
        {
            return $"No drag sets {all}: even shut the hook gets {shown.Pull(window.Points.Max(p => p.HookForceN))} of the {shown.Pull(window.SettingN)} due";
        }

        string best = window.Advice.DragN is double drag ? $"; best is {shown.Pull(drag)}" : "";
        return window.Advice.Reason switch
        {
            DragAdviceReason.TooWeak => $"{Trade.Capital(Gives(range))} before the strike sets {all}{(range.HighN is double most ? $", from {shown.Pull(most)} of drag on" : ", at any drag")}",
            DragAdviceReason.SetThenEase => $"Set {all} with {shown.Pull(low)} of drag, then ease to {shown.Pull(range.HighN!.Value)}: no one drag does both",
            DragAdviceReason.Shut => $"Strike with the drag shut: from {shown.Pull(low)} on it sets {all}, and nothing gives{AtTheBoat(range, shown)}",
            DragAdviceReason.HighAmongPlants => $"{Window(window.InStrike, low, shown)} of drag sets {all} and spares everything in the strike{best}{AtTheBoat(range, shown)}",
            _ => $"{Window(range, low, shown)} of drag sets {all}, and nothing gives{best}",
        };
    }

    private static string Window(DragRange range, double low, Shown shown) => shown.Range(ShownQuantity.Pull, low, range.HighN!.Value);

    private static string AtTheBoat(DragRange range, Shown shown) => range is { Case: DragCase.Boat, HighN: double most } ? $"; ease to {shown.Pull(most)} at the boat" : "";

    /// <summary>What gives first above the window: what, how and when.</summary>
    /// <param name="range">Window above which something gives.</param>
    public static string Gives(DragRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        WeakPlace place = range.Gives!.Value;
        return $"{StrikeNames.Of(place)} {StrikeNames.Gives(place)}{(range.Case == DragCase.Boat ? " at the boat" : "")}";
    }

    /// <summary>What a zone is called, the longest name that has room.</summary>
    /// <param name="zone">Zone.</param>
    /// <param name="range">Window that it belongs to.</param>
    /// <param name="room">Width that there is, px.</param>
    public static string Zone(DragZone zone, DragRange range, double room)
    {
        string[] names = zone.Sets && !zone.Spares && range.Gives is WeakPlace place ? [Gives(range), zone.Kind, StrikeNames.Gives(place)] : [zone.Kind];
        return names.FirstOrDefault(n => TextLayout.Measure(n, ChartStyle.TextSize, FontWeights.Normal).Width < room) ?? names[^1];
    }

    /// <summary>The window as the file has it, then with other readings of the thresholds.</summary>
    /// <param name="window">Window.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<(string Name, DragRange Range)> Readings(DragWindow window, Shown shown) => [("as the file has it", window.Range), .. window.Bands.Select(b => (Reading(b, shown), b.Range))];

    private static string Reading(DragBand band, Shown shown) => band.Case switch
    {
        ThresholdCase.SetsEasily or ThresholdCase.SetsHard => $"a point sets at {shown.Pull(band.SetN)}",
        ThresholdCase.HoldsWeakly or ThresholdCase.HoldsStrongly => $"a point tears at {shown.Pull(band.HoldN)}",
        _ => "one point alone holds",
    };
}
