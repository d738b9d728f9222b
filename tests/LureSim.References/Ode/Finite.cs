namespace LureSim.References.Ode;

/// <summary>Checks for NaN and infinity.</summary>
internal static class Finite
{
    /// <summary>True when every value is finite.</summary>
    public static bool All(ReadOnlySpan<double> values)
    {
        // x - x is 0 for finite x and NaN otherwise: one test after the loop instead of one per value.
        double sum = 0.0;
        foreach (double x in values)
        {
            sum += x - x;
        }

        return sum == 0.0;
    }
}
