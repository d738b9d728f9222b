using System.CommandLine;
using LureSim.Cli.Sweeps;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Commands;

/// <summary><c>sweep merge</c>: joins the parts of a sweep.</summary>
internal static class MergeCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    public static Command Create(Terminal terminal)
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
        plots.AcceptOnlyFromAmong("svg", "png", "both", "none");
        var command = new Command("merge", "Join the parts of a sweep (luresim sweep merge PART...); gaps, overlaps and strangers are refused.") { parts, output, json, quiet, plots };
        command.SetAction(parsed =>
        {
            string[] files = [.. parsed.GetRequiredValue(parts).SelectMany(Files)];
            var format = Enum.Parse<PlotFormat>(parsed.GetValue(plots)!, ignoreCase: true);
            return Run(files, parsed.GetValue(output), format, parsed.GetValue(json), parsed.GetValue(quiet), terminal);
        });
        return command;
    }

    private static int Run(string[] files, string? output, PlotFormat plots, bool json, bool quiet, Terminal terminal)
    {
        SweepTable table = SweepTable.Join([.. files.Select(f => Journal.Read(f) ?? throw new SweepException($"'{f}' is missing or empty"))]);
        string folder = output ?? Path.GetDirectoryName(files[0]) ?? "";
        folder = folder.Length == 0 ? "." : folder;
        SweepFiles.Write(folder, table, Capabilities.Summaries.FirstOrDefault(f => f.Name == table.Header.Command)?.Headlines ?? [], plots);
        return SweepCommand.Tell(table, folder, json, quiet, terminal);
    }

    private static string[] Files(string path) => Directory.Exists(path)
        ? [.. Directory.GetFiles(path, "*" + SweepRun.Extension).Order(StringComparer.Ordinal)]
        : [path];
}
