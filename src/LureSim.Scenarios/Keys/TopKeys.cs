using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys before the first table.</summary>
public static class TopKeys
{
    /// <summary>Title.</summary>
    public static readonly KeySpec Title = new("title", QuantityKind.Text, "", "What the scenario shows, for headings; without it, the name of the file.") { HasNoDefault = true };

    /// <summary>Seed.</summary>
    public static readonly KeySpec Seed = new("seed", QuantityKind.WholeNumber, "", "Seed of every random draw.")
    {
        Default = "1",
        Low = 0,
        High = 999_999_999,
        Lens = Lens.OfSetup(s => s.Seed),
    };

    /// <summary>Rows before the tables.</summary>
    public static readonly KeySpec[] All = [Title, Seed];
}
