using LureSim.Model.Bend;
using LureSim.Model.Rods;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>What cannot be in a bend test, whatever the rod.</summary>
internal static class BendChecks
{
    // Two readings of one tip differ by more than this, in their errors, once in a few thousand tries.
    private const double Chance = 3.5;

    /// <summary>Adds each fault.</summary>
    /// <param name="file">File.</param>
    /// <param name="test">The test.</param>
    /// <param name="places">Places of its rows.</param>
    /// <param name="faults">Gets them.</param>
    public static void Run(string file, BendTest test, string[] places, List<ScenarioFault> faults)
    {
        double free = test.FreeLengthM;
        if (free < RodSpec.LeastFreeLengthM)
        {
            faults.Add(new(file, "clamped", $"{Centimetres(test.ClampedM)} held leaves {Centimetres(free)} of the rod; at least {Centimetres(RodSpec.LeastFreeLengthM)} must be free"));
            return;
        }

        if (test.BalanceM > test.LengthM)
        {
            faults.Add(new(file, "balance", $"{Centimetres(test.BalanceM.Value)} from the butt end lies beyond the tip"));
        }

        if (!test.Rows.Any(r => r is { LoadN: > 0.0, DropM: > 0.0 }))
        {
            faults.Add(new(file, "", "it holds no drop of the tip under a weight; a row such as \"100 g, 28 cm\" is due"));
        }

        for (int i = 0; i < test.Rows.Count; i++)
        {
            foreach ((string name, double? drop, double longest) in ((string, double?, double)[])[("drop", test.Rows[i].DropM, free), ("middle", test.Rows[i].MiddleDropM, 0.5 * free)])
            {
                if (drop > longest)
                {
                    faults.Add(new(places[i], name, $"{Centimetres(drop.Value)} is more than the {Centimetres(longest)} of rod that are free up to there; it cannot hang so low"));
                }
            }
        }

        Falling(test, places, faults);
    }

    // A heavier weight bends a rod further.
    private static void Falling(BendTest test, string[] places, List<ScenarioFault> faults)
    {
        (BendReading Row, string Place)[] rows = [.. test.Rows.Zip(places).Where(r => r.First.DropM is not null).OrderBy(r => r.First.LoadN).Select(r => (r.First, r.Second))];
        double apart = Chance * Math.Sqrt(2.0) * test.Errors.DropM;
        for (int i = 1; i < rows.Length; i++)
        {
            (BendReading light, string where) = rows[i - 1];
            (BendReading heavy, string place) = rows[i];
            if (heavy.LoadN > light.LoadN && heavy.DropM < light.DropM - apart)
            {
                faults.Add(new(place, "drop", $"{Centimetres(heavy.DropM!.Value)} under {Grams(heavy.LoadN)} is less than {Centimetres(light.DropM!.Value)} under {Grams(light.LoadN)} at {where}; a heavier weight bends a rod further, so one of the two is read or typed wrong"));
            }
        }
    }

    private static string Centimetres(double m) => Quantity.Show(m, QuantityKind.Length, "cm", 3);

    private static string Grams(double n) => Quantity.Show(n, QuantityKind.Force, "g", 3);
}
