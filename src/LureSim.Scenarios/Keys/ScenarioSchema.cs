namespace LureSim.Scenarios.Keys;

/// <summary>Every key of a scenario file. A new table is one more file of rows and one line here.</summary>
public static class ScenarioSchema
{
    /// <summary>The key that names a file to start from; allowed at the top and in every table.</summary>
    public const string BaseName = "base";

    private static readonly Dictionary<string, KeySpec> ByPath = [];
    private static readonly HashSet<string> TableNames = [];

    static ScenarioSchema()
    {
        KeySpec[][] tables =
        [
            TopKeys.All, WaterKeys.All, AirKeys.All, AnglerKeys.All, RodKeys.All, ReelKeys.All, LineKeys.All, LeaderKeys.All,
            LureKeys.All, RetrieveKeys.All, CastKeys.All, HandsKeys.All, PoolKeys.All, StrikeKeys.All, FishKeys.All, CoverKeys.All, CrawlKeys.All, SolverKeys.All,
        ];
        Keys = [.. tables.SelectMany(t => t)];
        Number(Keys);
        foreach (KeySpec key in Keys)
        {
            ByPath.Add(key.Path, key);
            TableNames.Add(key.Table);
            Number(key.Items);
        }

        TableNames.Remove("");
    }

    /// <summary>All keys, in the order of documents and effective files.</summary>
    public static IReadOnlyList<KeySpec> Keys { get; }

    /// <summary>Names of the tables.</summary>
    public static IReadOnlyCollection<string> Tables => TableNames;

    /// <summary>The key of a path, or null.</summary>
    /// <param name="path">Full key.</param>
    public static KeySpec? Find(string path) => ByPath.GetValueOrDefault(path);

    /// <summary>Whether a key may also be a table (<c>lure.tie</c> and <c>lure.tie.x</c>).</summary>
    internal static bool HasKeysBelow(string path) => path == LureKeys.Tie.Path;

    private static void Number(IReadOnlyList<KeySpec> keys)
    {
        for (int i = 0; i < keys.Count; i++)
        {
            keys[i].Index = i;
        }
    }
}
