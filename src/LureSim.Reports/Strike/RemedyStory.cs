using LureSim.Model.Lures;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>Why no drag sets the hook, and what would.</summary>
internal static class RemedyStory
{
    /// <summary>A few sentences, one per line.</summary>
    /// <param name="report">Strike that no drag sets.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Sentences(StrikeReport report, Shown shown)
    {
        HookHold hook = report.Strike.Setup.Hook;
        double most = report.Window.Points.Max(p => p.HookForceN);
        yield return $"No drag sets {StrikeNames.Points(hook.Points)}: even shut the hook gets {shown.Pull(most)}, and {shown.Pull(hook.SettingN)} is due.";
        string[] would = [.. Would(report, shown)];
        yield return would.Length > 0
            ? $"What would, one thing changed and the drag shut: {string.Join("; ", would)}."
            : "Neither full strength, a haul, a shorter distance nor another line of this label would.";
        yield return $"Or points that go in with {shown.Pull(most / hook.Points)} each: sharper, of thinner wire{(hook.Points > 1 && most >= hook.SetN ? ", or one of them alone, which needs " + shown.Pull(hook.SetN) : "")}.";
    }

    private static IEnumerable<string> Would(StrikeReport report, Shown shown)
    {
        StrikeRemedy[] sets = [.. report.Remedies.Where(r => r.Sets)];
        foreach (RemedyKind kind in (RemedyKind[])[RemedyKind.FullEffort, RemedyKind.Haul, RemedyKind.FullHaul])
        {
            if (Array.Find(sets, r => r.Kind == kind) is StrikeRemedy stroke && (kind != RemedyKind.FullHaul || !Array.Exists(sets, r => r.Kind == RemedyKind.Haul)))
            {
                yield return $"{Stroke(kind)}, {shown.Pull(stroke.HookForceN)}";
            }
        }

        if (sets.Where(r => r.Kind == RemedyKind.Nearer).MaxBy(r => r.DistanceM) is StrikeRemedy nearer)
        {
            yield return $"{shown.Distance(nearer.DistanceM)} of distance, {shown.Pull(nearer.HookForceN)}";
        }

        foreach (StrikeRemedy line in sets.Where(r => r.Kind == RemedyKind.Line))
        {
            yield return $"{Line(line.Line)} of this label, {shown.Pull(line.HookForceN)}";
        }
    }

    private static string Stroke(RemedyKind kind) => kind switch
    {
        RemedyKind.FullEffort => "all of your strength",
        RemedyKind.Haul => "a haul with arms and back",
        _ => "a haul with all of your strength",
    };

    private static string Line(CurveLine line) => line switch
    {
        CurveLine.Braid => "braid",
        CurveLine.Nylon => "dry nylon",
        CurveLine.SoakedNylon => "soaked nylon",
        _ => "fluorocarbon",
    };
}
