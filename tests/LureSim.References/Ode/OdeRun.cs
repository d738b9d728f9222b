namespace LureSim.References.Ode;

/// <summary>The loop: one problem, one method, one step rule, from start to end.</summary>
internal sealed class OdeRun(OdeProblem problem, Stepper stepper, StepRule rule)
{
    private readonly IStepControl _control = rule.CreateControl();
    private readonly Legs _legs = new(problem);
    private readonly EventScanner _scanner = new(problem, stepper);
    private readonly EventLog _log = new(problem);
    private readonly Saver _saver = new(problem);
    private int _accepted;
    private int _rejected;

    public OdeSolution Execute(CancellationToken cancel)
    {
        stepper.Place(problem.Start, [.. problem.Initial]);
        _saver.TakeStep(stepper, problem.Start);
        OdeStatus? end = Restart();
        while (end is null)
        {
            end = cancel.IsCancellationRequested ? OdeStatus.Cancelled
                : stepper.T0 >= problem.End ? OdeStatus.Success
                : _legs.AtBreakpoint(stepper.T0) ? CrossBreakpoint()
                : _accepted + _rejected >= rule.MaxSteps ? OdeStatus.TooManySteps
                : Step();
        }

        var counters = new OdeCounters(_accepted, _rejected, stepper.Evaluations, _log.Occurrences.Count);
        return new OdeSolution(
            end.Value, stepper.T0, [.. stepper.Y0], _saver.Times, _saver.States, _log.Occurrences, counters);
    }

    private OdeStatus? Step()
    {
        stepper.Attempt(_control.Next(stepper.T0, _legs.Limit));
        if (!_control.Accepts(stepper))
        {
            _rejected++;
            return _control.Failure(stepper.T0);
        }

        _scanner.BeginStep();
        while (_scanner.NextInterval())
        {
            if (!_scanner.AllFinite)
            {
                return OdeStatus.NotFinite;
            }

            double cut = _log.Take(_scanner.Crossings, stepper);
            if (!double.IsNaN(cut))
            {
                _accepted++;
                return Cut(cut);
            }
        }

        _accepted++;
        _saver.TakeStep(stepper, stepper.T1);
        stepper.Accept();
        return null;
    }

    /// <summary>Ends the step early at an event that stops the run or changes the state.</summary>
    private OdeStatus? Cut(double t)
    {
        _saver.TakeStep(stepper, t);
        double[] state = new double[problem.System.Dimension];
        stepper.At(t, state);
        stepper.Place(t, state);
        _log.Map(t, state);
        if (!Finite.All(state))
        {
            return OdeStatus.NotFinite;
        }

        stepper.Place(t, state);
        return _log.Ends ? OdeStatus.TerminalEvent : Restart();
    }

    private OdeStatus? CrossBreakpoint()
    {
        stepper.Move(_legs.Cross());
        _saver.TakeStep(stepper, stepper.T0);
        _scanner.Jump(stepper.T0, stepper.Y0);
        double cut = _log.Take(_scanner.Crossings, stepper);
        return double.IsNaN(cut) ? Begin() : Cut(cut);
    }

    /// <summary>Starts afresh after a map.</summary>
    private OdeStatus? Restart()
    {
        _scanner.Restart(stepper.T0, stepper.Y0);
        _log.MarkZeros(_scanner);
        return Begin();
    }

    /// <summary>First rates and first step of a stretch without jumps.</summary>
    private OdeStatus? Begin()
    {
        stepper.EvaluateStart();
        if (!Finite.All(stepper.F0) || !_scanner.AllFinite)
        {
            return OdeStatus.NotFinite;
        }

        _control.Restart(stepper, _legs.Limit);
        return null;
    }
}
