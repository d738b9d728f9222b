using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Retrieve;

/// <summary>Runs one retrieve from start to end.</summary>
public sealed class RetrieveRun
{
    /// <summary>Step rule: the tension direction is explicit, so dt sqrt(T/mu)/l must stay under this (docs/line-solver.md).</summary>
    public const double StepRatioLimit = 0.5;

    private const int DeepestHalving = 10;
    private readonly RetrieveParts parts;
    private readonly RetrieveTask task;
    private readonly RetrieveRecorder recorder;
    private readonly RunContext context;
    private readonly Action<RetrieveView>? observer;
    private readonly double baseStep;
    private double time;
    private double stepBefore;
    private double speed;
    private double backedAway;
    private int halving;
    private int steps;
    private int halved;
    private double largestRatio;

    private RetrieveRun(Setup setup, RetrieveTask task, RunContext context, Action<RetrieveView>? observer)
    {
        parts = new RetrieveParts(setup, task);
        (this.task, this.context, this.observer) = (task, context, observer);
        int perOutput = Math.Max(1, (int)Math.Ceiling((task.Solver.OutputStepS / task.Solver.StepS) - 1e-9));
        baseStep = task.Solver.OutputStepS / perOutput;
        recorder = new RetrieveRecorder(parts, perOutput);
    }

    /// <summary>
    /// Runs the retrieve. Fails, with what was recorded so far, when the state stops being finite, the step rule cannot be kept, or the lure
    /// reaches the rod; with nothing when the lure finds no float.
    /// </summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="context">Progress and stop.</param>
    /// <param name="observer">Sees every accepted step, the one at rest not; no result depends on it. What it throws ends the run.</param>
    /// <exception cref="ArgumentException">A value is out of range or makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<RetrieveResult> Run(
        Setup setup, RetrieveTask task, RunContext context = default, Action<RetrieveView>? observer = null)
    {
        context.Stop.ThrowIfCancellationRequested();
        Outcome<RetrieveResult> outcome = Outcome.Of(() =>
        {
            var run = new RetrieveRun(setup, task, context, observer);
            string? failure = run.Advance();
            return run.recorder.Finish(failure, run.Counters());
        });
        return outcome.Result is { Failure: string reason } part ? new(part, new(reason, part.Series["time_s"][^1])) : outcome;
    }

    private string? Advance()
    {
        int total = (int)Math.Round(task.DurationS / baseStep);
        int report = Math.Max(1, total / 100);
        SetWind();
        recorder.RecordStart();
        for (int n = 0; n < total; n++)
        {
            if (n % report == 0)
            {
                context.Progress?.Invoke((double)n / total);
            }

            string? failure = BaseStep(n * baseStep);
            if (failure is not null)
            {
                return failure;
            }

            recorder.Step(time, speed, baseStep);
            if (parts.StraightM < parts.Hull.LengthM + parts.Mesh.LeaderLengthM + 1.0)
            {
                return $"the lure reached the rod at {time:F2} s; start farther out or shorten the retrieve";
            }
        }

        return null;
    }

    /// <summary>One base step, cut into halves as often as the step rule demands.</summary>
    private string? BaseStep(double start)
    {
        speed = parts.TakeUp.Speed(start, baseStep, parts.SlackM);
        halving = Math.Max(0, halving - 1);
        long done = 0;
        double worst = 0.0;
        while (done < 1L << halving)
        {
            context.Stop.ThrowIfCancellationRequested();
            double dt = baseStep / (1L << halving);
            double ratio = TryStep(start + ((done + 1) * dt), dt);
            if (ratio > StepRatioLimit)
            {
                if (++halving > DeepestHalving)
                {
                    return double.IsFinite(ratio)
                        ? $"the line's tension waves need a step below {dt:E1} s at {time:F3} s (stiffest rate {StepRatioLimit / dt:E1} /s); use fewer nodes"
                        : $"the state stopped being finite at {time:F3} s, step {steps}";
                }

                halved++;
                done *= 2;
                continue;
            }

            Accept(dt, ratio);
            worst = Math.Max(worst, ratio);
            done++;
        }

        time = start + baseStep;
        halving += worst > 0.5 * StepRatioLimit && halving > 0 ? 1 : 0;
        halving = Math.Min(halving, DeepestHalving);
        return null;
    }

    private double TryStep(double end, double dt)
    {
        Bdf2 step = steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, stepBefore);
        LineMesh mesh = parts.Mesh;
        double length = mesh.LengthM;
        TipFrame tip = parts.Swing.At(end);
        if (task.HoldDistance)
        {
            double away = backedAway + (dt * speed);
            tip = tip with
            {
                Position = tip.Position - new Vec3(away, 0.0, 0.0),
                Velocity = tip.Velocity - new Vec3(speed, 0.0, 0.0),
            };
        }
        else if (speed != 0.0 || parts.Step.Pass.FeedMS != 0.0)
        {
            mesh.SetLength(length - (dt * speed));
            parts.Step.Pass.FeedMS = speed;
        }

        parts.Step.Try(step, tip);
        double ratio = parts.Step.IsFinite() ? parts.Step.StepRatio(dt) : double.PositiveInfinity;
        if (ratio > StepRatioLimit && !task.HoldDistance)
        {
            mesh.SetLength(length);
        }

        return ratio;
    }

    private void Accept(double dt, double ratio)
    {
        parts.Step.Commit();
        time += dt;
        stepBefore = dt;
        backedAway += task.HoldDistance ? dt * speed : 0.0;
        largestRatio = Math.Max(largestRatio, ratio);
        steps++;
        recorder.Accumulate(dt);
        observer?.Invoke(new RetrieveView(parts, time, dt, speed));
        SetWind();
    }

    private void SetWind()
    {
        if (parts.Wind.IsCalm)
        {
            return;
        }

        for (int i = 1; i < parts.Mesh.Segments; i++)
        {
            (parts.Step.Pass.WindX[i], parts.Step.Pass.WindY[i]) = parts.Wind.Velocity(parts.Step.Now.Z[i]);
        }
    }

    private SolverCounters Counters() => new(
        steps, halved, parts.Step.Pass.Solver.Passes, parts.Step.Pass.Solver.LimitHits, largestRatio);
}
