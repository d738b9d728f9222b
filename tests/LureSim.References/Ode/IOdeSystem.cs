namespace LureSim.References.Ode;

/// <summary>A system of first-order ordinary differential equations dy/dt = f(t, y).</summary>
/// <remarks>An implementation may keep scratch memory of its own and is then good for one thread at a time. Where f jumps at a
/// known time, f at that time is the later branch, and the time is named in <see cref="OdeProblem.Breakpoints"/>.</remarks>
public interface IOdeSystem
{
    /// <summary>Number of components of y, at least 1.</summary>
    public int Dimension { get; }

    /// <summary>Writes f(t, y).</summary>
    /// <param name="t">Time, in the problem's unit.</param>
    /// <param name="y">State, <see cref="Dimension"/> values. May be outside the physical range inside a trial step.</param>
    /// <param name="dydt">Receives the rates; every component must be written. Values that are not finite make an adaptive step
    /// shorter and stop a fixed one.</param>
    public void Evaluate(double t, ReadOnlySpan<double> y, Span<double> dydt);
}
