using System.CommandLine;
using System.Text;
using LureSim.Cli.Sweeps;
using LureSim.Reports.Sweep;
using LureSim.Scenarios;

namespace LureSim.Cli.Commands;

/// <summary><c>sweep</c>: a command's summary over many values, one row per run.</summary>
public static class SweepCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        options.Out.Description = "Folder for the files; default out/NAME/sweep.";
        var sweep = new SweepOptions();
        var command = new Command("sweep", "A summary over any keys: one row per run, on all cores, in parts if need be.");
        options.AddTo(command);
        sweep.AddTo(command);
        command.Add(MergeCommand.Create(terminal, stop));
        command.SetAction(parsed =>
        {
            CommonValues values = options.Read(parsed, SweepFiles.Kind);
            var faults = new List<ScenarioFault>();
            SweepValues wanted = sweep.Read(parsed, faults);
            return Run(values with { Folder = values.Folder ?? values.OwnFolder }, wanted, faults, terminal, stop);
        });
        return command;
    }

    private static int Run(CommonValues values, SweepValues wanted, List<ScenarioFault> faults, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, wanted.Figures.Asks);
        ScenarioResult? start = faults.Count > 0 ? null : SweepStart.Find(source, values.Overrides, wanted);
        if (start is null || !start.IsValid)
        {
            IEnumerable<ScenarioFault> all = faults.Concat((start ?? source.Resolve(values.Overrides)).Errors);
            terminal.Tell(all);
            return ExitCode.BadInput;
        }

        foreach (string unread in wanted.Axes.SelectMany(a => a.Keys).Where(k => !wanted.Figures.Reads(k, start)).Select(k => k.Path).Distinct())
        {
            terminal.Error.WriteLine($"note: {unread} does not enter {wanted.Figures.Name}; rows that differ in it alone are equal");
        }

        var run = new SweepRun(values, wanted, source, start, terminal);
        if (!run.Execute(stop))
        {
            return ExitCode.Stopped;
        }

        return run.Finish(stop);
    }

    /// <summary>Prints what a sweep gave.</summary>
    internal static int Tell(SweepTable table, string folder, bool json, bool quiet, Terminal terminal)
    {
        var tally = new SweepTally(table);
        if (json)
        {
            using var stream = new MemoryStream();
            tally.Write(stream, Path.Combine(folder, SweepFiles.Table));
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!quiet)
        {
            terminal.Out.Write(tally.Text());
            terminal.Out.Write($"Files: {folder}\n");
        }

        return tally.Done > 0 ? ExitCode.Done : ExitCode.NotFinished;
    }
}
