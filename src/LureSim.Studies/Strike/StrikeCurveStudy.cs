using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Strike;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Strike;

/// <summary>Strikes against the distance: four lines on the own rod, further rods with the own line.</summary>
public static class StrikeCurveStudy
{
    /// <summary>Distances, m: 10 to 150 ft, about as people fish.</summary>
    public static IReadOnlyList<double> DistancesM { get; } = [3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 37.5, 45.0];

    /// <summary>Runs all strikes. A strike that the model cannot finish, or that is nearer than the rod tip is high, is a gap.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike; its distance is not read.</param>
    /// <param name="labelN">Label of the line, N.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="run">Runs one strike; null = the strike.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static StrikeCurves Run(
        Setup setup, StrikeTask task, double labelN, int threads, CancellationToken stop, Func<Setup, StrikeTask, Outcome<StrikeResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        run ??= (s, t) => StrikeRun.Run(s, t, new(null, stop));
        StrikeTask coarse = StrikeVariants.Coarse(task);
        (CurveLine Line, CurveRod Rod, Setup Setup)[] variants =
        [
            .. StrikeVariants.Lines(setup, labelN).Select(l => (l.Kind, CurveRod.Own, l.Setup)),
            .. StrikeVariants.Rods(setup.Rod).Select(r => (CurveLine.Own, r.Kind, setup with { Rod = r.Rod })),
        ];
        int count = DistancesM.Count;
        StrikeCurvePoint[] points = ParallelRuns.Execute(
            [.. Enumerable.Range(0, variants.Length * count)], i => At(variants[i / count].Setup, coarse, DistancesM[i % count], run), threads, null, stop);
        StrikeCurve[] curves = [.. variants.Select((v, i) => new StrikeCurve(v.Line, v.Rod, v.Setup.Line, v.Setup.Rod, [.. points[(i * count)..((i + 1) * count)]]))];
        return new([.. curves.Where(c => c.RodKind == CurveRod.Own)], [.. curves.Where(c => c.RodKind != CurveRod.Own)], labelN, setup.Hook.SettingN);
    }

    private static StrikeCurvePoint At(Setup setup, StrikeTask task, double distance, Func<Setup, StrikeTask, Outcome<StrikeResult>> run)
    {
        StrikeSummary? s = StrikeTrial.Try(setup, task with { DistanceM = distance }, run)?.Summary;
        return s is null
            ? new(distance, double.NaN, double.NaN, null, double.NaN, double.NaN, null)
            : new(distance, s.HookForcePeakN, s.ImpulseNs, s.TimeToForceS, s.LineStretchM, s.DragSlipM, s.Limit);
    }
}
