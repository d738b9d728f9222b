using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Air;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using MathNet.Numerics.Distributions;

namespace LureSim.Model.Cast;

/// <summary>Runs one cast from the back-swing to the splash.</summary>
public static class CastRunner
{
    private const double LongestS = 30.0;
    private const double BacklashLoops = 10.0;

    // Release errors at which the distance is sought besides those of the search: a shown one, s, and one that bounds 19 of 20, sigmas.
    private const double ShownS = 0.010, WideSigmas = 2.0;

    /// <summary>Finds the release, then runs the reported cast with the line curved in the air.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="context">Stop; a cast is too short to tell its progress.</param>
    /// <param name="observer">Sees every step of the reported cast, those of the search not; no result depends on it. What it throws ends the run.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure hangs in the water at the start.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CastResult> Run(
        Setup setup, CastTask task, RunContext context = default, Action<CastView>? observer = null) => Outcome.Of(() =>
    {
        context.Stop.ThrowIfCancellationRequested();
        var parts = new CastParts(setup, task);
        var search = new ReleaseSearch(parts, context.Stop);
        ReleaseSpec release = task.Release;
        int step = release.Mode switch
        {
            ReleaseMode.Best => search.Best(),
            ReleaseMode.AtTime => search.StepAt(release.Value),
            _ => search.StepAtAngle(release.Value),
        };
        step = Math.Clamp(step + (int)Math.Round(release.ErrorS / task.Solver.SwingStepS), 0, search.LastStep);
        return Report(parts, search, step, new Watch(observer, context.Stop));
    });

    /// <summary>Distance of the best release, quickly: straight line, no series. Good for comparing, up to 7 % too far.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="context">Stop.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure hangs in the water at the start.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<double> QuickDistance(Setup setup, CastTask task, RunContext context = default) => Outcome.Of(() =>
    {
        var search = new ReleaseSearch(new CastParts(setup, task), context.Stop);
        return search.Distance(search.Best());
    });

    private static CastResult Report(CastParts parts, ReleaseSearch search, int releaseStep, Watch watch)
    {
        (Setup setup, CastTask task) = (parts.Setup, parts.Task);
        CastSolverSpec solver = task.Solver;
        var recorder = new CastRecorder(parts.Chain, solver.OutputStepS);
        AirStep cast = parts.Start(solver.NodeSpacingM);
        double startBendJ = cast.Rod.SpringJ();
        recorder.Look(cast, double.NaN);
        for (int i = 0; i < releaseStep && cast.Line.Z[0] > 0.0; i++)
        {
            watch.Stop.ThrowIfCancellationRequested();
            cast.Step(solver.SwingStepS);
            recorder.Look(cast, double.NaN);
            watch.Observer?.Invoke(new CastView(cast, solver.SwingStepS, double.NaN));
        }

        (double releasedS, double angle, double turn) = (cast.TimeS, cast.Rod.Q[1], cast.Rod.V[1]);
        bool hitsWater = cast.Line.Z[0] <= 0.0 || (releaseStep == search.LastStep && search.EndsInWater);
        cast.Release();
        Splash splash = Fly(cast, recorder, solver, releasedS, watch);
        recorder.End(cast);
        List<ReleasePoint> curve = Curve(parts, search, releaseStep);
        (double p10, double mean, double p90) = Band(setup.Hands, splash.X, curve);
        CastRemarks remarks = (splash.X < 0.0 ? CastRemarks.LandsBehind : 0) | (hitsWater ? CastRemarks.HitsWaterInSwing : 0)
            | (recorder.PeakTension > setup.Line.BreakN ? CastRemarks.AboveBreakingLoad : 0)
            | (recorder.PeakLoops > BacklashLoops ? CastRemarks.Backlash : 0)
            | (cast.Reel.PaidM >= cast.Reel.LineM ? CastRemarks.LineRunsOut : 0)
            | (parts.StartRad > setup.Hands.StartRad ? CastRemarks.StartRaised : 0);
        return new CastResult
        {
            Setup = setup,
            Task = task,
            DistanceM = splash.X,
            DistanceMeanM = mean,
            DistanceP10M = p10,
            DistanceP90M = p90,
            LineOutM = task.OverhangM + cast.Reel.PaidM,
            LaunchSpeedMS = recorder.LaunchSpeed,
            LaunchAngleRad = recorder.LaunchAngle,
            FlightTimeS = splash.TimeS - releasedS,
            ApexM = recorder.Apex,
            StartAngleRad = parts.StartRad,
            ReleaseTimeS = releasedS,
            ReleaseAngleRad = angle,
            ReleaseTurnRadS = turn,
            ReleaseCurve = curve,
            PeakBendShare = recorder.PeakBend,
            PeakBendEnergyJ = recorder.PeakBendJ,
            PeakHandTorqueNm = recorder.PeakTorque,
            PeakTensionN = recorder.PeakTension,
            SpoolPeakRpm = recorder.PeakSpin * 30.0 / Math.PI,
            LoopsThrown = recorder.PeakLoops,
            Energy = Account(cast, startBendJ),
            Series = recorder.Series(),
            Remarks = remarks,
        };
    }

    private static Splash Fly(AirStep cast, CastRecorder recorder, CastSolverSpec solver, double releasedS, Watch watch)
    {
        AirLine line = cast.Line;
        (double x, double z, double t) = (line.X[0], line.Z[0], cast.TimeS);
        while (line.Z[0] > 0.0)
        {
            watch.Stop.ThrowIfCancellationRequested();
            if (cast.TimeS - releasedS > LongestS)
            {
                throw new ModelException($"The lure is still in the air after {LongestS} s.", cast.TimeS);
            }

            if (!cast.RodAtRest && cast.TimeS - releasedS >= solver.RodAfterReleaseS)
            {
                cast.RestRod();
            }

            (x, z, t) = (line.X[0], line.Z[0], cast.TimeS);
            double h = cast.RodAtRest ? solver.FlightStepS : solver.SwingStepS;
            cast.Step(h);
            recorder.Look(cast, releasedS);
            watch.Observer?.Invoke(new CastView(cast, h, releasedS));
        }

        double share = z > line.Z[0] ? Math.Clamp(z / (z - line.Z[0]), 0.0, 1.0) : 0.0;
        return new Splash(x + (share * (line.X[0] - x)), t + (share * (cast.TimeS - t)));
    }

    private static List<ReleasePoint> Curve(CastParts parts, ReleaseSearch search, int step)
    {
        double h = parts.Task.Solver.SwingStepS, wide = WideSigmas * parts.Setup.Hands.ReleaseErrorS;
        foreach (double delay in (double[])[-ShownS, ShownS, -wide, wide])
        {
            search.Distance(Math.Clamp(step + (int)Math.Round(delay / h), 0, search.LastStep));
        }

        double chosen = search.Distance(step);
        return [.. search.Known.OrderBy(pair => pair.Key).Select(pair => new ReleasePoint((pair.Key - step) * h, pair.Value - chosen))];
    }

    // Distances over a grid of equally likely release errors and cast-to-cast factors.
    private static (double P10, double Mean, double P90) Band(HandsSpec hands, double distance, List<ReleasePoint> curve)
    {
        const int count = 41;
        var all = new List<double>(count * count);
        for (int i = 0; i < count; i++)
        {
            double delay = hands.ReleaseErrorS * Normal.InvCDF(0.0, 1.0, (i + 0.5) / count);
            double there = distance + ReleasePoint.Interpolate(curve, delay);
            for (int j = 0; j < count; j++)
            {
                all.Add(there * (1.0 + (hands.Scatter * Normal.InvCDF(0.0, 1.0, (j + 0.5) / count))));
            }
        }

        all.Sort();
        return (all[all.Count / 10], all.Average(), all[all.Count * 9 / 10]);
    }

    private static CastEnergy Account(AirStep cast, double startBendJ)
    {
        (double lure, double line) = cast.Line.KineticJ();
        LineWork air = cast.Line.Work;
        RodWork rod = cast.Rod.Work;
        ReelFeed reel = cast.Reel;
        return new CastEnergy(
            rod.HandsJ, cast.Rod.KineticJ() + cast.Rod.SpringJ() - startBendJ + rod.RaisedJ, rod.DampingJ, rod.AirJ, lure + air.RaisedJ, air.LureAirJ,
            line + air.StretchJ, air.LineAirJ, reel.KineticJ, reel.LossJ, reel.GivenJ - air.FedJ);
    }

    private readonly record struct Splash(double X, double TimeS);

    private readonly record struct Watch(Action<CastView>? Observer, CancellationToken Stop);
}
