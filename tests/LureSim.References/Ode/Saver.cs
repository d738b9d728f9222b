namespace LureSim.References.Ode;

/// <summary>Keeps the state at the requested times. Memory is taken once, in the constructor.</summary>
internal sealed class Saver
{
    private readonly IReadOnlyList<double> _times;
    private readonly double[][] _states;
    private int _count;

    public Saver(OdeProblem problem)
    {
        _times = problem.SaveAt;
        _states = new double[_times.Count][];
        for (int i = 0; i < _states.Length; i++)
        {
            _states[i] = new double[problem.System.Dimension];
        }
    }

    public double[] Times => [.. _times.Take(_count)];

    public double[][] States => _states[.._count];

    /// <summary>Keeps what lies in the step just tried (or at a start just placed), up to <paramref name="reached"/>.</summary>
    public void TakeStep(Stepper stepper, double reached)
    {
        while (_count < _states.Length && _times[_count] <= reached)
        {
            stepper.At(_times[_count], _states[_count]);
            _count++;
        }
    }
}
