namespace LureSim.References.Ode;

/// <summary>Steps chosen so that the estimated error of each, weighted per component by atol_i + rtol |y_i| and taken as a
/// root mean square, stays below 1.</summary>
public sealed class AdaptiveSteps : StepRule
{
    private readonly double[] _absolute;
    private readonly double _largestStep = double.PositiveInfinity;

    /// <summary>One absolute tolerance for all components.</summary>
    /// <param name="relative">rtol, 0 to 1. Below about 1e-14 rounding exceeds it and steps fail.</param>
    /// <param name="absolute">atol, above 0, in the state's unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A tolerance is outside its range.</exception>
    public AdaptiveSteps(double relative, double absolute)
        : this(relative, [absolute])
    {
    }

    /// <summary>An absolute tolerance per component, for states of mixed units.</summary>
    /// <param name="relative">rtol, 0 to 1.</param>
    /// <param name="absolute">atol_i, each above 0; one value stands for all components.</param>
    /// <exception cref="ArgumentOutOfRangeException">A tolerance is outside its range.</exception>
    public AdaptiveSteps(double relative, IReadOnlyList<double> absolute)
    {
        ArgumentNullException.ThrowIfNull(absolute);
        RequireRange(relative >= 0.0 && relative < 1.0, relative, "rtol must be from 0 to below 1");
        RequireRange(absolute.Count > 0, absolute.Count, "at least one atol");
        foreach (double a in absolute)
        {
            RequireRange(double.IsFinite(a) && a > 0.0, a, "atol must be finite and above 0");
        }

        Relative = relative;
        _absolute = [.. absolute];
    }

    /// <summary>rtol.</summary>
    public double Relative { get; }

    /// <summary>atol_i; a single value stands for all components.</summary>
    public IReadOnlyList<double> Absolute => _absolute;

    /// <summary>Largest step, above 0; without one only the error limits the step.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public double LargestStep
    {
        get => _largestStep;
        init
        {
            RequireRange(value > 0.0, value, "the largest step must be above 0");
            _largestStep = value;
        }
    }

    internal override IStepControl CreateControl() => new PiControl(this);

    /// <summary>Root mean square of v_i / (atol_i + rtol max(|a_i|, |b_i|)).</summary>
    internal double Norm(ReadOnlySpan<double> v, ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0.0;
        for (int i = 0; i < v.Length; i++)
        {
            double atol = _absolute.Length == 1 ? _absolute[0] : _absolute[i];
            double ratio = v[i] / (atol + (Relative * Math.Max(Math.Abs(a[i]), Math.Abs(b[i]))));
            sum += ratio * ratio;
        }

        return Math.Sqrt(sum / v.Length);
    }

    private static void RequireRange(bool holds, double value, string message)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(null, value, message);
        }
    }
}
