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
        IReadOnlyList<string> named = options.Files(parsed);
        string folder = named.Count == 0 ? "." : Folder(named);
        (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(options.Request(parsed, folder), folder);
        if (plan is null)
        {
            return Refuse(terminal, faults);
        }

        string file = named.Count == 0 ? plan.FileName : named[0];
        if (File.Exists(file) && !options.MayReplace(parsed))
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

    // The folder of the one file that was named, found before anything is computed.
    private static string Folder(IReadOnlyList<string> named)
    {
        string file = named[0];
        if (named.Count > 1)
        {
            throw new OutputException($"two files are named, '{file}' and '{named[1]}'; one scenario goes into one file");
        }

        if (string.IsNullOrWhiteSpace(file) || file.Contains('\0', StringComparison.Ordinal) || Directory.Exists(file))
        {
            throw new OutputException($"'{file}' cannot be a file's name, or is a folder; a name is due, for example --out my-lure.toml");
        }

        string folder = Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";
        return Directory.Exists(folder) ? folder : throw new OutputException($"'{file}': there is no folder '{folder}'; make it first, or choose another --out");
    }

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
