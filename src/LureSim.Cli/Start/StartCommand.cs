using System.CommandLine;
using System.Text;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Start;
using LureSim.Scenarios;
using LureSim.Scenarios.Starting;
using LureSim.Studies.Start;

namespace LureSim.Cli.Start;

/// <summary><c>start</c>: a scenario from a few words.</summary>
internal static class StartCommand
{
    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new StartOptions();
        var command = new Command("start", "Write a scenario from a few words: kind of lure, mass, rod, line, leader. Guesses the rest and says so.");
        options.AddTo(command);
        command.SetAction(parsed => Run(options, parsed, terminal, stop));
        return command;
    }

    private static int Run(StartOptions options, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        string? named = options.FileOf(parsed);
        string folder = Folder(named ?? ".toml");
        (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(options.Request(parsed, folder), folder);
        string file = named ?? $"{plan?.Kind}.toml";
        if (plan is null)
        {
            return Refuse(terminal, faults);
        }

        if (Path.Exists(file) && !options.MayReplace(parsed))
        {
            throw new OutputException($"'{file}' is there already: --force replaces it, --out NAME.toml writes another");
        }

        (StartResult? start, faults) = StartStudy.Make(plan, file, folder, stop);
        if (start is null)
        {
            return Refuse(terminal, faults);
        }

        NewFile.Write(file, start.Toml, options.MayReplace(parsed));
        Print(options, parsed, terminal, file, start);
        return ExitCode.Done;
    }

    private static string Folder(string file) => Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";

    private static int Refuse(Terminal terminal, IReadOnlyList<ScenarioFault> faults)
    {
        terminal.Tell(faults);
        return ExitCode.BadInput;
    }

    private static void Print(StartOptions options, ParseResult parsed, Terminal terminal, string file, StartResult start)
    {
        if (options.IsJson(parsed))
        {
            using var stream = new MemoryStream();
            StartJson.Write(stream, file, start);
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!options.IsQuiet(parsed))
        {
            terminal.Out.Write(StartText.Build(file, start));
        }
    }
}
