namespace LureSim.Validation;

/// <summary>How a tolerance is meant.</summary>
public enum Tol
{
    /// <summary>|computed - expected| / |expected|.</summary>
    Relative,

    /// <summary>|computed - expected|.</summary>
    Absolute,

    /// <summary>expected - tolerance .. expected + tolerance is a band of the source; only staying inside is claimed.</summary>
    Band,
}

/// <summary>One compared number.</summary>
public sealed record Row(string Quantity, string Unit, double Expected, double Computed, double Tolerance, Tol Kind)
{
    /// <summary>Error in the tolerance's own measure.</summary>
    public double Error => Kind == Tol.Relative
        ? Math.Abs(Computed - Expected) / Math.Abs(Expected)
        : Math.Abs(Computed - Expected);

    /// <summary>False for NaN too.</summary>
    public bool Passes => Error <= Tolerance;
}

/// <summary>Error against resolution, coarse to fine. It must fall at every level, and over all of them at least with an order.</summary>
/// <param name="Parameter">"N" or "dt, ms".</param>
/// <param name="Quantity">What the error is of.</param>
/// <param name="Levels">(resolution, error), at least two; resolutions all rise (a count) or all fall (a step, a tolerance).</param>
/// <param name="LeastOrder">Least observed order, positive.</param>
/// <param name="Why">What order is expected and why the least one is no higher.</param>
public sealed record Ladder(string Parameter, string Quantity, IReadOnlyList<(double Level, double Error)> Levels, double LeastOrder, string Why)
{
    /// <summary>p of error ~ (coarseness)^p: slope of the straight line through log error against log level by least squares. NaN where an error is 0.</summary>
    public double Order
    {
        get
        {
            double[] x = [.. Levels.Select(l => Math.Log(l.Level))], y = [.. Levels.Select(l => Math.Log(l.Error))];
            double meanX = x.Average(), meanY = y.Average();
            double slope = x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
            return x[^1] > x[0] ? -slope : slope;
        }
    }

    /// <summary>True when every error is smaller than the one before and the order is reached; false for NaN too.</summary>
    public bool Holds => Levels.Count > 1 && Order >= LeastOrder && Levels.Zip(Levels.Skip(1), (a, b) => b.Error < a.Error).All(falls => falls);
}

/// <summary>One published check.</summary>
/// <param name="Code">Our code, for example "S3": the order of the validation page.</param>
/// <param name="Title">What is checked.</param>
/// <param name="Source">Author, year, table or equation; says so when a value is from memory or derived.</param>
/// <param name="ToleranceReason">Why this tolerance: digits of the source or discretisation.</param>
/// <param name="Rows">Compared numbers.</param>
/// <param name="Ladder">How the error falls with nodes or step, where there is a discretisation.</param>
public sealed record Check(
    string Code, string Title, string Source, string ToleranceReason, IReadOnlyList<Row> Rows, Ladder? Ladder = null);

/// <summary>Marks a static parameterless method that returns a <see cref="Check"/>.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PublishedCheckAttribute : Attribute;
