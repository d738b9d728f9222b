using LureSim.Model.Pool;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>How a word is written and what it may say.</summary>
/// <param name="Word">Word.</param>
/// <param name="Kind">Kind of its values.</param>
/// <param name="Low">Lowest value, SI.</param>
/// <param name="High">Highest value, SI.</param>
/// <param name="Allowed">The same in words.</param>
/// <param name="Bare">Unit of a bare number, or nothing.</param>
/// <param name="Tests">Tests in which it stands as a value of rows; empty where it is a word about the file or the test.</param>
/// <param name="Names">Names, the usual one first.</param>
internal sealed record FitWordRow(FitWord Word, QuantityKind Kind, double Low, double High, string Allowed, string Bare, FitKind[] Tests, params string[] Names);

/// <summary>Words of a file of measurements as people write them.</summary>
internal static class FitWords
{
    private const double Degree = Math.PI / 180.0, FarM = 200.0, LongS = 100.0;
    private const string Far = "-200 to 200 m";
    private static readonly FitKind[] Filmed = [FitKind.Track, FitKind.Walk];

    private static readonly FitWordRow[] All =
    [
        About(FitWord.Scenario, "scenario"),
        About(FitWord.Title, "title", "lure", "name"),
        About(FitWord.Test, "test"),
        About(FitWord.Hooks, "hooks"),
        About(FitWord.Run, "run"),
        new(FitWord.AngleError, QuantityKind.Angle, 0.1 * Degree, 45.0 * Degree, "0.1 to 45 deg", "deg", [], "angle error"),
        new(FitWord.PlaceError, QuantityKind.Length, 1e-4, 0.2, "0.1 mm to 20 cm", "", [], "place error", "way error", "height error"),
        new(FitWord.DriftError, QuantityKind.Angle, 0.1 * Degree, 30.0 * Degree, "0.1 to 30 deg", "deg", [], "drift error"),
        new(FitWord.PeriodError, QuantityKind.Ratio, 0.001, 0.5, "0.1 to 50 %", "", [], "period error"),
        new(FitWord.LossError, QuantityKind.Ratio, 0.001, 0.5, "0.1 to 50 %", "", [], "loss error"),
        new(FitWord.Mass, QuantityKind.Mass, 1e-4, 1.0, "0.1 g to 1 kg", "", [], "mass", "weight", "mass with hooks"),
        new(FitWord.Line, QuantityKind.Length, PoolKeys.TowLine.Low, PoolKeys.TowLine.High, "0.3 to 30 m", "", [], "line", "line length", "tow line"),
        new(FitWord.Hand, QuantityKind.Length, PoolKeys.HandHeight.Low, PoolKeys.HandHeight.High, "0 to 5 m", "", [], "hand", "hand height"),
        new(FitWord.TowDistance, QuantityKind.Length, PoolKeys.TowDistance.Low, PoolKeys.TowDistance.High, "1 to 100 m", "", [], "tow distance"),
        new(FitWord.Speed, QuantityKind.Speed, PoolTask.SlowestTowMS, PoolTask.FastestTowMS, "0.05 to 2 m/s", "", [FitKind.Tow, FitKind.Push], "speed"),
        new(FitWord.Sheer, QuantityKind.Angle, -180.0 * Degree, 180.0 * Degree, "-180 to 180 deg, or the word straight", "deg", [FitKind.Tow], "sheer", "sheer angle"),
        new(FitWord.Swing, QuantityKind.Angle, 0.0, 360.0 * Degree, "0 to 360 deg", "deg", [FitKind.Tow], "swing"),
        new(FitWord.Drift, QuantityKind.Angle, -45.0 * Degree, 45.0 * Degree, "-45 to 45 deg", "deg", [FitKind.Push], "drift"),
        new(FitWord.Way, QuantityKind.Length, 0.005, 20.0, "5 mm to 20 m, or the word never", "", [FitKind.Push], "way", "way until turned", "turned after"),
        new(FitWord.Time, QuantityKind.Time, 0.0, LongS, "0 to 100 s", "s", [FitKind.Coast, FitKind.Track, FitKind.Walk], "time", "t"),
        new(FitWord.Distance, QuantityKind.Length, -FarM, FarM, Far, "", [FitKind.Coast, FitKind.Walk], "distance", "place"),
        new(FitWord.NoseX, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "nose x"),
        new(FitWord.NoseY, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "nose y"),
        new(FitWord.TailX, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "tail x"),
        new(FitWord.TailY, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "tail y"),
        new(FitWord.MiddleX, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "centre x", "center x", "middle x", "x"),
        new(FitWord.MiddleY, QuantityKind.Length, -FarM, FarM, Far, "", Filmed, "centre y", "center y", "middle y", "y"),
        new(FitWord.Heading, QuantityKind.Angle, -1e4 * Degree, 1e4 * Degree, "-10000 to 10000 deg", "deg", Filmed, "heading"),
        new(FitWord.What, QuantityKind.Choice, 0.0, 2.0, "roll, bob or nod", "", [FitKind.Swing], "what"),
        new(FitWord.Period, QuantityKind.Time, 0.05, 5.0, "0.05 to 5 s", "s", [FitKind.Swing], "period"),
        new(FitWord.Loss, QuantityKind.Ratio, 0.0, 1.0, "0 to 100 %", "", [FitKind.Swing], "loss", "loss per swing", "lost"),
        new(FitWord.Heel, QuantityKind.Angle, PoolKeys.Heel.Low, PoolKeys.Heel.High, "0.6 to 85 deg", "deg", [FitKind.Swing], "heel"),
        new(FitWord.Press, QuantityKind.Length, PoolKeys.Press.Low, PoolKeys.Press.High, "0.1 to 50 mm", "", [FitKind.Swing], "press"),
        new(FitWord.Angle, QuantityKind.Angle, -90.0 * Degree, 90.0 * Degree, "-90 to 90 deg", "deg", [FitKind.Bowl], "angle", "float angle", "trim"),
        new(FitWord.NoseHeight, QuantityKind.Length, -0.3, 0.3, "-30 to 30 cm", "", [FitKind.Bowl], "nose height", "nose over the water"),
        new(FitWord.TailHeight, QuantityKind.Length, -0.3, 0.3, "-30 to 30 cm", "", [FitKind.Bowl], "tail height", "tail over the water"),
        new(FitWord.Draft, QuantityKind.Length, 0.0, 0.2, "0 to 20 cm", "", [FitKind.Bowl], "draft", "draught"),
        new(FitWord.Cadence, QuantityKind.Frequency, RetrieveKeys.Cadence.Low, RetrieveKeys.Cadence.High, "0.3 to 6 twitches a second", "/s", [FitKind.Walk], "cadence", "rhythm", "twitches per second"),
        new(FitWord.Twitches, QuantityKind.Ratio, 1.0, 1000.0, "1 to 1000", "", [FitKind.Walk], "twitches"),
        new(FitWord.Advance, QuantityKind.Length, 0.0, 2.0, "0 to 2 m", "", [FitKind.Walk], "advance", "advance per twitch"),
        new(FitWord.Width, QuantityKind.Length, 0.0, 3.0, "0 to 3 m", "", [FitKind.Walk], "width", "width of the path"),
        new(FitWord.HeadingSwing, QuantityKind.Angle, 0.0, 360.0 * Degree, "0 to 360 deg", "deg", [FitKind.Walk], "heading swing"),
    ];

