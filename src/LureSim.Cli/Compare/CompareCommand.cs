using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Compare;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Compare;

namespace LureSim.Cli.Compare;

/// <summary><c>compare</c>: two or more set-ups in everything that can be computed, what you will notice, and which to take.</summary>
internal static class CompareCommand
{
    private const string Name = "compare";

    /// <summary>The capability: a command without a summary of its own.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var files = new Argument<string[]>("files") { Description = "Scenario files (TOML): two or more, or one with --with or --rods.", Arity = ArgumentArity.OneOrMore };
        var with = new Option<string[]>("--with")
        {
            Description = "A variant of the one file, for example --with \"rod.power=heavy\" or --with \"rod.length=7 ft; rod.mass=4.5 oz\"; repeatable. It is compared with the file as it is.",
            HelpName = "key=value; key=value",
            DefaultValueFactory = _ => [],
        };
        var rods = new Option<string>("--rods")
        {
            Description = "The one file with rods of these lengths, mass and power going with them, for example --rods \"6 ft 6 in,7 ft,7 ft 4 in\"; a power and an action may follow each.",
            HelpName = "lengths",
            DefaultValueFactory = _ => "",
        };
        var command = new Command(Name, "Compare set-ups in everything that can be computed: what you will notice, what you will not, and which to take.") { files, with, rods };
        options.AddTo(command, hasFile: false);
        command.SetAction(parsed =>
        {
            string[] given = parsed.GetRequiredValue(files);
            CommonValues values = options.Read(parsed, Name, given[0]);
            var faults = new List<ScenarioFault>();
            IReadOnlyList<CompareSetUp> setUps = new SetUpReader(values.Overrides, faults).Read(given, parsed.GetValue(with) ?? [], parsed.GetValue(rods) ?? "");
            terminal.Tell(faults);
            return faults.Count > 0 ? ExitCode.BadInput : Run(values, setUps, terminal, stop);
        });
        return command;
    }

    private static int Run(CommonValues values, IReadOnlyList<CompareSetUp> setUps, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        CompareResult result;
        using (var progress = new ProgressLine(Name, terminal, values.Quiet))
        {
            result = CompareStudy.Run(setUps, new ComparePlan(setUps[0].SetUp.Here.Setup!.Seed), progress.Report, stop);
        }

        RunNotes notes = Notes(setUps) with { Shown = values.ShownFor(setUps[0].SetUp.Here) };
        if (folder is not null)
        {
            CompareFiles.Write(folder, result, notes, values.Plots);
        }

        terminal.Print(values, stream => CompareJson.Write(stream, result, notes), () => CompareText.Build(result, notes));
        return ExitCode.Done;
    }

    // Notes and guesses of any set-up, each once; keys that were varied and enter nothing.
    private static RunNotes Notes(IReadOnlyList<CompareSetUp> setUps)
    {
        IEnumerable<string> idle = VariedKeys.Unread(setUps).Select(k => $"{k.Path} enters nothing that is computed here");
        IEnumerable<string> told = setUps.SelectMany(s => ScenarioFault.Lines(s.SetUp.Here.Notes)).Distinct(StringComparer.Ordinal);
        IEnumerable<string> guesses = setUps.SelectMany(s => s.SetUp.Here.Effective().Guesses.Where(g => Enters(g, s))).Select(g => g.ToString()).Distinct(StringComparer.Ordinal);
        return new([.. idle, .. told], [.. guesses]);
    }

    private static bool Enters(GuessedKey guess, CompareSetUp setUp) => MeasureSets.All.Any(m => m.Reads(guess.Key, setUp.SetUp.Here));
}
