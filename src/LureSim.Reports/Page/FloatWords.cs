using LureSim.Model.Margin;
using LureSim.Model.Trim;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Reports.Page;

/// <summary>How a lure floats, comes on a tight line and answers a pull, in sentences; which changes are worth a row.</summary>
internal static class FloatWords
{
    private const int MostRows = 5, FewRows = 3;

    // What moves the margin by less reads 0.00.
    private const double LeastMove = 0.005;

    /// <summary>Float, stand, tight line, pull.</summary>
    /// <param name="report">Design.</param>
    /// <param name="guesses">Guesses of the file.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Sentences(DesignReport report, IReadOnlyList<GuessedKey> guesses, Shown shown) =>
    [
        $"{How(report.Rest!, shown)} {TrimText.Stands(report.Rest!, shown)}",
        Tow(report.Own, report.Task, guesses.FirstOrDefault(g => g.Key == LureKeys.SternShedding), shown),
        .. report.Own.Margin is MarginResult margin ? [DesignText.Pull(margin, shown)] : Array.Empty<string>(),
    ];

    /// <summary>Changes for the table: those that move the margin most; where fewer than three move it at all, then those that change the turn at one pull most.</summary>
    /// <param name="report">Design.</param>
    public static IReadOnlyList<RankedChange> Telling(DesignReport report)
    {
        RankedChange[] moving = [.. report.Changes.Where(MovesMargin).Take(MostRows)];
        return moving.Length >= FewRows ? moving
            : [.. moving, .. report.Changes.Except(moving).Where(c => TurnMoveDeg(c) is not null).OrderByDescending(c => Math.Abs(TurnMoveDeg(c)!.Value)).Take(MostRows - moving.Length)];

        double? TurnMoveDeg(RankedChange change) => change.After.PullTurnDeg - report.Own.PullTurnDeg;
    }

    /// <summary>What stands in the table, and what no row can tell.</summary>
    /// <param name="report">Design.</param>
    /// <param name="shown">Units.</param>
    public static string Ranking(DesignReport report, Shown shown)
    {
        int moving = report.Changes.Count(MovesMargin);
        string rows = moving >= FewRows ? "Of the changes that a builder can make, these move the margin most."
            : moving == 0 ? "None of the changes tried moves the margin; these change the turn at one pull most."
            : $"Of the changes tried only {(moving == 1 ? "this moves" : "these move")} the margin: {Trade.And([.. report.Changes.Where(MovesMargin).Select(c => DesignWords.Change(c.Change, shown))])}. Below stands what changes the turn at one pull most.";
        string[] fates = [.. report.Changes.Where(c => c.After.Word != report.Own.Word).GroupBy(c => c.After.Word)
            .Select(g => $" With {Or([.. g.Select(c => DesignWords.Change(c.Change, shown))])} it {DesignWords.Fate(g.Key)}.")];
        return rows + string.Concat(fates);
    }

    /// <summary>Which errors stand in the last row.</summary>
    /// <param name="errors">Errors.</param>
    /// <param name="shown">Units.</param>
    public static string Errors(ToleranceTable errors, Shown shown) =>
        $"Errors, this way or the other, each so that it moves the figure most: {Trade.And([.. errors.Rows.Where(r => r.MorePoint is not null).Select(r => DesignWords.Change(r.More, shown))])}.";

    private static bool MovesMargin(RankedChange change) => Math.Abs(change.MarginMove ?? 0.0) >= LeastMove;

    private static string How(TrimResult t, Shown shown) => t.FreeboardM >= 0.0
        ? $"It floats {TrimText.Angle(t.Rest.TrimRad)}, {shown.Size(t.DraftM)} deep, with {shown.Size(t.FreeboardM)} of freeboard, the height of its back over the water halfway along."
        : $"It floats {TrimText.Angle(t.Rest.TrimRad)}, {shown.Size(t.DraftM)} deep, with its back {shown.Size(-t.FreeboardM)} under the water halfway along.";

    private static string Tow(DesignPoint own, MarginTask task, GuessedKey? guess, Shown shown)
    {
        if (own.SheddingMargin is not double margin)
        {
            return $"Drawn straight at {shown.Speed(task.SpeedMS)} it finds no attitude on the water, so nothing can be told of a tight line.";
        }

        string comes = $"On a tight line, drawn straight at {shown.Speed(task.SpeedMS)}, it {(margin > 0.0 ? "comes straight" : "leaves the straight line by itself")}: its margin is {Trade.Fixed(margin, 2)}.";
        string chi = Trade.Fixed(own.Lure.SternShedding, 2);
        string least = own.CriticalShedding switch
        {
            null => $"more than {Trade.Digits(MarginRun.MostShedding)}, the largest that was tried",
            0.0 => "0: it would come straight with none at all, so no lure has a larger margin with this chi",
            double c => Trade.Fixed(c, 2),
        };
        return $"{comes} The margin is chi, the share of the flow across it that a hull sheds at the stern ({chi}), less the least with which it comes straight ({least}). {Rests(own, guess)}";
    }

    private static string Rests(DesignPoint own, GuessedKey? guess)
    {
        if (guess is null)
        {
            return "Chi is the one that the file gives.";
        }

        string over = own.CriticalShedding is not double c ? "" : c <= guess.Low ? ", and it comes straight over all of that" : c >= guess.High ? ", and it leaves the line over all of that"
            : $", and below {Trade.Fixed(c, 2)} it would leave the line";
        return $"Nobody has measured chi: it is a guess that could be {Trade.Fixed(guess.Low, 2)} to {Trade.Fixed(guess.High, 2)}{over}.";
    }

    private static string Or(string[] items) => items.Length == 1 ? items[0] : $"{string.Join(", ", items[..^1])} or {items[^1]}";
}
