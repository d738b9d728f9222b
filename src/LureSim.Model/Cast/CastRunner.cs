using LureSim.Model.Assembly;
using LureSim.Model.Lines.Air;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Cast;

/// <summary>Runs one cast from the back-swing to the splash.</summary>
public static class CastRunner
{
    private const double LongestS = 30.0;

    // Loose line that no spool bears, see ReleaseLuck.
    private const double BacklashLoops = 5.0;

    // Bend beyond what a rod of its power is made for, share of its length (guess, 0.55 to 0.75): there the outer fibre comes near 1 % of strain.
    private const double MostBend = 0.65;

    // The account of energy: a run that leaves more of the hands' work unexplained is no result.
    private const double MostOpen = 0.01;

    // Releases are tried this far apart, s, or a sigma where that is more; out to 2 sigmas, which bounds 19 of 20, and at least to the shown 10 ms.
    private const double StrideS = 0.008, ShownS = 0.010, WideSigmas = 2.0;

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
            ReleaseMode.Best => search.Best(Stride(setup, task)),
            ReleaseMode.AtTime => search.StepAt(release.Value),
            _ => search.StepAtAngle(release.Value),
        };
        step = Math.Clamp(step + (int)Math.Round(release.ErrorS / task.Solver.SwingStepS), 0, search.LastStep);
        return Report(parts, search, step, new Watch(observer, context.Stop));
    });

    private static CastResult Report(CastParts parts, ReleaseSearch search, int releaseStep, Watch watch)
    {
        (Setup setup, CastTask task) = (parts.Setup, parts.Task);
        CastSolverSpec solver = task.Solver;
        var recorder = new CastRecorder(parts.Chain, solver.OutputStepS);
        AirStep cast = parts.Start(solver.NodeSpacingM);
        cast.Plan(releaseStep * solver.SwingStepS);
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
        CastEnergy energy = Account(cast, startBendJ);
        DemandClosed(energy, cast.TimeS);
        List<ReleasePoint> curve = Curve(parts, search, releaseStep, recorder.PeakLoops);
        ReleaseLuck luck = ReleaseLuck.Of(setup.Hands, splash.X, curve);
        CastRemarks remarks = (splash.X < 0.0 ? CastRemarks.LandsBehind : 0) | (hitsWater ? CastRemarks.HitsWaterInSwing : 0)
            | (recorder.PeakTension > setup.Line.BreakN ? CastRemarks.AboveBreakingLoad : 0)
            | (recorder.PeakLoops > BacklashLoops ? CastRemarks.Backlash : 0)
            | (recorder.PeakBend > MostBend ? CastRemarks.BendBeyondRod : 0)
            | (cast.Reel.PaidM >= cast.Reel.LineM ? CastRemarks.LineRunsOut : 0)
            | (parts.StartRad > setup.Hands.StartRad ? CastRemarks.StartRaised : 0);
        return new CastResult
        {
            Setup = setup,
            Task = task,
            DistanceM = splash.X,
            DistanceMeanM = luck.MeanM,
            DistanceP10M = luck.P10M,
            DistanceP90M = luck.P90M,
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
            LoopsMean = luck.Loops,
            TangleShare = luck.TangleShare,
            Energy = energy,
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

    private static int Stride(Setup setup, CastTask task) =>
        Math.Max(1, (int)Math.Round(Math.Max(StrideS, setup.Hands.ReleaseErrorS) / task.Solver.SwingStepS));

    // The chosen release is a point of its own, its distance read off the trials about it.
    private static List<ReleasePoint> Curve(CastParts parts, ReleaseSearch search, int step, double loops)
    {
        double h = parts.Task.Solver.SwingStepS;
        int stride = Stride(parts.Setup, parts.Task), centre = search.Trials.Count > 0 ? search.Nearest(step) : step;
        int reach = (int)Math.Ceiling(Math.Max(ShownS, WideSigmas * parts.Setup.Hands.ReleaseErrorS) / (stride * h));
        for (int k = -reach; k <= reach; k++)
        {
            search.Try(centre + (k * stride));
        }

        List<ReleasePoint> tried = [.. search.Trials.Where(t => !double.IsNaN(t.Value.DistanceM)).OrderBy(t => t.Key).Select(t => new ReleasePoint((t.Key - step) * h, t.Value.DistanceM, t.Value.Loops))];
        if (tried.Count == 0)
        {
            // A lure that sails like a parachute: the search does not wait for it.
            return [new(0.0, 0.0, loops)];
        }

        double chosen = ReleasePoint.Top(tried);
        List<ReleasePoint> curve = [.. tried.Where(t => t.DelayS != 0.0).Append(new(0.0, chosen, loops)).OrderBy(t => t.DelayS)];
        return [.. curve.Select(t => t with { ChangeM = t.ChangeM - chosen })];
    }

    /// <summary>Refuses a cast whose steps lost or made energy.</summary>
    internal static void DemandClosed(CastEnergy energy, double timeS)
    {
        if (!(Math.Abs(energy.Residual) <= MostOpen))
        {
            throw new ModelException(FormattableString.Invariant(
                $"the energy account of the cast stays open by {100.0 * Math.Abs(energy.Residual):F1} % of the work of the hands, more than {100.0 * MostOpen:F0} %; smaller steps (cast.swing_step, cast.flight_step) may close it"), timeS);
        }
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
