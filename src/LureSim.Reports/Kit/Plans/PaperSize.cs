namespace LureSim.Reports.Kit.Plans;

/// <summary>A sheet of paper laid across.</summary>
/// <param name="Name">Name in file names.</param>
/// <param name="WidthMm">Long side, mm.</param>
/// <param name="HeightMm">Short side, mm.</param>
public sealed record PaperSize(string Name, double WidthMm, double HeightMm)
{
    /// <summary>ISO 216.</summary>
    public static PaperSize A4 { get; } = new("a4", 297.0, 210.0);

    /// <summary>11 by 8.5 in.</summary>
    public static PaperSize Letter { get; } = new("letter", 279.4, 215.9);
}
