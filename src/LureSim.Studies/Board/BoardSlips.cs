namespace LureSim.Studies.Board;

/// <summary>A slip that would explain a density, as a question.</summary>
/// <param name="Factor">What the density is to be multiplied with if it happened.</param>
/// <param name="Question">The question, from "is" or "are" on.</param>
public sealed record BoardSlip(double Factor, string Question);

/// <summary>Slips that people make when they weigh a board: a part taken for the whole, one unit for another.</summary>
internal static class BoardSlips
{
    private const double InchCm = 2.54, OunceG = 28.349523125, PoundKg = 0.45359237;

    /// <summary>All slips that the units of a piece allow.</summary>
    public static IEnumerable<BoardSlip> Of(BoardPiece piece)
    {
        foreach ((int n, string part) in ((int, string)[])[(2, "half"), (3, "a third"), (4, "a quarter"), (8, "an eighth")])
        {
            yield return new(1.0 / n, $"is the mass that of the whole board, and are the measures those of {part} of it (factor {n})?");
            yield return new(n, $"are the measures those of the whole board, and is the mass that of {part} of it (factor {n})?");
        }

        foreach (BoardSlip slip in OfMeasures(piece).Concat(OfMass(piece.Mass.Unit)))
        {
            yield return slip;
        }
    }

    private static IEnumerable<BoardSlip> OfMeasures(BoardPiece piece)
    {
        foreach ((string unit, string other, double shorter) in ((string, string, double)[])[("in", "cm", InchCm), ("cm", "in", 1.0 / InchCm), ("mm", "cm", 0.1), ("cm", "mm", 10.0)])
        {
            int most = piece.Measures.Count(m => m.Unit == unit);
            for (int k = 1; k <= most; k++)
            {
                string which = k == 3 ? "are all three measures" : k == 2 ? "are two of the measures" : "is one of the measures";
                string power = k == 1 ? Number(shorter) : $"{Number(shorter)}^{k}";
                yield return new(Math.Pow(shorter, k), $"{which} in {other}, not in {unit} (factor {power})?");
            }
        }

        if (piece.Thickness.Unit == "in")
        {
            yield return new(4.0 / 3.0, "is the thickness that of the rough board (1 in rough is 3/4 in planed; factor 4/3)?");
        }
    }

    private static IEnumerable<BoardSlip> OfMass(string unit)
    {
        foreach ((string own, string other, double factor) in ((string, string, double)[])[
            ("g", "oz", OunceG), ("oz", "g", 1.0 / OunceG), ("lb", "kg", 1.0 / PoundKg), ("kg", "lb", PoundKg), ("oz", "lb", 16.0), ("lb", "oz", 1.0 / 16.0), ("g", "kg", 1000.0), ("kg", "g", 1e-3)])
        {
            if (unit == own)
            {
                yield return new(factor, $"is the mass in {other}, not in {own} (factor {Number(factor)})?");
            }
        }
    }

    // Factors below 1 read as what they divide by.
    private static string Number(double factor) =>
        (factor >= 1.0 ? factor : 1.0 / factor).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
