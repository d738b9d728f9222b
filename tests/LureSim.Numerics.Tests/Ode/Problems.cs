using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

/// <summary>Small systems that carry their exact solution, and the slopes of error ladders.</summary>
internal static class Problems
{
    /// <summary>y0 = e^(sin t), y1 = 1/(1+t), coupled and driven by the time: a stage taken at the wrong time costs order.</summary>
    public static readonly FunctionSystem Driven = new(2, (t, y, f) =>
    {
        f[0] = y[0] * Math.Cos(t);
        f[1] = -y[1] * y[1] * y[0] * Math.Exp(-Math.Sin(t));
    });

    /// <summary>Free fall of a point: height, speed; g = 10.</summary>
    public static readonly FunctionSystem Fall = new(2, (_, y, f) =>
    {
        f[0] = y[1];
        f[1] = -10.0;
    });

    /// <summary>x'' = -x.</summary>
    public static readonly FunctionSystem Oscillator = new(2, (_, y, f) =>
    {
        f[0] = y[1];
        f[1] = -y[0];
    });

    public static double DrivenError(double t, IReadOnlyList<double> y) =>
        Math.Max(Math.Abs(y[0] - Math.Exp(Math.Sin(t))), Math.Abs(y[1] - (1.0 / (1.0 + t))));

    public static OdeProblem DrivenTo(double end) => new(Driven, 0.0, end, [1.0, 1.0]);

    /// <summary>log2 of the ratio of each error to the next, for halved steps.</summary>
    public static double[] Orders(IReadOnlyList<double> errors) =>
        [.. errors.Skip(1).Select((e, i) => Math.Log2(errors[i] / e))];

    public static double[] Even(double from, double to, int pieces) =>
        [.. Enumerable.Range(0, pieces + 1).Select(i => i == pieces ? to : from + ((to - from) * i / pieces))];
}
