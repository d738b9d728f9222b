namespace LureSim.Validation;

/// <summary>Rows that only claim to stay inside a published band.</summary>
internal static class BandRow
{
    /// <summary>A row whose value must lie between low and high.</summary>
    public static Row Of(string quantity, string unit, double low, double high, double computed) =>
        new(quantity, unit, 0.5 * (low + high), computed, 0.5 * (high - low) * (1.0 + 1e-12), Tol.Band);
}
