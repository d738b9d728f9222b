using LureSim.Model.Landing;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>What a shut and what a loose drag would do.</summary>
internal static class ExtremesStory
{
    /// <summary>A sentence each, where the model could finish it.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Sentences(StrikeReport report, Shown shown)
    {
        if (report.Locked is StrikeResult locked)
        {
            yield return Locked(report, locked.Summary, shown);
        }

        if (report.Loose is StrikeResult loose)
        {
            yield return Loose(loose, shown);
        }
    }

    private static string Locked(StrikeReport report, StrikeSummary s, Shown shown)
    {
        ShortLine boat = report.Landing.Boat;
        double boatN = report.Window.LockedN * report.Window.BoatFactor;
        string strike = $"Shut, this drag holds {shown.Pull(report.Window.LockedN)}: the strike gets {shown.Pull(s.HookForcePeakN)} and {Slips(s.DragSlipM, shown)}";
        string gives = s.FirstToGive.Ratio < 1.0 ? $"; {StrikeNames.Of(s.FirstToGive.Place)} {StrikeNames.Gives(s.FirstToGive.Place)}" : "";
        return $"{strike}{gives}. At the boat it starts only at {shown.Pull(boatN)}, {(boatN > boat.Weakest.LoadN ? "more than" : "less than")} the {shown.Pull(boat.Weakest.LoadN)} that the weakest part bears there.";
    }

    private static string Loose(StrikeResult loose, Shown shown)
    {
        StrikeSummary s = loose.Summary;
        return $"At {shown.Pull(DragStudy.LooseN)}, a loose drag, the hook gets {shown.Pull(s.HookForcePeakN)} and {Slips(s.DragSlipM, shown)}: {(s.Sets ? "it sets even so" : "the points stay out")}.";
    }

    private static string Slips(double m, Shown shown) => m < 0.01 ? "nothing slips" : $"{shown.Distance(m)} of line slip";
}
