using LureSim.Studies.Across;

namespace LureSim.Studies.Page;

/// <summary>A thing to change with the words and overrides for it.</summary>
/// <param name="Group">What is changed.</param>
/// <param name="Label">To what.</param>
/// <param name="Set">Overrides; none for the set-up as it stands.</param>
internal sealed record Variant(ChangeGroup Group, string Label, IReadOnlyList<string> Set);

/// <summary>The lines, leaders and rods of everyday use that pages compare and their sliders offer.</summary>
internal static class PageVariants
{
    private const double FootM = 0.3048;

    // Everyday lines of surface lures (common practice, no source).
    private static readonly (string Material, string Label)[] Lines =
        [("braid", "20 lb"), ("braid", "30 lb"), ("braid", "50 lb"), ("braid", "65 lb"), ("nylon", "14 lb"), ("fluorocarbon", "14 lb")];

    // Everyday leaders (common practice, no source).
    private static readonly (string Material, string Label, string Length)[] Leaders =
        [("nylon", "20 lb", "15 in"), ("nylon", "20 lb", "2 ft"), ("nylon", "20 lb", "6 ft"), ("fluorocarbon", "20 lb", "15 in"), ("fluorocarbon", "20 lb", "6 ft")];

    private static readonly string[] RodLengths = ["6 ft", "6 ft 6 in", "7 ft", "7 ft 4 in", "8 ft"];

    /// <summary>Main lines.</summary>
    public static IEnumerable<Variant> OfLine() =>
        Lines.Select(l => new Variant(ChangeGroup.Line, $"{OwnTackle.Pounds(l.Label)} {l.Material}", [$"line.material={l.Material}", $"line.label={l.Label}"]));

    /// <summary>Leaders; none comes first.</summary>
    public static IEnumerable<Variant> OfLeader() =>
    [
        new(ChangeGroup.Leader, "no leader", ["leader.material=none"]),
        .. Leaders.Select(l => new Variant(
            ChangeGroup.Leader, $"{l.Length} of {OwnTackle.Pounds(l.Label)} {l.Material}", [$"leader.material={l.Material}", $"leader.label={l.Label}", $"leader.length={l.Length}"])),
    ];

    /// <summary>Rods of other lengths than the file's, mass going with it.</summary>
    /// <param name="file">The file.</param>
    public static IEnumerable<Variant> OfRod(PageFile file)
    {
        double own = file.Here.Setup!.Rod.LengthM;
        return RodLengths.Where(l => Math.Abs((RodLadder.Shown(l).Number * FootM) - own) > 0.5 * 0.0254).Select(l => new Variant(ChangeGroup.Rod, l, RodLadder.Overrides(l, file.Own!)));
    }

    /// <summary>A list with the set-up's own thing in the place of the one that says the same, else first.</summary>
    /// <param name="own">The set-up as it stands.</param>
    /// <param name="others">Others.</param>
    public static IReadOnlyList<Variant> With(Variant own, IEnumerable<Variant> others)
    {
        Variant[] all = [.. others.Select(v => v.Label == own.Label ? own : v)];
        return all.Contains(own) ? all : [own, .. all];
    }

    /// <summary>Where a rod stands in the order of lengths, m.</summary>
    /// <param name="length">Text of its length.</param>
    public static double LengthM(string length) => RodLadder.Shown(length).Number * FootM;
}
