using LureSim.Model.Assembly;

namespace LureSim.Model.Crawl;

/// <summary>Lets a lure crawl over a mat, twitch by twitch, until it comes to the opening or its time is over.</summary>
public sealed class CrawlRun
{
    private readonly CrawlParts _parts;
    private readonly CrawlRecorder _recorder;
    private readonly RunContext _context;
    private readonly LineLoop _loop;

    private CrawlRun(Setup setup, CrawlTask task, RunContext context)
    {
        (_parts, _context) = (new CrawlParts(setup, task), context);
        int perOutput = Math.Max(1, (int)Math.Ceiling((task.Solver.OutputStepS / task.Solver.StepS) - 1e-9));
        _recorder = new CrawlRecorder(_parts, perOutput);
        _loop = new LineLoop(_parts.Line, _parts.TakeUp, task.Solver.OutputStepS / perOutput, false, context.Stop) { Accepted = Accept };
    }

    /// <summary>
    /// Runs the crawl. Fails, with what was recorded so far, when the state stops being finite, the step rule cannot be kept, or the energy account is
    /// open by more than 1 % at the end.
    /// </summary>
    /// <param name="setup">Set-up with a mat.</param>
    /// <param name="task">Crawl.</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="ArgumentException">A value is out of range, or there is no mat to crawl over.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CrawlResult> Run(Setup setup, CrawlTask task, RunContext context = default)
    {
        context.Stop.ThrowIfCancellationRequested();
        Outcome<CrawlResult> outcome = Outcome.Of(() =>
        {
            var run = new CrawlRun(setup, task, context);
            string? failure = run.Advance();
            return run._recorder.Finish(failure, run._loop.Counters);
        });
        return outcome.Result is { Failure: string reason } part ? new(part, new(reason, part.Series["time_s"][^1])) : outcome;
    }

    private string? Advance()
    {
        int total = (int)Math.Round(_parts.Task.DurationS / _loop.BaseStepS), report = Math.Max(1, total / 100);
        _recorder.RecordStart();
        for (int n = 0; n < total && _parts.WayM < _parts.Task.ToOpeningM; n++)
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
        }

        return _loop.OpenAccount();
    }

    private void Accept(double dt)
    {
        _recorder.Accumulate(dt);
        _parts.SetPlants();
    }
}
