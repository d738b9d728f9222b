namespace LureSim.Scenarios.Keys;

/// <summary>Sizes of hooks: wire, length of wire per point, and gap. A table of guesses, from memory; real hooks differ by a third.</summary>
/// <remarks>
/// Mass = steel density times wire area times wire length; drag area = wire x length x 0.5 (mean over directions) x Cd 1.
/// A treble is three times the length per point, a double twice. Sizes run down to no. 1, then up from 1/0.
/// </remarks>
public static class HookTable
{
    /// <summary>Density of plain steel, kg/m3 (handbook value).</summary>
    public const double SteelDensityKgM3 = 7850.0;

    private const double RingWire = 0.1;

    // Wire, wire length per point and gap from point to shank, all in mm; from memory.
    private static readonly (string Name, double Wire, double PerPoint, double Gap)[] Rows =
    [
        ("no. 10", 0.75, 27, 4.5), ("no. 8", 0.85, 32, 5), ("no. 6", 0.95, 38, 6), ("no. 4", 1.05, 47, 7.5), ("no. 2", 1.20, 55, 9), ("no. 1", 1.30, 60, 10),
        ("1/0", 1.40, 67, 11.5), ("2/0", 1.50, 75, 13), ("3/0", 1.65, 83, 14.5), ("4/0", 1.80, 92, 16), ("5/0", 1.90, 102, 18),
    ];

    /// <summary>Known sizes; the number of a choice is its row.</summary>
    internal static Choice[] Choices { get; } = MakeChoices();

    /// <summary>Mass of a hook of a row, kg.</summary>
    internal static double MassKg(int row, double points) =>
        SteelDensityKgM3 * 0.25 * Math.PI * WireM(row) * WireM(row) * points * LengthM(row);

    /// <summary>Drag area CdA of a hook of a row, m2.</summary>
    internal static double DragAreaM2(int row, double points) => 0.5 * WireM(row) * points * LengthM(row);

    /// <summary>Thickness of the wire of a row, m.</summary>
    internal static double WireM(int row) => 1e-3 * Rows[row].Wire;

    /// <summary>Gap from point to shank of a row, m.</summary>
    internal static double GapM(int row) => 1e-3 * Rows[row].Gap;

    /// <summary>
    /// Mass and drag area of a split ring: two turns of wire a tenth as thick as the ring is wide (guess from memory, 0.08 to 0.13), half the wire's
    /// frontal area as for hooks.
    /// </summary>
    /// <param name="diameterM">Outer diameter, m.</param>
    internal static (double MassKg, double DragAreaM2) Ring(double diameterM)
    {
        double wire = RingWire * diameterM, length = 2.0 * Math.PI * (diameterM - wire);
        return (SteelDensityKgM3 * 0.25 * Math.PI * wire * wire * length, 0.5 * wire * length);
    }

    /// <summary>Diameter of the ring of a mass, m.</summary>
    /// <param name="massKg">Mass, kg.</param>
    internal static double RingDiameterM(double massKg) => Math.Cbrt(massKg / Ring(1.0).MassKg);

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
