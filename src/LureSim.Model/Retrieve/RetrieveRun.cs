using System.Globalization;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
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
    private readonly RetrieveParts _parts;
    private readonly RetrieveTask _task;
    private readonly RetrieveRecorder _recorder;
    private readonly RunContext _context;
    private readonly Action<RetrieveView>? _observer;
    private readonly double _baseStep;
    private readonly EnergyAccount _account;
    private TipFrame _tip;
    private double _time;
    private double _stepBefore;
    private double _speed;
    private double _backedAway;
    private int _halving;
    private int _steps;
    private int _halved;
    private double _largestRatio;

    private RetrieveRun(Setup setup, RetrieveTask task, RunContext context, Action<RetrieveView>? observer)
    {
        _parts = new RetrieveParts(setup, task);
        (_task, _context, _observer) = (task, context, observer);
        int perOutput = Math.Max(1, (int)Math.Ceiling((task.Solver.OutputStepS / task.Solver.StepS) - 1e-9));
        _baseStep = task.Solver.OutputStepS / perOutput;
        _recorder = new RetrieveRecorder(_parts, perOutput);
        _tip = _parts.Swing.At(0.0);
        _account = new EnergyAccount(_parts.Step, setup.Leader?.Knot == TieKnot.Fixed, _tip);
    }

    /// <summary>
    /// Runs the retrieve. Fails, with what was recorded so far, when the state stops being finite, the step rule cannot be kept, the lure
    /// reaches the rod, or the energy account is open by more than 1 % at the end; with nothing when the lure finds no float.
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
            return run._recorder.Finish(failure, run.Counters());
        });
        return outcome.Result is { Failure: string reason } part ? new(part, new(reason, part.Series["time_s"][^1])) : outcome;
    }

    private string? Advance()
    {
        int total = (int)Math.Round(_task.DurationS / _baseStep);
        int report = Math.Max(1, total / 100);
        SetWind();
        _recorder.RecordStart();
        for (int n = 0; n < total; n++)
        {
            if (n % report == 0)
            {
                _context.Progress?.Invoke((double)n / total);
            }

            string? failure = BaseStep(n * _baseStep);
            if (failure is not null)
            {
                return failure;
            }

            _recorder.Step(_time, _speed, _baseStep);
            if (_parts.StraightM < _parts.Hull.LengthM + _parts.Mesh.LeaderLengthM + 1.0)
            {
                return $"the lure reached the rod at {_time:F2} s; start farther out or shorten the retrieve";
            }

            if (_recorder.IsSettled)
            {
                break;
            }
        }

        // Not above, so that NaN is open too.
        double open = _account.OpenShare;
        return open <= SolverCounters.MostEnergyOpenShare
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the energy account stays open by {100.0 * open:0.0} % of the work at a step of {1e3 * _baseStep:0.###} ms; use a smaller step");
    }

    /// <summary>One base step, cut into halves as often as the step rule demands.</summary>
    private string? BaseStep(double start)
    {
        _speed = _parts.TakeUp.Speed(start, _baseStep, _parts.SlackM);
        _halving = Math.Max(0, _halving - 1);
        long done = 0;
        double worst = 0.0;
        while (done < 1L << _halving)
        {
            _context.Stop.ThrowIfCancellationRequested();
            double dt = _baseStep / (1L << _halving);
            double ratio = TryStep(start + ((done + 1) * dt), dt);
            if (ratio > StepRatioLimit)
            {
                if (++_halving > DeepestHalving)
                {
                    return double.IsFinite(ratio)
                        ? $"the line's tension waves need a step below {dt:E1} s at {_time:F3} s (stiffest rate {StepRatioLimit / dt:E1} /s); use fewer nodes"
                        : $"the state stopped being finite at {_time:F3} s, step {_steps}";
                }

                _halved++;
                done *= 2;
                continue;
            }

            Accept(dt, ratio);
            worst = Math.Max(worst, ratio);
            done++;
        }

        _time = start + _baseStep;
        _halving += worst > 0.5 * StepRatioLimit && _halving > 0 ? 1 : 0;
        _halving = Math.Min(_halving, DeepestHalving);
        return null;
    }

    private double TryStep(double end, double dt)
    {
        Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, _stepBefore);
        LineMesh mesh = _parts.Mesh;
        (double length, double extra) = (mesh.LengthM, mesh.TipExtraM);
        TipFrame tip = _parts.Swing.At(end);
        if (_task.HoldDistance)
        {
            double away = _backedAway + (dt * _speed);
            tip = tip with
            {
                Position = tip.Position - new Vec3(away, 0.0, 0.0),
                Velocity = tip.Velocity - new Vec3(_speed, 0.0, 0.0),
            };
        }

        Feed(dt, _task.HoldDistance ? 0.0 : _speed);
        _tip = tip;
        _parts.Step.Try(step, tip);
        double ratio = _parts.Step.IsFinite() ? _parts.Step.StepRatio(dt) : double.PositiveInfinity;
        if (ratio > StepRatioLimit)
        {
            mesh.SetLength(length, extra);
        }

        return ratio;
    }

    // What the handle wins, and what the first segment has been given and hands on.
    private void Feed(double dt, double won)
    {
        (LineMesh mesh, LinePass pass) = (_parts.Mesh, _parts.Step.Pass);
        double even = mesh.TipExtraM / TipClutch.EvenS;
        if (won != 0.0 || pass.FeedMS != 0.0 || pass.EvenMS != 0.0 || even != 0.0)
        {
            mesh.SetLength(mesh.LengthM - (dt * won), mesh.TipExtraM - (dt * even));
            (pass.FeedMS, pass.EvenMS) = (won - even, even);
        }
    }

    private void Accept(double dt, double ratio)
    {
        _account.Book(dt, _tip);
        _parts.Step.Commit();
        _time += dt;
        _stepBefore = dt;
        _backedAway += _task.HoldDistance ? dt * _speed : 0.0;
        _largestRatio = Math.Max(_largestRatio, ratio);
        _steps++;
        _recorder.Accumulate(dt);
        _observer?.Invoke(new RetrieveView(_parts, _time, dt, _speed));
        SetWind();
    }

    private void SetWind()
    {
        if (_parts.Wind.IsCalm)
        {
            return;
        }

        for (int i = 1; i < _parts.Mesh.Segments; i++)
        {
            (_parts.Step.Pass.WindX[i], _parts.Step.Pass.WindY[i]) = _parts.Wind.Velocity(_parts.Step.Now.Z[i]);
        }
    }

    private SolverCounters Counters() => new(
        _steps, _halved, _parts.Step.Pass.Solver.Passes, _parts.Step.Pass.Solver.LimitHits, _largestRatio)
    {
        EnergyOpenShare = _account.OpenShare,
    };
}
