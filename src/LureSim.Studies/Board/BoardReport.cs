using LureSim.Model.Media;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Board;

/// <summary>A slip with the density that would be true if it happened.</summary>
/// <param name="Slip">Slip.</param>
/// <param name="DensityKgM3">Density, kg/m3.</param>
public sealed record BoardQuestion(BoardSlip Slip, double DensityKgM3);

/// <summary>What a weighed board says.</summary>
/// <param name="Piece">The board.</param>
/// <param name="Material">Material that was named, or null.</param>
/// <param name="Offcut">Measures of the piece to check with, m.</param>
public sealed record BoardReport(BoardPiece Piece, Choice? Material, IReadOnlyList<double> Offcut)
{
    /// <summary>Lightest and heaviest wood, kg/m3: the lightest balsa and the heaviest tropical woods, from memory.</summary>
    internal const double LightestWood = 80.0, HeaviestWood = 1300.0;

    // The woods that bodies are carved of; what a slip would lead to lies there unless a material is named.
    private const double Likely = 90.0, LikelyMost = 860.0;

    /// <summary>Fresh water at 20 C, kg/m3.</summary>
    public static double FreshKgM3 { get; } = WaterModel.Evaluate(new(20.0, 0.0)).DensityKgM3;

    /// <summary>Sea water at 20 C and 35 g/kg, kg/m3.</summary>
    public static double SeaKgM3 { get; } = WaterModel.Evaluate(new(20.0, 35.0)).DensityKgM3;

    /// <summary>Density, kg/m3.</summary>
    public double DensityKgM3 => Piece.DensityKgM3;

    /// <summary>Share under water when it floats in fresh water.</summary>
    public double WetShare => DensityKgM3 / FreshKgM3;

    /// <summary>Mass of the piece to check with, kg.</summary>
    public double OffcutKg => DensityKgM3 * Offcut[0] * Offcut[1] * Offcut[2];

    /// <summary>True where the density is not that of the named material, or of no wood at all.</summary>
    public bool IsDoubtful => Material is null ? DensityKgM3 < LightestWood || DensityKgM3 > HeaviestWood : !Holds(Material, DensityKgM3);

    /// <summary>Materials of such a density, the nearest first; where there is none, the nearest one.</summary>
    public IReadOnlyList<Choice> Near
    {
        get
        {
            Choice[] all = [.. BodyMaterials.All.OrderBy(m => Math.Abs(Math.Log(DensityKgM3 / m.Value)))];
            Choice[] holding = [.. all.Where(m => Holds(m, DensityKgM3))];
            return holding.Length > 0 ? holding : [all[0]];
        }
    }

    /// <summary>Slips that would explain a doubtful density, those first that come nearest to the named material.</summary>
    public IReadOnlyList<BoardQuestion> Questions
    {
        get
        {
            if (!IsDoubtful)
            {
                return [];
            }

            (double low, double high) = Material is Choice named ? (named.Low, named.High) : (Likely, LikelyMost);
            double aim = Material?.Value ?? Math.Sqrt(low * high);
            return [.. BoardSlips.Of(Piece).Select(s => new BoardQuestion(s, s.Factor * DensityKgM3)).Where(q => q.DensityKgM3 >= low && q.DensityKgM3 <= high)
                .OrderBy(q => Math.Abs(Math.Log(q.DensityKgM3 / aim)))];
        }
    }

    private static bool Holds(Choice material, double density) => density >= material.Low && density <= material.High;
}
