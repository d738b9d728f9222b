using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>Which rhythms walk, which is best, and whether the hand keeps up: three sentences to read aloud.</summary>
public static class CadenceStory
{
    /// <summary>The three sentences.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<string> Sentences(CadenceResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        return [Where(result), Best(result, shown), Hand(result, shown)];
    }

    /// <summary>The windows and the best rhythm in a line for a picture.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    public static string Headline(CadenceResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Windows.Count == 0
            ? $"No rhythm from {Rate(result.Points[0].PerS)} to {Rate(result.Points[^1].PerS)} twitches a second walks"
            : $"Walks {string.Join(" and ", result.Windows.Select(Span))} twitches a second; best near {Rate(result.Best!.PerS)}";
    }

    /// <summary>A window as "from 0.65 to at least 4".</summary>
    /// <param name="window">Window.</param>
    public static string Span(CadenceWindow window)
    {
        ArgumentNullException.ThrowIfNull(window);
        return $"from {Rate(window.FromPerS)}{(window.FromIsRangeEnd ? " or less" : "")} to {(window.ToIsRangeEnd ? "at least " : "")}{Rate(window.ToPerS)}";
    }

    /// <summary>What a rhythm asks of the wrist, of what it keeps up: "29 %"; "-" where no start has a result.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    /// <param name="point">Rhythm.</param>
    public static string WristShare(CadenceResult result, RhythmPoint point)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(point);
        return Share(point.Median(o => o.WristTorqueRmsNm), result.Torque.Nm);
    }

    /// <summary>A rhythm with two decimals at most.</summary>
    /// <param name="perS">Twitches per second.</param>
    public static string Rate(double perS) => perS.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Where(CadenceResult result)
    {
        if (result.Windows.Count == 0)
        {
            WalkPattern? most = result.Points.GroupBy(p => p.Pattern).OrderByDescending(g => g.Count()).First().Key;
            return $"It walks at no rhythm from {Rate(result.Points[0].PerS)} to {Rate(result.Points[^1].PerS)} twitches a second: most often {Answer(most)}.";
        }

        string spans = string.Join(", and again ", result.Windows.Select(Span));
        CadenceWindow first = result.Windows[0], last = result.Windows[^1];
        string slower = first.FromIsRangeEnd ? "" : $"; slower, {Answer(first.Below)}";
        string faster = last.ToIsRangeEnd ? "" : $"; faster, {Answer(last.Above)}";
        return $"It walks {spans} twitches a second{slower}{faster}.";
    }

    private static string Best(CadenceResult result, Shown shown)
    {
        if (result.BestPoint is not RhythmPoint best)
        {
            return result.LockShare == 0.0
                ? "Not one start walks."
                : $"At best {Trade.Fixed(100.0 * result.LockShare, 0)} percent of the starts walk, which is luck and not a rule.";
        }

        double glide = best.Median(o => o.GlideWidthM);
        string room = result.Best!.HasRoom ? "" : ", though there is no room to miss it";
        RhythmPoint? narrow = result.NarrowestAboveBest;
        string faster = narrow is not null && narrow.Median(o => o.GlideWidthM) < glide
            ? $"; faster, it glides less, down to {shown.Size(narrow.Median(o => o.GlideWidthM))} at {Rate(narrow.PerS)} a second"
            : "";
        return $"Best is {Rate(best.PerS)} a second{room}: there {Starts(best)} walk, each twitch turns it {Trade.Fixed(best.Median(o => o.HeadingSwingDeg), 0)} "
            + $"degrees and takes it {shown.Size(glide)} across{faster}.";
    }

    private static string Starts(RhythmPoint point)
    {
        int all = point.Outcomes.Count, walk = (int)Math.Round(point.LockShare * all);
        return walk == all ? $"all {all} starts" : $"{walk} of {all} starts";
    }

    private static string Hand(CadenceResult result, Shown shown)
    {
        (WristLimit likely, WristLimit weak, WristLimit strong) = result.Wrist;
        SustainedTorque t = result.Torque;
        bool guessed = t.LowNm < t.HighNm;
        if (weak.ToIsRangeEnd)
        {
            RhythmPoint hardest = result.Points.MaxBy(p => p.Median(o => o.WristTorqueRmsNm))!;
            double torque = hardest.Median(o => o.WristTorqueRmsNm);
            string range = guessed ? $" (a guess; {Share(torque, t.HighNm)} of a strong one, {Share(torque, t.LowNm)} of a weak one)" : "";
            return $"The hand is no limit: the hardest rhythm, {Rate(hardest.PerS)} a second, asks for {Share(torque, t.Nm)} of what a wrist keeps up{range}.";
        }

        string keeps = $"a wrist that keeps up {shown.Torque(t.Nm)}{(guessed ? $", a guess between {shown.Range(ShownQuantity.Torque, t.LowNm, t.HighNm, "and")}," : "")}";
        return $"The hand sets a limit: {keeps} holds {Limit(likely, result)} for long"
            + (guessed ? $"; a weak one holds {Limit(weak, result)}, a strong one {Limit(strong, result)}." : ".");
    }

    private static string Share(double part, double whole) => double.IsFinite(part) ? $"{Trade.Fixed(100.0 * part / whole, 0)} %" : "-";

    private static string Limit(WristLimit limit, CadenceResult result) =>
        limit.ToIsRangeEnd ? "every rhythm tried"
        : double.IsNaN(limit.ToPerS) ? $"not even {Rate(result.Points[0].PerS)} a second"
        : $"up to {Rate(limit.ToPerS)} a second";

    /// <summary>What the lure does, in a clause.</summary>
    /// <param name="pattern">Its answer; null where every run failed.</param>
    internal static string Answer(WalkPattern? pattern) => pattern switch
    {
        WalkPattern.Tracking => "it is towed along its line",
        WalkPattern.Turning => "it turns on the spot",
        WalkPattern.OneSided => "it swings out and back on one side of its line",
        WalkPattern.Still => "the pulls do not reach it",
        WalkPattern.Skipping => "some pulls are lost in slack",
        WalkPattern.Spinning => "it turns over its line",
        WalkPattern.Diving => "it dives",
        WalkPattern.RolledOver => "it rolls over",
        WalkPattern.Standing => "it stands up",
        WalkPattern.Fouling => "its line is pulled over a hook",
        WalkPattern.Alternating => "it walks",
        null => "the model finds no answer",
        _ => "it turns without a rule",
    };
}
