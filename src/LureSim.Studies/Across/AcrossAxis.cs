namespace LureSim.Studies.Across;

/// <summary>One thing that differs between set-ups.</summary>
/// <param name="Name">Key as in files.</param>
/// <param name="Title">What it is, with its unit, for axes.</param>
/// <param name="Unit">Unit of its numbers; empty for words.</param>
/// <param name="IsNumeric">Whether its values can be plotted.</param>
public sealed record AcrossKey(string Name, string Title, string Unit, bool IsNumeric);

/// <summary>One value of one key.</summary>
/// <param name="Label">As people read it.</param>
/// <param name="Number">Number in the key's unit; NaN for words.</param>
public sealed record AcrossValue(string Label, double Number);

/// <summary>One value with the overrides that set it.</summary>
/// <param name="Shown">Value as shown.</param>
/// <param name="Overrides">Texts <c>key=value</c>.</param>
public sealed record AcrossPick(AcrossValue Shown, IReadOnlyList<string> Overrides);

/// <summary>One <c>--across</c>: what differs, and the overrides that set each value.</summary>
/// <param name="Key">What differs.</param>
/// <param name="Values">Values with their overrides.</param>
/// <param name="Law">What else goes with the key, or null.</param>
public sealed record AcrossAxis(AcrossKey Key, IReadOnlyList<AcrossPick> Values, string? Law = null)
{
    /// <summary>What the scenario holds by itself. Guesses among the keys are held at their values, as those of the list are.</summary>
    public AcrossPick Own { get; init; } = new(new("as in the file", double.NaN), []);

    /// <summary>True for rods of several lengths, whose mass and load go with the length (<see cref="RodLadder"/>).</summary>
    public bool IsLadder => Law is not null;

    /// <summary>Every combination of axes, a value of each; the last changes fastest.</summary>
    /// <param name="axes">Axes.</param>
    public static IEnumerable<IReadOnlyList<AcrossPick>> Picks(IReadOnlyList<AcrossAxis> axes)
    {
        IEnumerable<IReadOnlyList<AcrossPick>> all = [[]];
        foreach (AcrossAxis axis in axes)
        {
            all = all.SelectMany(a => axis.Values.Select(v => (IReadOnlyList<AcrossPick>)[.. a, v]));
        }

        return all;
    }

    /// <summary>Every combination of axes, the overrides of all joined.</summary>
    /// <param name="axes">Axes.</param>
    public static IEnumerable<(IReadOnlyList<AcrossValue> Values, IReadOnlyList<string> Overrides)> Combine(IReadOnlyList<AcrossAxis> axes) =>
        Picks(axes).Select(p => ((IReadOnlyList<AcrossValue>)[.. p.Select(v => v.Shown)], (IReadOnlyList<string>)[.. p.SelectMany(v => v.Overrides)]));
}
