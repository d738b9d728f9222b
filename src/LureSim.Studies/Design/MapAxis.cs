using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Design;

/// <summary>One axis of a map: something that a builder can change (<see cref="DesignChange"/>), from one value to another.</summary>
/// <param name="Kind">What varies; one that has a name.</param>
/// <param name="From">Least value: m, kg, or how many sizes every hook is larger than it is. Length and section are told by the length and the breadth.</param>
/// <param name="To">Largest value.</param>
/// <param name="Count">Values, 2 to 400.</param>
public sealed record MapAxis(ChangeKind Kind, double From, double To, int Count = MapAxis.UsualCount)
{
    private const int UsualCount = 40, MostCount = 400;

    // Usual reach: a quarter of the length for a weight, a fifth for a tie, a fifth shorter to a quarter longer or thicker. Choices.
    private const double WeightReach = 0.25, WeightRoom = 0.45, TieReach = 0.2, Smallest = 0.8, Largest = 1.25;

    // In the order in which they are made: the body first, what is on it then, and the mass of the weight last, so that it stays the one that moves.
    private static readonly (ChangeKind Kind, string Name, string Key)[] Table =
    [
        (ChangeKind.Length, "length", "length_m"), (ChangeKind.Section, "section", "breadth_m"), (ChangeKind.HookSize, "hooks", "hook_steps"),
        (ChangeKind.TieUp, "tie", "tie_z_m"), (ChangeKind.TieAlong, "tie-along", "tie_x_m"),
        (ChangeKind.BallastAlong, "place", "ballast_x_m"), (ChangeKind.BallastUp, "height", "ballast_z_m"), (ChangeKind.BallastMass, "mass", "ballast_kg"),
    ];

    /// <summary>Names of all axes.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(t => t.Name)];

    /// <summary>Its name.</summary>
    public string Name => NameOf(Kind);

    /// <summary>Its name in files, with the SI unit.</summary>
    public string Key => Table[Order].Key;

    /// <summary>True where it goes in whole steps: sizes of hooks.</summary>
    public bool IsCounted => Kind == ChangeKind.HookSize;

    /// <summary>True where it is of the weight.</summary>
    public bool IsOfWeight => Kind is ChangeKind.BallastAlong or ChangeKind.BallastUp or ChangeKind.BallastMass;

    /// <summary>Its turn where a lure is changed along two axes: the order of the axes leaves no trace.</summary>
    internal int Order => Array.FindIndex(Table, t => t.Kind == Kind);

    /// <summary>What a name stands for; null: nothing.</summary>
    /// <param name="name">Name.</param>
    public static ChangeKind? KindOf(string name) =>
        Array.FindIndex(Table, t => string.Equals(t.Name, name, StringComparison.OrdinalIgnoreCase)) is var i && i >= 0 ? Table[i].Kind : null;

    /// <summary>Name of what varies.</summary>
    /// <param name="kind">What varies.</param>
    /// <exception cref="ArgumentException">It is no axis.</exception>
    public static string NameOf(ChangeKind kind) =>
        Array.FindIndex(Table, t => t.Kind == kind) is var i && i >= 0 ? Table[i].Name : throw new ArgumentException($"{kind} is no axis of a map", nameof(kind));

    /// <summary>The usual axis of a lure: where its body has room, and always with the lure as it is inside.</summary>
    /// <param name="kind">What varies.</param>
    /// <param name="lure">Lure.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <exception cref="ArgumentException">It is no axis, or no hook of the lure has a size with a neighbour.</exception>
    public static MapAxis Of(ChangeKind kind, LureSpec lure, HookSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(sizes);
        string name = NameOf(kind);
        if (kind == ChangeKind.HookSize)
        {
            return Hooks(sizes);
        }

        double own = Own(kind, lure), length = lure.LengthM, height = lure.HeightM, room = WeightRoom * length;
        double mass = own > 0.0 ? own : 0.15 * lure.MassKg;
        (double from, double to) = kind switch
        {
            ChangeKind.BallastAlong => (Math.Max(-room, own - (WeightReach * length)), Math.Min(room, own + (WeightReach * length))),
            ChangeKind.BallastMass => (0.25 * mass, 2.0 * mass),
            ChangeKind.BallastUp => (-WeightRoom * height, 0.1 * height),
            ChangeKind.TieUp => (-height / 3.0, 0.1 * height),
            ChangeKind.TieAlong => (own - (TieReach * length), 0.5 * length),
            _ => (Smallest * own, Largest * own),
        };
        return from < to ? new(kind, Math.Min(from, own), Math.Max(to, own)) : throw new ArgumentException($"the lure leaves no room for an axis \"{name}\"", nameof(lure));
    }

    /// <summary>Where a lure is on it.</summary>
    /// <param name="lure">Lure.</param>
    public double Own(LureSpec lure) => Own(Kind, lure);

    /// <summary>Values, rising.</summary>
    public double[] Values() => [.. Enumerable.Range(0, Count).Select(i => From + ((To - From) * i / (Count - 1)))];

    /// <summary>The lure with another value.</summary>
    /// <param name="lure">Lure; with its own hooks.</param>
    /// <param name="value">Value.</param>
    /// <param name="task">Map: sizes of hooks, what stays, how the weight is held.</param>
    /// <exception cref="ArgumentException">There is nothing of the kind on the lure.</exception>
    internal LureSpec With(LureSpec lure, double value, MapTask task)
    {
        double own = Own(lure), amount = Kind is ChangeKind.Length or ChangeKind.Section ? (value / own) - 1.0 : value - own;
        return new DesignChange(Kind, amount).Of(lure, task.Sizes, task.Height, task.Keeps == KeptMass.Total)
            ?? throw new ArgumentException($"the lure cannot be changed along the axis \"{Name}\"", nameof(lure));
    }

    /// <summary>Throws <see cref="ArgumentException"/> when a number makes no sense.</summary>
    internal void Check()
    {
        _ = NameOf(Kind);
        ArgumentOutOfRangeException.ThrowIfLessThan(Count, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Count, MostCount);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(To, From);
    }

    private static double Own(ChangeKind kind, LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        BallastSpec weight = BallastSlot.Of(lure).Weight;
        return kind switch
        {
            ChangeKind.BallastAlong => weight.XM,
            ChangeKind.BallastUp => weight.ZM,
            ChangeKind.BallastMass => weight.MassKg,
            ChangeKind.TieUp => lure.TieZM,
            ChangeKind.TieAlong => lure.TieXM,
            ChangeKind.Length => lure.LengthM,
            ChangeKind.Section => lure.DiameterM,
            _ => 0.0,
        };
    }

    // Every size of the table that all hooks can go to together.
    private static MapAxis Hooks(HookSizes sizes)
    {
        if (sizes.Hooks.Count == 0)
        {
            throw new ArgumentException("no hook of the lure is given by its size (size in lure.hooks), so there are none to step", nameof(sizes));
        }

        int smaller = sizes.Hooks.Min(h => h.Row), larger = sizes.Hooks.Min(h => HookSizes.Count - 1 - h.Row);
        return smaller + larger > 0
            ? new(ChangeKind.HookSize, -smaller, larger, smaller + larger + 1)
            : throw new ArgumentException("its hooks are of the smallest and the largest size, so there is none to step to", nameof(sizes));
    }
}
