using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>Line wound on a spool: a hollow cylinder whose outside shrinks as line leaves.</summary>
/// <param name="OuterRadiusM">R_2, radius of the wound line on the full spool, m.</param>
/// <param name="WidthM">W, m.</param>
/// <param name="Packing">Share of line in the wound volume, 0 to 1.</param>
/// <param name="LineDiameterM">d, m.</param>
/// <param name="LineKgM">mu, mass per length of the line as it lies there, kg/m.</param>
/// <param name="LengthM">L, line on the full spool, m.</param>
internal sealed record WoundLine(double OuterRadiusM, double WidthM, double Packing, double LineDiameterM, double LineKgM, double LengthM)
{
    /// <summary>Fall of the squared radius per length of line, m: pi/4 d^2 dL = packing pi W d(R^2).</summary>
    public double SlopeM { get; } = Slope(WidthM, Packing, LineDiameterM);

    /// <summary>R_1^2, squared radius under the last turn, m2; not positive when the line does not fit.</summary>
    public double CoreSquaredM2 => (OuterRadiusM * OuterRadiusM) - (SlopeM * LengthM);

    /// <summary>The line on the full spool of a reel: as much as the reel has, or as fits.</summary>
    /// <param name="reel">Reel.</param>
    /// <param name="line">Line on it.</param>
    public static WoundLine On(ReelSpec reel, LineSpec line)
    {
        SpoolSpec spool = reel.Spool;
        double radius = 0.5 * reel.SpoolDiameterM;
        double length = Math.Min(spool.LineM, spool.MostLineM(line, radius));
        return new(radius, spool.WidthM, spool.Packing, line.DiameterM, line.LinearDensityKgM, length);
    }

    /// <summary>Length that fills the spool from an inner radius to the outer one, m.</summary>
    /// <param name="innerRadiusM">R_1, m; 0 down to the axle.</param>
    /// <param name="outerRadiusM">R_2, m.</param>
    /// <param name="widthM">W, m.</param>
    /// <param name="packing">Share of line in the wound volume.</param>
    /// <param name="lineDiameterM">d, m.</param>
    public static double Capacity(double innerRadiusM, double outerRadiusM, double widthM, double packing, double lineDiameterM) =>
        ((outerRadiusM * outerRadiusM) - (innerRadiusM * innerRadiusM)) / Slope(widthM, packing, lineDiameterM);

    /// <summary>R, radius with so much line gone, m.</summary>
    /// <param name="goneM">0 to L, m.</param>
    public double RadiusM(double goneM) => Math.Sqrt((OuterRadiusM * OuterRadiusM) - (SlopeM * goneM));

    /// <summary>m = mu (L - gone), kg.</summary>
    /// <param name="goneM">0 to L, m.</param>
    public double MassKg(double goneM) => LineKgM * (LengthM - goneM);

    /// <summary>I = m (R_1^2 + R^2)/2, kg m2.</summary>
    /// <param name="goneM">0 to L, m.</param>
    public double InertiaKgM2(double goneM) =>
        0.5 * MassKg(goneM) * (CoreSquaredM2 + (OuterRadiusM * OuterRadiusM) - (SlopeM * goneM));

    private static double Slope(double width, double packing, double diameter) => diameter * diameter / (4.0 * packing * width);
}
