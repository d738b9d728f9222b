namespace LureSim.Reports.Kit.Plans;

/// <summary>A part of a sheet that takes its own room, its upper left corner at 0.</summary>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="Items">What is drawn.</param>
public sealed record PlanBlock(double WidthMm, double HeightMm, IReadOnlyList<PlanItem> Items)
{
    /// <summary>The block with its corner at a point of a sheet.</summary>
    /// <param name="x">To the right, mm.</param>
    /// <param name="y">Down, mm.</param>
    public IEnumerable<PlanItem> At(double x, double y) => Items.Select(i => i.Moved(x, y));

    /// <summary>A part of the block.</summary>
    /// <param name="corner">Corner of the part on the sheet.</param>
    /// <param name="widthMm">Width of the part, mm.</param>
    /// <param name="heightMm">Height of the part, mm.</param>
    /// <param name="from">Corner of the part in the block.</param>
    public PlanWindow Part(PlanPoint corner, double widthMm, double heightMm, PlanPoint from) => new(corner, widthMm, heightMm, from, Items);
}
