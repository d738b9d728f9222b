namespace LureSim.Reports.Kit.Text;

/// <summary>The units of every quantity in either family, by exact definitions (NIST Handbook 44, appendix C; standard gravity by CGPM 1901).</summary>
internal static class UnitTable
{
    /// <summary>Foot and inch, m; pound, kg.</summary>
    public const double FootM = 0.3048, InchM = 0.0254, PoundKg = 0.45359237;

    private const double MileM = 1609.344, GravityMS2 = 9.80665, HourS = 3600.0;

    // At this reach the wrist would hold the weight: about where the hand that pulls a rod sees its load (a choice of words, not of physics).
    private const double ReachTradeM = 16.0 * InchM, ReachMetricM = 0.40;

    private static readonly Dictionary<ShownQuantity, (Steps Trade, Steps Metric)> Units = new()
    {
        [ShownQuantity.Size] = (new(new("in", InchM, 2)), new(new("mm", 1e-3, 1), new("cm", 1e-2, 1), 1e-2)),
        [ShownQuantity.Distance] = (new(new("ft", FootM, 1)), new(new("m", 1.0, 2))),
        [ShownQuantity.Pull] = (
            new(new("oz", PoundKg / 16.0 * GravityMS2, 2), new("lb", PoundKg * GravityMS2, 1), PoundKg * GravityMS2),
            new(new("g", 1e-3 * GravityMS2, 1), new("kg", GravityMS2, 1), GravityMS2)),
        [ShownQuantity.Torque] = (
            new(new("oz at 16 in", PoundKg / 16.0 * GravityMS2 * ReachTradeM, 1), new("lb at 16 in", PoundKg * GravityMS2 * ReachTradeM, 1), PoundKg * GravityMS2 * ReachTradeM),
            new(new("g at 40 cm", 1e-3 * GravityMS2 * ReachMetricM, 0), new("kg at 40 cm", GravityMS2 * ReachMetricM, 1), GravityMS2 * ReachMetricM)),
        [ShownQuantity.Speed] = (new(new("ft/s", FootM, 1)), new(new("m/s", 1.0, 2))),
        [ShownQuantity.Wind] = (new(new("mph", MileM / HourS, 0)), new(new("km/h", 1000.0 / HourS, 0))),
        [ShownQuantity.Mass] = (new(new("oz", PoundKg / 16.0, 2), new("lb", PoundKg, 1), PoundKg), new(new("g", 1e-3, 1), new("kg", 1.0, 2), 1.0)),
        [ShownQuantity.Energy] = (new(new("ft-lb", FootM * PoundKg * GravityMS2, 1)), new(new("J", 1.0, 1))),
        [ShownQuantity.Volume] = (new(new("in3", InchM * InchM * InchM, 2)), new(new("cm3", 1e-6, 1))),
        [ShownQuantity.Impulse] = (
            new(new("oz s", PoundKg / 16.0 * GravityMS2, 2), new("lb s", PoundKg * GravityMS2, 1), PoundKg * GravityMS2),
            new(new("g s", 1e-3 * GravityMS2, 1), new("kg s", GravityMS2, 1), GravityMS2)),
        [ShownQuantity.Stiffness] = (new(new("oz/in", PoundKg / 16.0 * GravityMS2 / InchM, 2)), new(new("g/cm", 0.1 * GravityMS2, 1))),
        [ShownQuantity.Inertia] = (new(new("oz in2", PoundKg / 16.0 * InchM * InchM, 0)), new(new("kg cm2", 1e-4, 0))),
        [ShownQuantity.PerDistance] = (new(new("1/ft", 1.0 / FootM, 2)), new(new("1/m", 1.0, 2))),
    };

    /// <summary>The unit for a value.</summary>
    /// <param name="quantity">Quantity.</param>
    /// <param name="metric">The family.</param>
    /// <param name="si">Value, or the largest of several, SI.</param>
    public static ShownUnit Of(ShownQuantity quantity, bool metric, double si)
    {
        (Steps trade, Steps own) = Units[quantity];
        Steps steps = metric ? own : trade;
        return steps.Large is ShownUnit large && Math.Abs(si) >= steps.LargeFrom * (1.0 - RoundsUp) ? large : steps.Small;
    }

    // What would read 1000 g reads 1.0 kg.
    private const double RoundsUp = 5e-3;

    private sealed record Steps(ShownUnit Small, ShownUnit? Large = null, double LargeFrom = double.PositiveInfinity);
}
