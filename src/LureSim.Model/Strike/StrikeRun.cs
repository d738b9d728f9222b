using LureSim.Model.Assembly;
using LureSim.Model.Fish;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Strike;

/// <summary>Runs one strike from the first movement of the hands to its end.</summary>
public sealed class StrikeRun
{
    // Time in which the fish gets going, s, guess 0.1 (0.05 to 0.2), and how near to the tip it may come, m, a choice.
    private const double StartS = 0.1, NearestM = 1.0;

    private readonly StrikeParts _parts;
    private readonly StrikeTask _task;
    private readonly StrikeRecorder _recorder;
    private readonly StrikeAccount _account;
    private readonly RunContext _context;
    private readonly StepHalving _steps;

    private StrikeRun(Setup setup, StrikeTask task, RunContext context)
    {
        _parts = new StrikeParts(setup, task);
        (_task, _context) = (task, context);
        _account = new StrikeAccount(_parts.Step);
        _recorder = new StrikeRecorder(_parts);
        _steps = new StepHalving(task.Solver.StepS, Try, Accept, context.Stop);
    }

    /// <summary>
    /// Runs the strike. Fails when the state stops being finite, the step rule cannot be kept, or the energy account is open by more than 1 % at the end.
    /// </summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="ArgumentException">A value is out of range or makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<StrikeResult> Run(Setup setup, StrikeTask task, RunContext context = default)
    {
        context.Stop.ThrowIfCancellationRequested();
        return Outcome.Of(() => new StrikeRun(setup, task, context).Advance());
    }

    private StrikeResult Advance()
    {
        int total = (int)Math.Ceiling((_task.DurationS / _task.Solver.StepS) - 1e-9);
        int report = Math.Max(1, total / 100);
        for (int n = 0; n < total && !AtTheRod; n++)
        {
            if (n % report == 0)
            {
                _context.Progress?.Invoke((double)n / total);
            }

            Demand(_steps.BaseStep(n * _task.Solver.StepS));
        }

        Demand(_steps.OpenAccount(_account.OpenShare));
        return _recorder.Finish(_steps.Counters(_parts.Step.Pass, _account.OpenShare));
    }

    private bool AtTheRod => (_parts.Step.Fish.Now.Place - _parts.Step.Rod.TipNow).Length < NearestM;

    private void Demand(string? failure)
    {
        if (failure is not null)
        {
            throw new ModelException(failure, _steps.TimeS);
        }
    }

    private double Try(Bdf2 step, double end)
    {
        _parts.Step.Try(step, end, Swims(end));
        return _parts.Step.IsFinite ? _parts.Step.StepRatio(step.Dt) : double.PositiveInfinity;
    }

    // A fish that runs needs its reaction time from the first pull; one that comes has been swimming before.
    private double Swims(double time)
    {
        if (_parts.Setup.Fish.Way == FishWay.Comes)
        {
            return 1.0;
        }

        double since = time - _recorder.FirstPullS - _parts.Setup.Fish.ReactionS;
        double s = Math.Clamp(since / StartS, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }

    private void Accept(double dt)
    {
        _parts.Step.Commit();
        _account.Book(dt);
        _recorder.Accept(_steps.TimeS, dt);
    }
}
