using LureSim.Model;

namespace LureSim.References.Lines;

/// <summary>
/// Record classes of lines: the limit is the kilogram value, the pounds are only a customary name, so a "20 lb class" line breaks at
/// or below 10 kg = 98.07 N, not 88.96 N (IGFA line classes, wetted samples).
/// </summary>
public static class LineClasses
{
    private static readonly (double Kg, double CustomaryLb)[] Classes =
    [
        (1, 2), (2, 4), (3, 6), (4, 8), (6, 12), (8, 16), (10, 20), (15, 30), (24, 50), (37, 80), (60, 130),
    ];

    /// <summary>All classes: limit in kg and customary name in lb.</summary>
    public static IReadOnlyList<(double Kg, double CustomaryLb)> All => Classes;

    /// <summary>Largest wet break of a class by its customary pounds, N.</summary>
    /// <exception cref="ArgumentException">There is no such class.</exception>
    public static double LimitN(double customaryLb)
    {
        foreach ((double kg, double lb) in Classes)
        {
            if (lb == customaryLb)
            {
                return kg * Physics.GravityMS2;
            }
        }

        throw new ArgumentException("No such line class; there are 2, 4, 6, 8, 12, 16, 20, 30, 50, 80 and 130 lb.", nameof(customaryLb));
    }
}
