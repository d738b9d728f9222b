using LureSim.Model.Assembly;

namespace LureSim.Model.Retrieve;

/// <summary>Runs one retrieve from start to end.</summary>
public sealed class RetrieveRun
{
    /// <summary>Step rule: the tension direction is explicit, so dt sqrt(T/mu)/l must stay under this (docs/line-solver.md).</summary>
    public const double StepRatioLimit = StepHalving.RatioLimit;

    private readonly RetrieveParts _parts;
    private readonly RetrieveTask _task;
    private readonly RetrieveRecorder _recorder;
    private readonly RunContext _context;
    private readonly Action<RetrieveView>? _observer;
    private readonly LineLoop _loop;

    private RetrieveRun(Setup setup, RetrieveTask task, RunContext context, Action<RetrieveView>? observer)
    {
        _parts = new RetrieveParts(setup, task);
        (_task, _context, _observer) = (task, context, observer);
        int perOutput = Math.Max(1, (int)Math.Ceiling((task.Solver.OutputStepS / task.Solver.StepS) - 1e-9));
        _recorder = new RetrieveRecorder(_parts, perOutput);
        _loop = new LineLoop(_parts.Line, _parts.TakeUp, task.Solver.OutputStepS / perOutput, task.HoldDistance, context.Stop) { Accepted = Accept };
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
            return run._recorder.Finish(failure, run._loop.Counters);
        });
        return outcome.Result is { Failure: string reason } part ? new(part, new(reason, part.Series["time_s"][^1])) : outcome;
    }

    private string? Advance()
    {
        int total = (int)Math.Round(_task.DurationS / _loop.BaseStepS);
        int report = Math.Max(1, total / 100);
        _recorder.RecordStart();
        for (int n = 0; n < total; n++)
        {
            if (n % report == 0)
            {
                _context.Progress?.Invoke((double)n / total);
            }

            string? failure = _loop.BaseStep(n * _loop.BaseStepS);
            if (failure is not null)
            {
                return failure;
            }

            _recorder.Step(_loop.TimeS, _loop.TakeUpMS, _loop.BaseStepS);
            if (_parts.StraightM < _parts.Hull.LengthM + _parts.Mesh.LeaderLengthM + 1.0)
            {
                return $"the lure reached the rod at {_loop.TimeS:F2} s; start farther out or shorten the retrieve";
            }

            if (_recorder.IsSettled)
            {
                break;
            }
        }

        return _loop.OpenAccount();
    }

    private void Accept(double dt)
    {
        _recorder.Accumulate(dt);
        _observer?.Invoke(new RetrieveView(_parts, _loop.TimeS, dt, _loop.TakeUpMS));
    }
}
