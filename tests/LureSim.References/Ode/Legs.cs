namespace LureSim.References.Ode;

/// <summary>The span of a run cut at its breakpoints.</summary>
internal sealed class Legs(OdeProblem problem)
{
    private readonly double[] _stops =
        [.. problem.Breakpoints.Where(b => b > problem.Start && b <= problem.End).Distinct().Order()];

    private int _next;

    /// <summary>Latest time the current step may reach: just before the next breakpoint, or the end.</summary>
    public double Limit => _next < _stops.Length ? Math.BitDecrement(_stops[_next]) : problem.End;

    /// <summary>True when a breakpoint lies one unit in the last place ahead.</summary>
    public bool AtBreakpoint(double t) => _next < _stops.Length && t >= Limit;

    /// <summary>Passes the next breakpoint and returns its time.</summary>
    public double Cross() => _stops[_next++];
}
