using System.Globalization;

namespace LureSim.Reports.Kit.Text;

/// <summary>Numbers of a key, which stand in the key's own unit, for a reader with units of his own.</summary>
internal static class KeyUnit
{
    // A force in these units is the weight of the mass, so that the same numbers hold.
    private static readonly Dictionary<string, (ShownQuantity Quantity, double Si)> Known = new()
    {
        ["mm"] = (ShownQuantity.Size, 1e-3),
        ["cm"] = (ShownQuantity.Size, 1e-2),
        ["in"] = (ShownQuantity.Size, UnitTable.InchM),
        ["m"] = (ShownQuantity.Distance, 1.0),
        ["ft"] = (ShownQuantity.Distance, UnitTable.FootM),
        ["g"] = (ShownQuantity.Mass, 1e-3),
        ["oz"] = (ShownQuantity.Mass, UnitTable.PoundKg / 16.0),
        ["lb"] = (ShownQuantity.Mass, UnitTable.PoundKg),
        ["kg"] = (ShownQuantity.Mass, 1.0),
        ["N"] = (ShownQuantity.Pull, 1.0),
        ["m/s"] = (ShownQuantity.Speed, 1.0),
        ["ft/s"] = (ShownQuantity.Speed, UnitTable.FootM),
    };

    /// <summary>A number with its unit; in the key's own unit where people share it ("/s", "deg") or have no other word.</summary>
    /// <param name="shown">Choice.</param>
    /// <param name="unit">Unit of the key.</param>
    /// <param name="value">Number in it.</param>
    public static string Text(Shown shown, string unit, double value) =>
        Known.TryGetValue(unit, out var known) ? shown.Text(known.Quantity, value * known.Si) : $"{Plain(value)} {unit}".TrimEnd();

    /// <summary>A range with its unit.</summary>
    /// <param name="shown">Choice.</param>
    /// <param name="unit">Unit of the key.</param>
    /// <param name="from">Low end.</param>
    /// <param name="to">High end.</param>
    public static string Range(Shown shown, string unit, double from, double to) =>
        Known.TryGetValue(unit, out var known) ? shown.Range(known.Quantity, from * known.Si, to * known.Si) : $"{Plain(from)} to {Plain(to)} {unit}".TrimEnd();

    private static string Plain(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
