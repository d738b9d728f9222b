using LureSim.Scenarios.Parts;

namespace LureSim.Reports.Start;

/// <summary>All that <c>list</c> can show.</summary>
public static class NameLists
{
    /// <summary>In the order of help.</summary>
    public static IReadOnlyList<NameList> All { get; } =
    [
        .. PartLibrary.Folders.Select(f => new NameList(f.Name, f.Meaning, Typed(f.Name), () => [PartTables.Of(f), .. Words(f.Name)])),
        new("styles", "how a cast is made: style, effort, skill", "luresim start --style \"one-handed beginner\"", () => [WordTables.Styles(), WordTables.Efforts(), WordTables.Skills()]),
        new("water", "fresh or sea, temperature", "luresim start --water \"sea 18 C\"", () => [WordTables.Water()]),
        new("cover", "plants where you fish", "luresim start hollow --cover mat", () => [WordTables.Cover()]),
    ];

    private static string Typed(string folder) => folder switch
    {
        "lures" => "luresim start walker --mass \"1/2 oz\"",
        "rods" => "luresim start --rod \"7 ft medium-heavy fast\"",
        "lines" => "luresim start --line \"30 lb braid\"",
        "leaders" => "luresim start --leader \"15 in of 20 lb nylon\"",
        "reels" => "luresim start --reel \"8.1:1\"",
        _ => "luresim start --height kayak",
    };

    private static ListTable[] Words(string folder) => folder == "rods" ? [WordTables.Powers(), WordTables.Actions()] : [];
}
