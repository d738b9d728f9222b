using OxyPlot;

namespace LureSim.Reports.Kit.Plans;

/// <summary>A point of a plan.</summary>
/// <param name="X">To the right, mm.</param>
/// <param name="Y">Down, mm.</param>
public readonly record struct PlanPoint(double X, double Y)
{
    /// <summary>The same elsewhere.</summary>
    /// <param name="dx">To the right, mm.</param>
    /// <param name="dy">Down, mm.</param>
    public PlanPoint Moved(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>How a line of a plan is drawn.</summary>
/// <param name="Colour">Colour.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="DashMm">Dashes and gaps, mm; 0 = solid.</param>
public sealed record PlanPen(OxyColor Colour, double WidthMm, double DashMm = 0.0);

/// <summary>Which part of a text stands at its point.</summary>
public enum PlanAnchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>Something drawn on a plan.</summary>
/// <param name="Name">Name by which a program that reads the SVG finds it: letters, digits and hyphens, once in a plan; null = none.</param>
public abstract record PlanItem(string? Name)
{
    /// <summary>The same elsewhere.</summary>
    /// <param name="dx">To the right, mm.</param>
    /// <param name="dy">Down, mm.</param>
    public abstract PlanItem Moved(double dx, double dy);
}

/// <summary>Straight lines from point to point.</summary>
/// <param name="Name">Name, or null.</param>
/// <param name="Points">At least two.</param>
/// <param name="Closed">The last is joined to the first.</param>
/// <param name="Pen">Line.</param>
public sealed record PlanPath(string? Name, IReadOnlyList<PlanPoint> Points, bool Closed, PlanPen Pen) : PlanItem(Name)
{
    /// <summary>A line between two points.</summary>
    /// <param name="name">Name, or null.</param>
    /// <param name="x1">Its start, mm.</param>
    /// <param name="y1">Its start, mm.</param>
    /// <param name="x2">Its end, mm.</param>
    /// <param name="y2">Its end, mm.</param>
    /// <param name="pen">Line.</param>
    public static PlanPath Line(string? name, double x1, double y1, double x2, double y2, PlanPen pen) =>
        new(name, [new(x1, y1), new(x2, y2)], false, pen);

    /// <inheritdoc/>
    public override PlanItem Moved(double dx, double dy) => this with { Points = [.. Points.Select(p => p.Moved(dx, dy))] };
}

/// <summary>A circle.</summary>
/// <param name="Name">Name, or null.</param>
/// <param name="Centre">Centre.</param>
/// <param name="RadiusMm">Radius, mm.</param>
/// <param name="Pen">Line.</param>
public sealed record PlanCircle(string? Name, PlanPoint Centre, double RadiusMm, PlanPen Pen) : PlanItem(Name)
{
    /// <inheritdoc/>
    public override PlanItem Moved(double dx, double dy) => this with { Centre = Centre.Moved(dx, dy) };
}

/// <summary>One line of text on its baseline.</summary>
/// <param name="Name">Name, or null.</param>
/// <param name="At">Point of the baseline.</param>
/// <param name="Text">Any text; what steers a viewer is escaped.</param>
/// <param name="SizeMm">Size of the letters, mm.</param>
/// <param name="Anchor">What of it stands at the point.</param>
/// <param name="Bold">Bold instead of regular.</param>
/// <param name="Colour">Colour.</param>
public sealed record PlanText(string? Name, PlanPoint At, string Text, double SizeMm, PlanAnchor Anchor, bool Bold, OxyColor Colour) : PlanItem(Name)
{
    /// <inheritdoc/>
    public override PlanItem Moved(double dx, double dy) => this with { At = At.Moved(dx, dy) };
}

/// <summary>An opening of a page through which a part of another plan is seen, at the same scale.</summary>
/// <param name="Corner">Upper left corner of the opening.</param>
/// <param name="WidthMm">Its width, mm.</param>
/// <param name="HeightMm">Its height, mm.</param>
/// <param name="From">Point of the other plan that lies in the corner.</param>
/// <param name="Items">The other plan.</param>
public sealed record PlanWindow(PlanPoint Corner, double WidthMm, double HeightMm, PlanPoint From, IReadOnlyList<PlanItem> Items) : PlanItem(Name: null)
{
    /// <inheritdoc/>
    public override PlanItem Moved(double dx, double dy) => this with { Corner = Corner.Moved(dx, dy) };
}

/// <summary>A sheet drawn at true scale: a millimetre is a millimetre of the paper.</summary>
/// <param name="WidthMm">Width of the paper, mm.</param>
/// <param name="HeightMm">Height of the paper, mm.</param>
/// <param name="Items">What is on it, the last on top.</param>
public sealed record PlanSheet(double WidthMm, double HeightMm, IReadOnlyList<PlanItem> Items);
