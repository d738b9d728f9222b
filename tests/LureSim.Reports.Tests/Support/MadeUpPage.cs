using System.Runtime.CompilerServices;
using LureSim.Model;
using LureSim.Model.Margin;
using LureSim.Model.Retrieve;
using LureSim.Studies.Design;
using LureSim.Studies.Page;
using LureSim.Wire;

namespace LureSim.Reports.Tests.Support;

/// <summary>Pages with a short run of a shipped scenario, without other tackle, and with made-up rhythms.</summary>
internal static class MadeUpPage
{
    public static string[] Shipped { get; } = [.. Directory.GetFiles(Folder(), "*.toml").Order(StringComparer.Ordinal)];

    public static PageFile File(string name, params string[] overrides) => new(Path.Combine(Folder(), name + ".toml"), overrides);

    public static PageResult Result(params PageFile[] files) => new([.. files.Select((f, i) => Case(f, i, Run(f, i)))], [], HasRhythms: true);

    public static PageCase Case(PageFile file, int index, PageRun own) => new()
    {
        File = file,
        Own = own with { File = index },
        SettlesOtherwise = null,
        Rhythms = index == 0 ? MadeUpCadence.Window(0.9, 2.8) : null,
        Cast = null,
        CastFault = "none was made",
        Strike = index == 0 ? MadeUpStrike.Report() : null,
        StrikeFault = index == 0 ? null : "none was made",
        Design = DesignStudy.Afloat(file.Here, new MarginTask(), CancellationToken.None),
        Changes = [],
        Guesses = [.. file.Own!.Guesses],
    };

    public static PageRun Run(PageFile file, int index = 0)
    {
        RetrieveTask task = file.Here.Retrieve! with { DurationS = 4.0 };
        var line = new LineKeeper(task.Solver.OutputStepS);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(file.Here.Setup!, task, default, line.See);
        return new(index == 0 ? "own" : $"own{index + 1}", "as in the file", index, [], outcome.Result, Film.Of(outcome.Result!, line), outcome.Failure?.Reason);
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "scenarios"));
}
