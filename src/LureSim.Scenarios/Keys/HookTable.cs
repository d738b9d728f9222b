namespace LureSim.Scenarios.Keys;

/// <summary>Sizes of hooks: wire and length of wire per point. A table of guesses, from memory; real hooks differ by a third.</summary>
/// <remarks>
/// Mass = steel density times wire area times wire length; drag area = wire x length x 0.5 (mean over directions) x Cd 1.
/// A treble is three times the length per point, a double twice. Sizes run down to no. 1, then up from 1/0.
/// </remarks>
public static class HookTable
{
    /// <summary>Density of plain steel, kg/m3 (handbook value).</summary>
    public const double SteelDensityKgM3 = 7850.0;

    // Wire in mm, wire length per point in mm; from memory.
    private static readonly (string Name, double Wire, double PerPoint)[] Rows =
    [
        ("no. 10", 0.75, 27), ("no. 8", 0.85, 32), ("no. 6", 0.95, 38), ("no. 4", 1.05, 47), ("no. 2", 1.20, 55),
        ("no. 1", 1.30, 60), ("1/0", 1.40, 67), ("2/0", 1.50, 75), ("3/0", 1.65, 83), ("4/0", 1.80, 92), ("5/0", 1.90, 102),
    ];

    /// <summary>Known sizes; the number of a choice is its row.</summary>
    internal static Choice[] Choices { get; } = MakeChoices();

    /// <summary>Mass of a hook of a row, kg.</summary>
    internal static double MassKg(int row, double points) =>
        SteelDensityKgM3 * 0.25 * Math.PI * WireM(row) * WireM(row) * points * LengthM(row);

    /// <summary>Drag area CdA of a hook of a row, m2.</summary>
    internal static double DragAreaM2(int row, double points) => 0.5 * WireM(row) * points * LengthM(row);

    private static double WireM(int row) => 1e-3 * Rows[row].Wire;

    private static double LengthM(int row) => 1e-3 * Rows[row].PerPoint;

    private static Choice[] MakeChoices()
    {
        var choices = new Choice[Rows.Length];
        for (int i = 0; i < Rows.Length; i++)
        {
            choices[i] = new(Rows[i].Name, i);
        }

        return choices;
    }
}
