using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Measured;

/// <summary>What a line or a column of a bend test is about.</summary>
internal enum BendWord
{
    /// <summary>Name of the rod.</summary>
    Rod,

    /// <summary>Overall length.</summary>
    Length,

    /// <summary>Butt end to where it is held.</summary>
    Clamped,

    /// <summary>Mass without reel.</summary>
    Mass,

    /// <summary>Butt end to the balance point.</summary>
    Balance,

    /// <summary>Swings in ten seconds, and the weight at the tip.</summary>
    Bounces,

    /// <summary>Swings until it swings half as wide.</summary>
    Half,

    /// <summary>Where drops count from.</summary>
    From,

    /// <summary>How well a drop is read.</summary>
    DropError,

    /// <summary>How true the weights are.</summary>
    WeightError,

    /// <summary>How well an angle is read.</summary>
    AngleError,

    /// <summary>Weight at the tip.</summary>
    Weight,

    /// <summary>Drop of the tip.</summary>
    Drop,

    /// <summary>Angle of the tip.</summary>
    Angle,

    /// <summary>Drop of a mark half way along the free length.</summary>
    Middle,
}

/// <summary>Words of a bend test as people write them.</summary>
internal static class BendWords
{
    private static readonly (BendWord Word, string[] Names)[] All =
    [
        (BendWord.Rod, ["rod", "name", "rod name"]),
        (BendWord.Length, ["length", "rod length", "overall length"]),
        (BendWord.Clamped, ["clamped", "clamp", "clamped length", "held", "grip", "grip length"]),
        (BendWord.Mass, ["mass", "rod mass", "rod weight", "weight of rod", "weight of the rod"]),
        (BendWord.Balance, ["balance", "balance point", "balances at"]),
        (BendWord.Bounces, ["bounces", "bounce", "bounces in 10 s", "swings", "swings in 10 s"]),
        (BendWord.Half, ["half after", "bounces to half", "swings to half"]),
        (BendWord.From, ["from", "drop from", "drops from"]),
        (BendWord.DropError, ["drop error"]),
        (BendWord.WeightError, ["weight error"]),
        (BendWord.AngleError, ["angle error"]),
        (BendWord.Weight, ["weight", "load", "tip weight", "weight at the tip"]),
        (BendWord.Drop, ["drop", "tip drop", "deflection"]),
        (BendWord.Angle, ["angle", "tip angle"]),
        (BendWord.Middle, ["middle", "middle drop", "half way"]),
    ];

    private static readonly Dictionary<string, BendWord> ByName = All.SelectMany(a => a.Names, (a, n) => (n, a.Word)).ToDictionary(p => p.n, p => p.Word);

    /// <summary>The word of a cell, with a unit behind it (<c>drop cm</c>, <c>weight (g)</c>, <c>drop_in</c>); null where it is none.</summary>
    public static BendWord? Find(string cell, out string unit) => CellWord.Find(ByName, cell, out unit);

    /// <summary>The usual name of a word.</summary>
    public static string Name(BendWord word) => All[(int)word].Names[0];

    /// <summary>What may stand at the start of a line.</summary>
    public static string Known => string.Join(", ", All.Select(a => a.Names[0]));

    /// <summary>The nearest known name, or null.</summary>
    public static string? NearestTo(string cell) => Nearest.Of(cell.ToLowerInvariant(), ByName.Keys);
}
