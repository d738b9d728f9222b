using System.Globalization;
using CsCheck;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Validation.Invariants;

/// <summary>A shipped scenario with one to eight of its keys set anywhere in their allowed ranges.</summary>
internal sealed record RandomScenario(string File, string[] Overrides)
{
    private static readonly string[] Kept = ["solver.step", "solver.output_step", "retrieve.duration", "retrieve.warm_up", "solver.nodes"];

    private static readonly KeySpec[] Keys =
    [
        .. ScenarioSchema.Keys.Where(k => (k.ReadBy & Activities.Retrieve) != 0 && !Kept.Contains(k.Path) && (IsRange(k) || k.Kind is QuantityKind.Choice or QuantityKind.Flag)),
    ];

    private static readonly string[] CastTables = ["air", "angler", "rod", "reel", "line", "lure", "cast", "hands"];

    private static readonly KeySpec[] CastKeys =
    [
        .. ScenarioSchema.Keys.Where(k => CastTables.Contains(k.Table) && k.Path is not ("cast.swing_step" or "cast.flight_step")
            && (IsRange(k) || k.Kind is QuantityKind.Choice)),
    ];

    private static readonly KeySpec[] PoolTestKeys =
    [
        .. ScenarioSchema.Keys.Where(k => k.Table is "lure" or "water" or "pool" && k.Path is not ("pool.step" or "pool.tow_distance")
            && (IsRange(k) || k.Kind is QuantityKind.Choice)),
    ];

    private static readonly ScenarioSource[] Sources = [.. Shipped.Files.Select(f => ScenarioSource.Load(f))];

    private static readonly Gen<string> AnyFile = Gen.Int[0, Shipped.Files.Length - 1].Select(i => Shipped.Files[i]);

    /// <summary>Runs of two seconds.</summary>
    public static Gen<RandomScenario> Any { get; } =
        Gen.Select(AnyFile, Gen.Int[2, 60], Attitude, Changes(Keys), (file, nodes, attitude, changes) => new RandomScenario(
            file, ["retrieve.duration=2 s", FormattableString.Invariant($"solver.nodes={nodes}"), .. attitude, .. changes]));

    /// <summary>Casts: the same with the keys that a cast reads.</summary>
    public static Gen<RandomScenario> AnyCast { get; } =
        Gen.Select(AnyFile, Changes(CastKeys), (file, changes) => new RandomScenario(file, changes));

    /// <summary>Pool tests: the same with the keys that a pool test reads, over three metres at three speeds.</summary>
    public static Gen<RandomScenario> AnyPool { get; } = Gen.Select(AnyFile, Attitude, Changes(PoolTestKeys), (file, attitude, changes) => new RandomScenario(
        file, ["pool.tow_distance=3 m", "pool.speeds=0.2, 0.6, 2 m/s", .. attitude, .. changes]));

    /// <summary>Draws until as many as an environment variable says, or usually, were run.</summary>
    public static void Sample(Gen<RandomScenario> gen, string variable, int usual, Func<int> run, Action<RandomScenario> check)
    {
        int wanted = int.Parse(Environment.GetEnvironmentVariable(variable) ?? usual.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        while (run() < wanted)
        {
            gen.Sample(check, iter: Math.Max(20, wanted - run()), threads: 2);
        }
    }

    public ScenarioResult Resolve() => Sources[Array.IndexOf(Shipped.Files, File)].Resolve(Overrides);

    public override string ToString() =>
        $"{Path.GetFileName(File)} {string.Join(' ', Overrides.Select(o => $"--set \"{o}\""))}";

    // Half of the lures get their weight somewhere else: they rest at any trim, on their side, on their back, or sink and are refused.
    private static Gen<string[]> Attitude =>
        Gen.Select(Gen.Bool, Gen.Double[-50.0, 40.0], Gen.Double[-8.0, 8.0], Gen.Double[0.5, 8.0], (moved, x, z, grams) => moved
            ?
            [
                FormattableString.Invariant($"lure.ballast[1].x={x:F1} mm"), FormattableString.Invariant($"lure.ballast[1].z={z:F1} mm"),
                FormattableString.Invariant($"lure.ballast[1].mass={grams:F2} g"),
            ]
            : Array.Empty<string>());

    private static Gen<string[]> Changes(KeySpec[] keys) =>
        Gen.Select(Gen.Int[0, keys.Length - 1], Gen.Double.Unit).Array[1, 8]
            .Select(changes => changes.DistinctBy(c => c.Item1).Select(c => Set(keys[c.Item1], c.Item2)).ToArray());

    private static bool IsRange(KeySpec key) =>
        double.IsFinite(key.Low) && double.IsFinite(key.High) && key.Kind is not (QuantityKind.List or QuantityKind.Text or QuantityKind.LineNumber);

    private static string Set(KeySpec key, double share)
    {
        if (key.Kind == QuantityKind.Flag)
        {
            return $"{key.Path}={(share < 0.5 ? "true" : "false")}";
        }

        if (key.Kind == QuantityKind.Choice)
        {
            return $"{key.Path}={key.Choices[(int)(share * key.Choices.Count)].Name}";
        }

        // Over several decades evenly in the logarithm.
        double value = key.Low > 0.0 && key.High > 20.0 * key.Low
            ? key.Low * Math.Pow(key.High / key.Low, share)
            : key.Low + (share * (key.High - key.Low));
        value = key.Kind == QuantityKind.WholeNumber ? Math.Round(value) : value;
        return $"{key.Path}={Quantity.Format(value, key.Kind)}";
    }
}
