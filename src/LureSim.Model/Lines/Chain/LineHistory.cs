using System.Numerics;
using LureSim.Numerics.Steps;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lines.Chain;

/// <summary>The part of a step's end that the two states before it fix: x* and v* of every node.</summary>
internal sealed class LineHistory(int segments)
{
    private readonly LineState _state = new(segments);

    /// <summary>x*, m.</summary>
    public double[] X => _state.X;

    /// <summary>y*, m.</summary>
    public double[] Y => _state.Y;

    /// <summary>z*, m.</summary>
    public double[] Z => _state.Z;

    /// <summary>x velocity*, m/s.</summary>
    public double[] VX => _state.VX;

    /// <summary>y velocity*, m/s.</summary>
    public double[] VY => _state.VY;

    /// <summary>z velocity*, m/s.</summary>
    public double[] VZ => _state.VZ;

    /// <summary>Computes the history and the guess of the first pass.</summary>
    public void Begin(Bdf2 step, LineState before, LineState now, LineState guess)
    {
        BeginComponent(step, before.X, now.X, before.VX, now.VX, X, VX, guess.X, guess.VX);
        BeginComponent(step, before.Y, now.Y, before.VY, now.VY, Y, VY, guess.Y, guess.VY);
        BeginComponent(step, before.Z, now.Z, before.VZ, now.VZ, Z, VZ, guess.Z, guess.VZ);
    }

    private void BeginComponent(
        Bdf2 step, double[] beforeX, double[] nowX, double[] beforeV, double[] nowV,
        double[] pastX, double[] pastV, double[] guessX, double[] guessV)
    {
        var a1 = new Vector<double>(step.HistoryNow);
        var a0 = new Vector<double>(step.HistoryBefore);
        var dt = new Vector<double>(step.Dt);
        var ratio = new Vector<double>(step.Ratio);
        ref double x0 = ref First(beforeX), x1 = ref First(nowX), v0 = ref First(beforeV), v1 = ref First(nowV);
        ref double hx = ref First(pastX), hv = ref First(pastV), gx = ref First(guessX), gv = ref First(guessV);
        for (nuint i = 0; i <= (nuint)segments; i += (nuint)Width)
        {
            Vector<double> x = Load(ref x1, i), v = Load(ref v1, i), earlier = Load(ref v0, i);
            Store((a1 * x) + (a0 * Load(ref x0, i)), ref hx, i);
            Store((a1 * v) + (a0 * earlier), ref hv, i);
            Store(x + (dt * v), ref gx, i);
            Store(v + (ratio * (v - earlier)), ref gv, i);
        }
    }
}
