using LureSim.Model.Margin;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Reports.Tests.Support;

/// <summary>Margins, maps and changes drawn by hand.</summary>
internal static class MadeUpMargin
{
    /// <summary>A pull that turns the lure from 45 degrees to 40 past the line, or leaves it 20 short of it.</summary>
    public static MarginResult Result(bool reaches = true)
    {
        double[] t = [.. Enumerable.Range(0, 101).Select(i => 0.01 * i)];
        double turn = reaches ? 85.0 : 25.0;
        double[] heading = [.. t.Select(s => 45.0 - (turn * (1.0 - Math.Exp(-5.0 * s))))];
        var pull = new PullResponse(
            turn, turn - 45.0, reaches ? 0.15 : null, 0.06, 0.09, 35.0, -0.004, [.. t], [.. heading],
            [.. t.Select(s => 0.09 * (1.0 - Math.Exp(-3.0 * s)))], [.. t.Select(s => -0.06 * s * s)]);
        return new(MadeUpDesign.Cigar, new MarginTask(), 0.05, new TowBalance(0.03, 0.004, 0.08, [new TowMode(1.2, 0.0), new TowMode(-3.0, 9.0)]), 1.1, pull);
    }

    private static readonly HookSizes Sizes = HookSizes.Of(ScenarioSource.FromText("""
        [rod]
        length = "7 ft"
        power = "medium"
        [line]
        material = "braid"
        label = "30 lb"
        [lure]
        shape = "cigar"
        length = "115 mm"
        diameter = "21 mm"
        mass = "18 g"
        ballast = [{ mass = "2.5 g", x = "-12 mm", z = "-6 mm" }]
        hooks = [{ size = "1/0", x = "28 mm", z = "-10 mm" }, { size = "no. 2", x = "-55 mm", z = "0 mm" }]
        """).Resolve());

    /// <summary>A map of place and another axis, or of two others, with every kind of cell; walks at every third.</summary>
    public static DesignMap Map(ChangeKind rows = ChangeKind.BallastMass, bool windows = true, ChangeKind columns = ChangeKind.BallastAlong)
    {
        var task = new MapTask(Axis(columns, 13), Axis(rows, 11), Sizes);
        int across = task.Columns.Count, up = task.Rows.Count;
        MapCell[] cells = [.. from r in Enumerable.Range(0, up) from c in Enumerable.Range(0, across) select Cell(r, c)];
        WindowCell[] tried =
        [
            .. from r in Enumerable.Range(0, up).Where(r => r % 3 == 0) from c in Enumerable.Range(0, across).Where(c => c % 3 == 0)
               select new WindowCell(c, r, 0.8, 1.6, 0.1, [.. Enumerable.Range(0, 4).Select(k => (WalkPattern?)(k < (r + c) / 3 % 5 ? WalkPattern.Alternating : WalkPattern.Tracking))], Cell(r, c).Reason),
        ];
        return new(MadeUpDesign.Cigar, task, new MarginTask(), task.Columns.Values(), task.Rows.Values(), cells, windows ? new(3, 3, [0.8, 1.2, 1.6, 2.0], tried) : null);

        static MapAxis Axis(ChangeKind kind, int count)
        {
            var axis = MapAxis.Of(kind, MadeUpDesign.Cigar, Sizes);
            return kind switch
            {
                ChangeKind.HookSize => axis,
                ChangeKind.BallastAlong => new(kind, -0.035, 0.015, count),
                ChangeKind.BallastMass => new(kind, 0.001, 0.006, count),
                ChangeKind.BallastUp => new(kind, -0.009, 0.003, count),
                _ => axis with { Count = count },
            };
        }

        static MapCell Cell(int r, int c) => r > 8 && c > 10 ? None(FloatWord.Sinks) : r > 8 && c < 2 ? None(FloatWord.LiesOver) : r == 0 && c == 12 ? None(FloatWord.Refused)
            : new(FloatWord.Floats, 0.5 - (0.04 * c) + (0.02 * r), 0.004, 0.002, 0.5, 1.2 - (0.07 * c) + (0.02 * r), (0.07 * c) - (0.02 * r) - 0.45, null);

        static MapCell None(FloatWord word) => new(word, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, "made up");
    }

    /// <summary>The lure as it is: side force under critical.</summary>
    public static DesignPoint Own { get; } = Point(1.1);

    /// <summary>Changes either way, the largest first; one that has no margin.</summary>
    public static IReadOnlyList<RankedChange> Changes { get; } =
    [
        new(new(ChangeKind.NoRearHook, 0.0), Point(1.5), -0.4), new(new(ChangeKind.BallastAlong, -0.005), Point(0.7), 0.4), new(new(ChangeKind.HookSize, 1.0), Point(0.9), 0.2),
        new(new(ChangeKind.TieUp, -0.002), Point(1.15), -0.05), new(new(ChangeKind.BodyMass, 0.0005), new(MadeUpDesign.Cigar, null, null, null, null, FloatWord.Sinks, "made up"), null),
    ];

    /// <summary>A change by its kind.</summary>
    public static string Name(DesignChange change) => $"{change.Kind} {change.Amount}";

    private static DesignPoint Point(double critical) =>
        new(MadeUpDesign.Cigar, null, Result().Tow, critical, Result() with { CriticalShedding = critical }, FloatWord.Floats);
}
