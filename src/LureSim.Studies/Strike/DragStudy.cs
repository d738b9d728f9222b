using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Landing;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Strike;

/// <summary>The strikes that a drag window rests on.</summary>
/// <param name="Own">With the scenario's own drag.</param>
/// <param name="Locked">With the drag shut; null when the model cannot finish it.</param>
/// <param name="Loose">With a loose drag; null when the model cannot finish it.</param>
/// <param name="Landing">Holding and landing.</param>
/// <param name="Window">The window.</param>
public sealed record DragOutcome(StrikeResult Own, StrikeResult? Locked, StrikeResult? Loose, LandingResult Landing, DragWindow Window);

/// <summary>A reading of the thresholds.</summary>
/// <param name="Case">Which.</param>
/// <param name="Hook">The hook with it.</param>
public sealed record ThresholdReading(ThresholdCase Case, HookHold Hook);

/// <summary>
/// Finds the drag window of a strike: strikes over a ladder of drags, halved where the points begin to be set and where something begins to give. What is
/// spared at the boat comes from statics (<see cref="ShortLine"/>). Other readings of the thresholds change no strike, so they need none.
/// </summary>
public static class DragStudy
{
    /// <summary>A loose drag, N: half a pound, which a light pull of the hand moves (a choice).</summary>
    public const double LooseN = 0.5 * LineLabels.NewtonPerLb;

    // Loosest drag of the ladder, N, its rungs, and halvings of a rung: 1.39^(1/32) is 1 % of the drag.
    private const double LeastN = 1.0;
    private const int Rungs = 12, Halvings = 5;

    // Among plants: under the highest by a fifth (a choice).
    private const double PlantShare = 0.8;

    /// <summary>Finds it; fails when the strike with the own drag does.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="labelN">Label of the line, N.</param>
    /// <param name="readings">Other readings of the thresholds.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="run">Runs one strike; null = the strike.</param>
    /// <exception cref="ArgumentException">A value is out of range or makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<DragOutcome> Run(
        Setup setup, StrikeTask task, double labelN, IReadOnlyList<ThresholdReading> readings, int threads, CancellationToken stop,
        Func<Setup, StrikeTask, Outcome<StrikeResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(readings);
        run ??= (s, t) => StrikeRun.Run(s, t, new(null, stop));
        Outcome<StrikeResult> own = run(setup, task);
        Outcome<LandingResult> landing = LandingOfStrike.Run(setup, task);
        if (!own.IsWhole || !landing.IsWhole)
        {
            return new(null, own.Failure ?? landing.Failure);
        }

        double locked = Math.Max(setup.Reel.DragN, ReelKeys.Drag.Choices[0].Value);
        double[] drags = [.. Ladder(locked), LooseN];
        StrikeResult?[] strikes = ParallelRuns.Execute(drags, d => Strike(d), threads, null, stop);
        DragPoint[] ladder = Rising([own.Result, .. strikes]);
        var demand = new DragDemand(setup, task, landing.Result);
        Func<DragPoint, double>[] shares = [demand.SetShare, demand.HarmShare];
        DragPoint[][] more = ParallelRuns.Execute(shares, s => Halved(ladder, s, Point), threads, null, stop);
        DragPoint[] points = [.. ladder.Concat(more.SelectMany(m => m)).DistinctBy(p => p.DragN).OrderBy(p => p.DragN)];
        DragRange range = demand.Range(points), inStrike = demand.InStrike(points);
        return new(new DragOutcome(own.Result, strikes[Rungs - 1], strikes[Rungs], landing.Result, new()
        {
            Points = [.. points],
            Range = range,
            InStrike = inStrike,
            Bands = [.. readings.Select(r => new DragBand(r.Case, r.Hook.SetN, r.Hook.HoldN, Read(r.Hook).Range(points)))],
            LockedN = locked,
            LabelN = labelN,
            SettingN = setup.Hook.SettingN,
            BoatFactor = demand.BoatFactor,
            Advice = setup.Cover.Kind == CoverKind.Open ? InOpenWater(range, inStrike, Point) : AmongPlants(inStrike, locked, Point),
        }));

        DragDemand Read(HookHold hook) => new(setup with { Hook = hook }, task, LandingOfStrike.Run(setup with { Hook = hook }, task).Demand());

        StrikeResult? Strike(double drag) => StrikeTrial.Try(setup with { Reel = setup.Reel with { DragN = drag } }, task, run);

        DragPoint? Point(double drag) => Strike(drag) is StrikeResult strike ? PointOf(strike) : null;
    }

    private static IEnumerable<double> Ladder(double locked) => Enumerable.Range(0, Rungs).Select(i => i == Rungs - 1 ? locked : LeastN * Math.Pow(locked / LeastN, (double)i / (Rungs - 1)));

    private static DragPoint[] Rising(IEnumerable<StrikeResult?> strikes) => [.. strikes.OfType<StrikeResult>().Select(PointOf).DistinctBy(p => p.DragN).OrderBy(p => p.DragN)];

    private static DragPoint PointOf(StrikeResult strike)
    {
        StrikeSummary s = strike.Summary;
        double Load(WeakPlace place) => s.Margins.First(m => m.Place == place).LoadN;
        return new(strike.Setup.Reel.DragN, Load(WeakPlace.HookHold), Load(WeakPlace.Knot), s.RodUse, s.DragSlipM);
    }

    // Strikes between the two that a share passes 1 between, each halving the room; none where one of them cannot be finished.
    private static DragPoint[] Halved(DragPoint[] ladder, Func<DragPoint, double> share, Func<double, DragPoint?> strike)
    {
        int above = DragDemand.Bracket(ladder, share);
        var made = new List<DragPoint>();
        if (above > 0)
        {
            (double low, double high) = (ladder[above - 1].DragN, ladder[above].DragN);
            for (int i = 0; i < Halvings && strike(0.5 * (low + high)) is DragPoint middle; i++)
            {
                made.Add(middle);
                (low, high) = share(middle) >= 1.0 ? (low, middle.DragN) : (middle.DragN, high);
            }
        }

        return [.. made];
    }

    private static DragAdvice InOpenWater(DragRange range, DragRange inStrike, Func<double, DragPoint?> strike) =>
        range.LowN is not double low ? new(DragAdviceReason.CannotSet, null)
        : !range.IsEmpty ? new(DragAdviceReason.Middle, strike(Math.Sqrt(low * range.HighN!.Value)))
        : inStrike.IsEmpty ? new(DragAdviceReason.TooWeak, null)
        : new(DragAdviceReason.SetThenEase, strike(low));

    private static DragAdvice AmongPlants(DragRange range, double locked, Func<double, DragPoint?> strike) =>
        range.LowN is not double low ? new(DragAdviceReason.CannotSet, null)
        : range.IsEmpty ? new(DragAdviceReason.TooWeak, null)
        : range.Gives is null ? new(DragAdviceReason.Shut, strike(locked))
        : new(DragAdviceReason.HighAmongPlants, strike(Math.Max(low, PlantShare * range.HighN!.Value)));
}
