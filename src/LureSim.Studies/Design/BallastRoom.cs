using LureSim.Model.Lures;

namespace LureSim.Studies.Design;

/// <summary>Where a weight has room in a hull: a ball of its metal inside the outline. A wall, a slug that lies lengthwise and a weight let into the belly are the builder's to judge.</summary>
public static class BallastRoom
{
    private const int Places = 401;

    /// <summary>Height of the centre of a ball that lies on the belly, m over the axis; the middle of a section too low for it.</summary>
    /// <param name="section">Section.</param>
    /// <param name="weight">Weight that makes the ball.</param>
    public static double LowestM(HullSection section, BallastSpec weight)
    {
        ArgumentNullException.ThrowIfNull(weight);
        return section.CentreZM - Math.Max(0.0, section.HalfHeightM - weight.BallRadiusM);
    }

    /// <summary>Room left between a ball and the outline over and under it, m; negative: so much of it sticks out.</summary>
    /// <param name="section">Section at the ball.</param>
    /// <param name="weight">Weight.</param>
    public static double SpareM(HullSection section, BallastSpec weight)
    {
        ArgumentNullException.ThrowIfNull(weight);
        return section.HalfHeightM - Math.Abs(weight.ZM - section.CentreZM) - weight.BallRadiusM;
    }

    /// <summary>Places along the hull where the centre of a weight lies inside the body, and where it is to lie on the belly a ball of it too, m from the middle; null: nowhere.</summary>
    /// <param name="slot">Weight that moves.</param>
    /// <param name="massKg">Its mass, kg.</param>
    public static (double TailM, double NoseM)? Along(BallastSlot slot, double massKg)
    {
        ArgumentNullException.ThrowIfNull(slot);
        HullForm hull = HullShape.Create(slot.Lure);
        double radius = slot.Height == BallastHeight.Lowest ? (slot.Weight with { MassKg = massKg }).BallRadiusM : 0.0, half = 0.5 * hull.LengthM;
        double? tail = null, nose = null;
        for (int i = 0; i < Places; i++)
        {
            double x = half * ((2.0 * i / (Places - 1)) - 1.0);
            if (Math.Abs(x) <= half - radius && Fits(hull.SectionAt(x), slot, radius))
            {
                tail ??= x;
                nose = x;
            }
        }

        return tail is double t && nose is double n ? (t, n) : null;
    }

    private static bool Fits(HullSection s, BallastSlot slot, double radius) => slot.Height == BallastHeight.Lowest
        ? radius <= Math.Min(s.HalfBreadthM, s.HalfHeightM)
        : Math.Abs(slot.Weight.ZM - s.CentreZM) <= s.HalfHeightM;
}
