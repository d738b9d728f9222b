using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>A search for a wanted walk: coarse over many lures, then the best ones in full, with the bands that the guesses leave.</summary>
public static class WalkStudy
{
    // What a lure is charged that floats upright but does not walk, and one that does not even do that: more than any miss of a walk that comes near.
    private const double NoWalkMiss = 100.0, NoFloatMiss = 1000.0;

    private const double TenthShare = 0.1, Degree = Math.PI / 180.0;

    // Candidates less apart than this are one.
    private const double ApartKg = 0.2e-3, ApartM = 0.001;

    // Shares of the search: lures, then checks.
    private const double SearchShare = 0.7;

    /// <summary>Searches.</summary>
    /// <param name="scenario">Valid scenario with a twitched retrieve.</param>
    /// <param name="wish">Walk wanted.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="task">Tow and pull of the candidates' margins.</param>
    /// <param name="draw">Draws of the guesses for bands: the scenario of a draw; null: no bands.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops it; what was tried by then is kept.</param>
    /// <exception cref="ArgumentException">The retrieve is a steady pull, or a number makes no sense.</exception>
    public static WalkAnswer Run(
        ScenarioResult scenario, WalkWish wish, WalkPlan plan, MarginTask task, Func<int, ScenarioResult>? draw, Func<Model.Assembly.Setup, RetrieveTask, StationaryOutcome>? run,
        Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(plan);
        if (scenario.Retrieve!.IsTow)
        {
            throw new ArgumentException("a steady pull (retrieve.stroke = 0) has no rhythm", nameof(scenario));
        }

        run ??= (s, t) => StationaryOutcome.Of(s, t, stop);
        LureSpec lure = scenario.Setup!.Lure;
        WaterState water = WaterModel.Evaluate(scenario.Setup.Water);
        var sizes = HookSizes.Of(scenario);
        var search = new WalkSearch(lure, sizes, WalkBounds.Of(lure), plan, (move, _) => Look(move));
        (IReadOnlyList<WalkCandidate> tried, bool stopped) = search.Run(s => progress?.Invoke(SearchShare * s), stop);
        if (tried.Count == 0)
        {
            stop.ThrowIfCancellationRequested();
        }

        WalkCandidate[] best = Best(tried, plan.Descents);
        WalkCandidate own = tried[0];
        if (!stopped)
        {
            try
            {
                int done = 0;
                WalkCandidate[] chosen = best.Contains(own) ? best : [.. best, own];
                var check = new WalkChecker(scenario, wish, plan, draw, run);
                WalkCandidate[] whole = ParallelRuns.Execute(
                    chosen,
                    c => c with { Point = DesignPoint.Whole(c.Point.Lure, water, task, stop), Check = check.Of(c.Move, stop) },
                    plan.Threads,
                    () => progress?.Invoke(SearchShare + ((1.0 - SearchShare) * ++done / chosen.Length)),
                    stop);
                own = whole[Array.IndexOf(chosen, own)];
                best = [.. whole.Take(best.Length).OrderByDescending(c => c.Check!.Walks).ThenBy(c => Math.Abs((double.IsNaN(c.Check!.GlideM) ? 0.0 : c.Check.GlideM) - wish.GlideM) / wish.GlideM)];
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                stopped = true;
            }
        }

        return new(wish, plan, own, best, Dead(tried), tried.Count, stopped);

        WalkCandidate Look(WalkMove move)
        {
            LureSpec with = move.Of(lure, sizes);
            var point = DesignPoint.Of(with, water);
            if (point.Word != FloatWord.Floats)
            {
                return new(move, point, double.NaN, null, NoFloatMiss);
            }

            WalkStart start = WalkStart.Spread(1)[0];
            StationaryOutcome outcome = run(scenario.Setup with { Lure = with }, StationaryRun.Make(scenario.Retrieve!, wish.RhythmPerS, start, new StationaryPlan()));
            return new(move, point, outcome.Summary?.GlideWidthM ?? double.NaN, outcome.Pattern, Miss(wish, point, outcome));
        }
    }

    /// <summary>How far a lure is from the wish; finite.</summary>
    /// <param name="wish">Wish.</param>
    /// <param name="point">Lure that floats.</param>
    /// <param name="outcome">Its answer to the rhythm.</param>
    internal static double Miss(WalkWish wish, DesignPoint point, StationaryOutcome outcome)
    {
        double angle = wish.TrimRad is double wanted ? (point.Trim!.Rest.TrimRad - wanted) / Degree : 0.0;
        if (outcome.Summary is not RetrieveSummary s)
        {
            return NoFloatMiss;
        }

        double glide = (s.GlideWidthM - wish.GlideM) / (TenthShare * wish.GlideM);
        double miss = Math.Min(NoWalkMiss, glide * glide) + (angle * angle);
        return s.Pattern == WalkPattern.Alternating ? miss : NoWalkMiss + (NoWalkMiss * (1.0 - s.FlipShare)) + miss;
    }

    // Best first, each a lure of its own.
    private static WalkCandidate[] Best(IReadOnlyList<WalkCandidate> tried, int most)
    {
        var best = new List<WalkCandidate>();
        foreach (WalkCandidate c in tried.Where(c => c.Walks).OrderBy(c => c.Miss))
        {
            if (best.Count < most && best.TrueForAll(b => Apart(b.Move, c.Move)))
            {
                best.Add(c);
            }
        }

        return [.. best];
    }

    private static bool Apart(WalkMove a, WalkMove b) => a.HookSteps != b.HookSteps
        || Math.Abs(a.BallastKg - b.BallastKg) > ApartKg || Math.Abs(a.BallastXM - b.BallastXM) > ApartM || Math.Abs(a.TieZM - b.TieZM) > ApartM;

    private static DeadWalk[] Dead(IReadOnlyList<WalkCandidate> tried) =>
    [
        .. tried.Where(c => !(c.Pattern == WalkPattern.Alternating)).GroupBy(c => (c.Point.Word, c.Pattern))
            .Select(g => new DeadWalk(g.Key.Word, g.Key.Pattern, g.Count())).OrderByDescending(d => d.Count).ThenBy(d => d.Word).ThenBy(d => d.Pattern),
    ];
}