    private static readonly Dictionary<string, FitWord> ByName = All.SelectMany(a => a.Names, (a, n) => (n, a.Word)).ToDictionary(p => p.n, p => p.Word);

    private static readonly (FitKind Kind, string[] Names, FitWord[] Columns)[] Tests =
    [
        (FitKind.Tow, ["tow", "tows"], [FitWord.Speed, FitWord.Sheer, FitWord.Swing]),
        (FitKind.Push, ["push", "pushes"], [FitWord.Speed, FitWord.Drift, FitWord.Way]),
        (FitKind.Coast, ["coast", "coast-down", "coast down"], [FitWord.Time, FitWord.Distance]),
        (FitKind.Track, ["track", "film"], [FitWord.Time, FitWord.NoseX, FitWord.NoseY, FitWord.TailX, FitWord.TailY]),
        (FitKind.Swing, ["swings", "swing", "roll and bob"], [FitWord.What, FitWord.Period, FitWord.Loss]),
        (FitKind.Bowl, ["float", "bowl"], [FitWord.Angle, FitWord.NoseHeight, FitWord.Draft]),
        (FitKind.Walk, ["walk"], [FitWord.Time, FitWord.NoseX, FitWord.NoseY, FitWord.TailX, FitWord.TailY]),
    ];

    /// <summary>The word of a cell with its unit; null where it is none.</summary>
    public static FitWord? Find(string cell, out string unit) => CellWord.Find(ByName, cell, out unit);

    /// <summary>How a word is written and what it may say.</summary>
    public static FitWordRow Of(FitWord word) => All[(int)word];

    /// <summary>Usual name of a word.</summary>
    public static string Name(FitWord word) => Of(word).Names[0];

    /// <summary>Words that can start a line in a test, or before the first.</summary>
    public static string Known(FitKind? kind) =>
        string.Join(", ", All.Where(a => a.Tests.Length == 0 || (kind is FitKind k && a.Tests.Contains(k))).Select(a => a.Names[0]));

    /// <summary>The nearest known name, or null.</summary>
    public static string? NearestTo(string cell) => Nearest.Of(cell.ToLowerInvariant(), ByName.Keys);

    /// <summary>A test by name; null where there is none.</summary>
    public static FitKind? TestOf(string name) => Array.Find(Tests, t => t.Names.Contains(name.ToLowerInvariant())) is { Names: not null } found ? found.Kind : null;

    /// <summary>Usual name of a test.</summary>
    public static string Name(FitKind kind) => Tests[(int)kind].Names[0];

    /// <summary>All tests.</summary>
    public static string TestNames { get; } = string.Join(", ", Tests.Select(t => t.Names[0]));

    /// <summary>Columns of a test without a header.</summary>
    public static (FitWord Word, string Unit)[] ColumnsOf(FitKind kind) => [.. Tests[(int)kind].Columns.Select(c => (c, ""))];

    private static FitWordRow About(FitWord word, params string[] names) => new(word, QuantityKind.Text, double.NaN, double.NaN, "", "", [], names);
}
