namespace LureSim.References.Ode;

/// <summary>Right side of dy/dt = f(t, y) as a function.</summary>
/// <param name="t">Time.</param>
/// <param name="y">State.</param>
/// <param name="dydt">Receives the rates.</param>
public delegate void OdeFunction(double t, ReadOnlySpan<double> y, Span<double> dydt);

/// <summary>Wraps a function as a system, for short problems.</summary>
public sealed class FunctionSystem : IOdeSystem
{
    private readonly OdeFunction _f;

    /// <summary>Creates the system.</summary>
    /// <param name="dimension">Number of components, at least 1.</param>
    /// <param name="f">Right side.</param>
    /// <exception cref="ArgumentOutOfRangeException">The dimension is below 1.</exception>
    public FunctionSystem(int dimension, OdeFunction f)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimension, 1);
        ArgumentNullException.ThrowIfNull(f);
        Dimension = dimension;
        _f = f;
    }

    /// <inheritdoc/>
    public int Dimension { get; }

    /// <inheritdoc/>
    public void Evaluate(double t, ReadOnlySpan<double> y, Span<double> dydt) => _f(t, y, dydt);
}
