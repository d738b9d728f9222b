using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>An axis of a map for people: its unit, its title, its values in words.</summary>
internal sealed class MapAxisWords
{
    private readonly DesignUnits _units;
    private readonly DesignMap _map;

    /// <summary>Of an axis.</summary>
    /// <param name="map">Map.</param>
    /// <param name="axis">One of its axes.</param>
    /// <param name="shown">Units.</param>
    public MapAxisWords(DesignMap map, MapAxis axis, Shown shown)
    {
        (_map, Axis, _units) = (map, axis, new DesignUnits(shown));
        double most = Math.Max(Math.Abs(axis.From), Math.Abs(axis.To));
        Unit = axis.IsCounted ? new ShownUnit("", 1.0, 0) : shown.Unit(axis.Kind == ChangeKind.BallastMass ? ShownQuantity.Mass : ShownQuantity.Size, most);
    }

    /// <summary>The axis.</summary>
    public MapAxis Axis { get; }

    /// <summary>Unit of its values in a picture.</summary>
    public ShownUnit Unit { get; }

    /// <summary>Title in a picture.</summary>
    public string Title => Axis.Kind switch
    {
        ChangeKind.BallastAlong => $"Weight toward the nose from the middle, {Unit.Name}",
        ChangeKind.BallastUp => $"Weight over the axis, {Unit.Name}",
        ChangeKind.BallastMass => $"Mass of the weight, {Unit.Name}",
        ChangeKind.TieAlong => $"Line tie toward the nose from the middle, {Unit.Name}",
        ChangeKind.TieUp => $"Line tie over the axis, {Unit.Name}",
        ChangeKind.HookSize => Hooks(0.0).Contains('+', StringComparison.Ordinal) ? "Sizes of the hooks from the front" : "Size of the hooks",
        ChangeKind.Length => $"Length, {Unit.Name}",
        _ => $"Breadth, height along with it, {Unit.Name}",
    };

    /// <summary>What varies, and of what.</summary>
    private (string What, string Of) Name => Axis.Kind switch
    {
        ChangeKind.BallastAlong => ("place", " of the weight"),
        ChangeKind.BallastUp => ("height", " of the weight"),
        ChangeKind.BallastMass => ("mass", " of the weight"),
        ChangeKind.TieAlong => ("place", " of the line tie"),
        ChangeKind.TieUp => ("height", " of the line tie"),
        ChangeKind.HookSize => ("size", " of the hooks"),
        ChangeKind.Length => ("length", ""),
        _ => ("section", ""),
    };

    /// <summary>Two axes within a sentence.</summary>
    /// <param name="other">The other.</param>
    public string With(MapAxisWords other)
    {
        ((string what, string of), (string also, string ofAlso)) = (Name, other.Name);
        return of == ofAlso ? $"{what} and {also}{of}" : $"{what}{of} and {also}{ofAlso}";
    }

    /// <summary>From where to where, and where the lure is now.</summary>
    public string Range
    {
        get
        {
            string now = Axis.IsOfWeight && BallastSlot.Of(_map.Lure).Index < 0 ? "new" : $"now {Value(Axis.Own(_map.Lure))}";
            return $"{Name.What}{Name.Of} {Value(Axis.From)} to {Value(Axis.To)}{(Axis.Kind == ChangeKind.Section ? " of breadth, the height along with it" : "")} ({now})";
        }
    }

    /// <summary>Sizes of the hooks that are so many sizes larger, from the front.</summary>
    /// <param name="steps">Sizes larger.</param>
    public string Hooks(double steps)
    {
        string[] told = [.. _map.Task.Sizes.Hooks.OrderByDescending(h => _map.Lure.Hooks[h.Index].XM).Select(h => HookSizes.Name(h.Row + (int)Math.Round(steps)))];
        return told.Distinct().Count() == 1 ? told[0] : string.Join(" + ", told);
    }

    /// <summary>The same without "no.", where many stand side by side.</summary>
    /// <param name="steps">Sizes larger.</param>
    public string Tick(double steps) => Hooks(steps).Replace("no. ", "", StringComparison.Ordinal);

    private string Value(double value) => Axis.Kind switch
    {
        ChangeKind.BallastAlong or ChangeKind.TieAlong => _units.Along(value),
        ChangeKind.BallastUp or ChangeKind.TieUp => _units.Up(value),
        ChangeKind.BallastMass => _units.MassText(value),
        ChangeKind.HookSize => Hooks(value),
        _ => _units.LengthText(value),
    };
}
