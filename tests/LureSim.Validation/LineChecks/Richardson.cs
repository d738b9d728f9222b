namespace LureSim.Validation.LineChecks;

/// <summary>The limit N to infinity of a quantity whose error falls as 1/N^2 (the ladder of the check shows that it does).</summary>
internal static class Richardson
{
    /// <summary>From a mesh and one twice as fine.</summary>
    public static double Limit(double coarse, double fine) => fine + ((fine - coarse) / 3.0);
}
