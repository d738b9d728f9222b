namespace LureSim.Model;

/// <summary>Constants of nature that several models share.</summary>
internal static class Physics
{
    /// <summary>g, standard gravity, m/s2 (CGPM 1901).</summary>
    public const double GravityMS2 = 9.80665;
}
