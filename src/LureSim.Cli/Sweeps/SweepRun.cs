using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Sweep;
using LureSim.Scenarios;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Sweeps;

/// <summary>Runs a sweep, or a part of it, into its journal, and makes the table from the journal.</summary>
internal sealed class SweepRun
{
    private readonly CommonValues _values;
    private readonly SweepValues _wanted;
    private readonly SweepPlan _plan;
    private readonly JournalHeader _header;
    private readonly string _effective;
    private readonly string _path;
    private readonly Terminal _terminal;

    /// <summary>Prepares the sweep.</summary>
    public SweepRun(CommonValues values, SweepValues wanted, ScenarioSource source, ScenarioResult start, Terminal terminal)
    {
        (_values, _wanted, _terminal) = (values, wanted, terminal);
        ulong seed = start.Setup!.Seed;
        GuessDesign? doubt = wanted.Doubt > 0 ? new(wanted.Doubt, seed) : null;
        _plan = new(source, values.Overrides, wanted.Axes, SweepStart.Points(wanted, seed), wanted.Figures, doubt);
        _effective = start.Effective().ToToml();
        string print = Fingerprint.Of(wanted.Figures.Name, _effective, wanted.Axes, wanted.Samples > 0 ? wanted.Samples : null, _plan.Layout);
        _header = new(print, wanted.Figures.Name, _plan.Count, wanted.Shard, _plan.Layout);
        string part = wanted.Shard.IsWhole ? "" : $"-{wanted.Shard.Number}-of-{wanted.Shard.Of}";
        _path = Path.Combine(values.Folder!, $"sweep{part}{JournalFile.Extension}");
    }

    /// <summary>Runs what is not done yet.</summary>
    /// <returns>False when it was stopped; what was done is kept.</returns>
    public bool Execute(CancellationToken stop)
    {
        Journal? old = new JournalFile(_path, _header, "sweep").Find(_wanted.Resume, f => $"{f.DoneCount} of {f.DueCount} runs", _values.Quiet, _terminal);
        int due = _wanted.Shard.CountOf(_plan.Count), before = old?.DoneCount ?? 0, done = before;
        using JournalWriter journal = old is null ? Begin() : JournalWriter.Continue(old, MachineMaths.Here);
        using var progress = new ProgressLine($"sweep of {due} runs", _terminal, _values.Quiet);
        IEnumerable<int> indices = Enumerable.Range(0, _plan.Count).Where(i => _wanted.Shard.Has(i) && old?.Has(i) != true);
        try
        {
            Batch.Execute(indices, _wanted.Threads, i => _plan.Layout.Line(i, _plan.Run(i, stop)), Keep, stop);
            journal.Force();
            return true;
        }
        catch (OperationCanceledException)
        {
            progress.Dispose();
            journal.Force();
            _terminal.Error.WriteLine($"stopped: {done} of {due} runs are kept in {_path}; the same command with --resume goes on");
            return false;
        }
        catch (OutputException e)
        {
            throw new OutputException($"{e.Message}; {done} of {due} runs are kept there: make room, then the same command with --resume goes on");
        }

        void Keep(int index, string row)
        {
            journal.Write(row);
            done++;
            progress.Report((double)(done - before) / (due - before));
        }
    }

    /// <summary>Makes the table, or for a part says how to go on.</summary>
    public int Finish(CancellationToken stop)
    {
        if (_wanted.Shard.IsWhole)
        {
            SweepTable table = SweepTable.Join([Journal.Read(_path)!]);
            using OutputFolder folder = new(_values.Folder!, SweepFiles.Kind, stop);
            SweepFiles.Write(folder, table, _wanted.Figures.Headlines, _values.Plots);
            return SweepCommand.Tell(table, _values.Folder!, _values.Json, _values.Quiet, _terminal);
        }

        if (!_values.Quiet)
        {
            int due = _wanted.Shard.CountOf(_plan.Count);
            _terminal.Out.Write($"Part {_wanted.Shard} done: {due} of {_plan.Count} runs in {_path}\nsweep merge joins the parts when all are done\n");
        }

        return ExitCode.Done;
    }

    // The parts of a job array share a folder; one writer of the scenario is enough.
    private JournalWriter Begin()
    {
        if (_wanted.Shard.Number == 1)
        {
            using OutputFolder folder = new(_values.Folder!, SweepFiles.Kind);
            SweepFiles.WriteScenario(folder, _effective);
        }

        return JournalWriter.Start(_path, _header, MachineMaths.Here);
    }
}
