namespace LureSim.Model.Fish;

/// <summary>Usual size of a stout freshwater fish by its mass. All from memory or guessed.</summary>
/// <remarks>
/// Length from M = c L^3 with c = 13 kg/m3 (condition of stout bass-like fish, 11 to 16, from memory); height 0.27 L (0.23 to 0.32) and width 0.15 L (0.12 to 0.18; guesses, inside the range of CdA), so that the
/// area across is pi/4 0.27 0.15 L^2. Drag coefficient on that area 0.4 (0.1 to 0.8): about 0.1 for a body that glides, more with an open mouth and a
/// body that does not follow its head (guess).
/// </remarks>
public static class FishBody
{
    private const double Condition = 13.0, HeightShare = 0.27, WidthShare = 0.15;

    /// <summary>L, m.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    public static double LengthM(double massKg) => Math.Cbrt(massKg / Condition);

    /// <summary>Height of the body, m.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    public static double DepthM(double massKg) => HeightShare * LengthM(massKg);

    /// <summary>Width of the body, m.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    public static double WidthM(double massKg) => WidthShare * LengthM(massKg);

    /// <summary>CdA drawn head first, m2.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    public static Ranged DragAreaM2(double massKg)
    {
        double length = LengthM(massKg), area = 0.25 * Math.PI * HeightShare * WidthShare * length * length;
        return new(0.4 * area, 0.1 * area, 0.8 * area);
    }

    /// <summary>Thrust at rest, N: 0.8 of its weight (0.3 to 1.6); nobody has measured it.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    public static Ranged PullN(double massKg)
    {
        double weight = massKg * Physics.GravityMS2;
        return new(0.8 * weight, 0.3 * weight, 1.6 * weight);
    }
}
