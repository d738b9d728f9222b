using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Slides;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Strike;
using LureSim.Studies.Trim;

namespace LureSim.Cli.Slides;

/// <summary><c>slides</c>: every picture of a scenario for a talk, with notes.</summary>
internal static class SlidesCommand
{
    private const string Name = "slides";
    private const Activities Asked = Activities.Retrieve | Activities.Cast | Activities.Rest | Activities.Strike;

    /// <summary>The capability: a command without a summary of its own.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var files = new Argument<string[]>("files") { Description = "Scenario files (TOML), a talk each.", Arity = ArgumentArity.OneOrMore };
        var quick = new Option<bool>("--quick") { Description = "Leave out which rhythms walk, which takes most of the time." };
        var command = new Command(Name, "Every picture of a scenario as slides, 16:9, to be read from the back of a room, with notes for the speaker.") { files, quick };
        options.AddTo(command, hasFile: false);
        command.SetAction(parsed =>
        {
            string[] given = parsed.GetRequiredValue(files);
            CommonValues[] values = [.. given.Select(f => Of(options.Read(parsed, Name, f), given.Length > 1))];
            ScenarioResult[] scenarios = [.. values.Select(v => ScenarioSource.Read(v.File, v.Overrides, Asked))];
            terminal.Tell(scenarios.SelectMany(s => s.Errors).Concat(SameName(values)));
            return scenarios.All(s => s.IsValid) && !SameName(values).Any()
                ? Run(values, scenarios, parsed.GetValue(quick), terminal, stop)
                : ExitCode.BadInput;
        });
        return command;
    }

    // With --out, several talks have a folder each inside it.
    private static CommonValues Of(CommonValues values, bool several) => several && values.Folder is string folder && folder != values.OwnFolder
        ? values with { Folder = Path.Combine(folder, Path.GetFileNameWithoutExtension(values.File)) }
        : values;

    private static IEnumerable<ScenarioFault> SameName(IEnumerable<CommonValues> values) => values
        .GroupBy(v => Path.GetFileNameWithoutExtension(v.File)).Where(g => g.Count() > 1)
        .Select(g => new ScenarioFault(g.Last().File, "", $"another file is called {g.Key} too, and both would write to one folder: rename one"));

    private static int Run(CommonValues[] values, ScenarioResult[] scenarios, bool quick, Terminal terminal, CancellationToken stop)
    {
        var decks = new List<SlideDeck>();
        foreach ((CommonValues v, ScenarioResult scenario) in values.Zip(scenarios))
        {
            using OutputFolder? folder = v.Open(stop);
            SlideDeck deck = Build(v, scenario, quick, terminal, stop);
            decks.Add(deck);
            if (folder is not null)
            {
                SlideFiles.Write(folder, deck, v.Plots);
            }

            if (!v.Json)
            {
                terminal.Print(v, _ => { }, () => SlideFiles.Text(deck));
            }
        }

        if (values[0].Json)
        {
            terminal.Print(values[0], stream => SlideFiles.WriteJson(stream, decks), () => "");
        }

        return ExitCode.Done;
    }

    private static SlideDeck Build(CommonValues values, ScenarioResult scenario, bool quick, Terminal terminal, CancellationToken stop)
    {
        RetrieveTask task = scenario.Retrieve!;
        RetrieveResult result;
        using (var progress = new ProgressLine("retrieve", terminal, values.Quiet))
        {
            result = RetrieveRun.Run(scenario.Setup!, task, new(progress.Report, stop)).Demand();
        }

        CadenceResult? rhythms = null;
        if (!quick && !task.IsTow)
        {
            using var progress = new ProgressLine("cadence", terminal, values.Quiet);
            rhythms = CadenceStudy.Run(scenario.Setup!, task, new CadencePlan(), SustainedTorque.Of(scenario), null, new(progress.Report), stop).Demand();
        }

        var talk = new SlideTalk(Source(values), values.ShownFor(scenario));
        talk.AddRetrieve(result, rhythms);
        talk.AddTrim(scenario.Setup!.Title, TrimSource.AtRest(scenario, stop));
        talk.AddCast(CastStudy.Run(scenario.Setup!, scenario.Cast!, 0, new(null, stop)).Demand());
        AddStrike(talk, values, scenario, terminal, stop);
        return new(scenario.Setup!.Title, values.File, talk.Slides, scenario.Effective().Guesses.Count);
    }

    // A talk goes on without: a rod tip higher than the strike is far.
    private static void AddStrike(SlideTalk talk, CommonValues values, ScenarioResult scenario, Terminal terminal, CancellationToken stop)
    {
        try
        {
            using var progress = new ProgressLine("strike", terminal, values.Quiet);
            talk.AddStrike(StrikeStudy.Run(scenario, 0, progress.Report, stop).Demand());
        }
        catch (ArgumentException e)
        {
            terminal.Error.WriteLine($"{values.File}: no slides of a strike: {e.Message.Split('\n')[0]}");
        }
    }

    // As one would type it.
    private static string Source(CommonValues values) => string.Join(' ', [Word(values.File), .. values.Overrides.Select(o => $"--set {Word(o)}")]);

    private static string Word(string text) => text.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' or '/' or '\\' or ':' or '=') ? text : $"'{text.Replace("'", @"'\''", StringComparison.Ordinal)}'";
}
