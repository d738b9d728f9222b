namespace LureSim.Scenarios.Keys;

/// <summary>
/// Densities of what bodies and ballast are made of, kg/m3. Woods air-dry: specific gravity at 12 % moisture times 1.12 (US Forest Products
/// Laboratory, Wood Handbook, tables of chapter 5, from memory) with the range of pieces of one kind, a fifth either way (coefficient of variation
/// about 10 %, same source, from memory); balsa and cork vary more. Foams and plastics: usual values of data sheets, from memory.
/// </summary>
public static class BodyMaterials
{
    /// <summary>Density of lead, kg/m3 (handbook value).</summary>
    public const double LeadKgM3 = 11340.0;

    /// <summary>Lightest to heaviest that a body is made of here.</summary>
    public static IReadOnlyList<Choice> All => Choices;

    internal static Choice[] Choices { get; } =
    [
        new("balsa", 180, 90, 260), new("cork", 200, 120, 260), Wood("paulownia", 290), Wood("cedar", 360), Wood("pine", 390), Wood("jelutong", 400), Wood("basswood", 415),
        Wood("alder", 460), Wood("poplar", 470), Wood("mahogany", 500), Wood("cypress", 515), Wood("birch", 695), Wood("maple", 705), Wood("beech", 715),
        new("foam", 250, 100, 400), new("pvc-board", 600, 500, 700), new("filled-resin", 650, 500, 850),
        new("abs", 1050, 1020, 1080), new("resin", 1100, 1040, 1200), new("acrylic", 1180, 1150, 1200), new("polycarbonate", 1200, 1180, 1220),
        new("pla", 1240, 1200, 1260), new("petg", 1270, 1230, 1290),
    ];

    /// <summary>Ballast; handbook values, tungsten as sintered with a binder (17000 to 18500).</summary>
    internal static Choice[] Weights { get; } =
    [
        new("lead", LeadKgM3), new("tungsten", 17500), new("brass", 8500), new("steel", HookTable.SteelDensityKgM3), new("bismuth", 9780), new("tin", 7300), new("glass", 2500),
    ];

    private static Choice Wood(string name, double density) => new(name, density, 0.8 * density, 1.2 * density);
}
