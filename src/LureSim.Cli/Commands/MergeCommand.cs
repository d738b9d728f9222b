using System.CommandLine;
using LureSim.Cli.Sweeps;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Commands;

/// <summary><c>sweep merge</c>: joins the parts of a sweep.</summary>
internal static class MergeCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops it.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var parts = new Argument<string[]>("parts")
        {
            Description = "Journals of the parts, or folders that hold them.",
            Arity = ArgumentArity.OneOrMore,
        };
        var output = new Option<string?>("--out") { Description = "Folder for the table; default the folder of the first part.", HelpName = "dir" };
        var json = new Option<bool>("--json") { Description = "Print the counts as JSON instead of text." };
        var quiet = new Option<bool>("--quiet") { Description = "Print nothing but errors (and the JSON, if asked for)." };
        var plots = new Option<string>("--plots")
        {
            Description = "Kind of pictures, where guesses were sampled: svg, png, both or none.",
            HelpName = "kind",
            DefaultValueFactory = _ => "both",
        };
        var mix = new Option<bool>("--mix-machines") { Description = "Join rows of different kinds of machines, whose last digits may differ." };
        plots.AcceptOnlyFromAmong("svg", "png", "both", "none");
        var command = new Command("merge", "Join the parts of a sweep (luresim sweep merge PART...); gaps, overlaps and strangers are refused.") { parts, output, json, quiet, plots, mix };
        command.SetAction(parsed =>
        {
            Journal[] journals = [.. parsed.GetRequiredValue(parts).SelectMany(Files).Select(Read)];
            MachineMix.Refuse(journals, null, parsed.GetValue(mix), terminal);
            SweepTable table = SweepTable.Join(journals);
            var format = Enum.Parse<PlotFormat>(parsed.GetValue(plots)!, ignoreCase: true);
            string folder = parsed.GetValue(output) ?? (Path.GetDirectoryName(journals[0].Path) is { Length: > 0 } beside ? beside : ".");
            Write(folder, table, format, stop);
            return SweepCommand.Tell(table, folder, parsed.GetValue(json), parsed.GetValue(quiet), terminal);
        });
        return command;
    }

    private static void Write(string path, SweepTable table, PlotFormat plots, CancellationToken stop)
    {
        using OutputFolder folder = new(path, SweepFiles.Kind, stop);
        SweepFiles.Write(folder, table, Capabilities.Summaries.FirstOrDefault(f => f.Name == table.Header.Command)?.Headlines ?? [], plots);
    }

    private static Journal Read(string path)
    {
        Journal journal = Journal.Read(path) ?? throw new SweepException($"'{path}' is missing, empty, or no file; a journal of a sweep is due");
        return journal.Header.Command != MapJournal.Command
            ? journal
            : throw new SweepException($"'{path}' is the journal of a map that was stopped: cadence --map --resume goes on with it; merge joins parts of a sweep");
    }

    private static string[] Files(string path)
    {
        try
        {
            return Directory.Exists(path) ? [.. Directory.GetFiles(path, "*" + JournalFile.Extension).Order(StringComparer.Ordinal)] : [path];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SweepException($"cannot read '{path}': {e.GetBaseException().Message.ReplaceLineEndings(" ")}");
        }
    }
}
