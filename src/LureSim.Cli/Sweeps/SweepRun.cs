using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Sweep;
using LureSim.Scenarios;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Sweeps;

/// <summary>Runs a sweep, or a part of it, into its journal, and makes the table from the journal.</summary>
internal sealed class SweepRun
{
    /// <summary>End of a journal's file name.</summary>
    public const string Extension = ".journal";

    private readonly CommonValues values;
    private readonly SweepValues wanted;
    private readonly SweepPlan plan;
    private readonly JournalHeader header;
    private readonly string effective;
    private readonly string path;
    private readonly Terminal terminal;

    /// <summary>Prepares the sweep.</summary>
    public SweepRun(CommonValues values, SweepValues wanted, ScenarioSource source, ScenarioResult start, Terminal terminal)
    {
        (this.values, this.wanted, this.terminal) = (values, wanted, terminal);
        ulong seed = start.Setup!.Seed;
        GuessDesign? doubt = wanted.Doubt > 0 ? new(wanted.Doubt, seed) : null;
        plan = new(source, values.Overrides, wanted.Axes, SweepStart.Points(wanted, seed), wanted.Figures, doubt);
        effective = start.Effective().ToToml();
        string print = Fingerprint.Of(wanted.Figures.Name, effective, wanted.Axes, wanted.Samples > 0 ? wanted.Samples : null, plan.Layout);
        header = new(print, wanted.Figures.Name, plan.Count, wanted.Shard, plan.Layout);
        string part = wanted.Shard.IsWhole ? "" : $"-{wanted.Shard.Number}-of-{wanted.Shard.Of}";
        path = Path.Combine(values.Folder!, $"sweep{part}{Extension}");
    }

    /// <summary>Runs what is not done yet.</summary>
    /// <returns>False when it was stopped; what was done is kept.</returns>
    public bool Execute(CancellationToken stop)
    {
        Journal? found = Journal.Read(path);
        RefuseStranger(found);
        Journal? old = wanted.Resume ? found : null;
        int due = wanted.Shard.CountOf(plan.Count), before = old?.DoneCount ?? 0, done = before;
        using JournalWriter journal = old is null ? JournalWriter.Start(path, header) : JournalWriter.Continue(old);
        if (wanted.Shard.Number == 1)
        {
            // The parts of a job array share a folder; one writer is enough.
            SweepFiles.WriteScenario(values.Folder!, effective);
        }

        using var progress = new ProgressLine($"sweep of {due} runs", terminal, values.Quiet);
        IEnumerable<int> indices = Enumerable.Range(0, plan.Count).Where(i => wanted.Shard.Has(i) && old?.Has(i) != true);
        try
        {
            Batch.Execute(indices, wanted.Threads, i => plan.Layout.Line(i, plan.Run(i, stop)), Keep, stop);
            return true;
        }
        catch (OperationCanceledException)
        {
            progress.Dispose();
            terminal.Error.WriteLine($"stopped: {done} of {due} runs are kept in {path}; the same command with --resume goes on");
            return false;
        }

        void Keep(int index, string row)
        {
            journal.Write(row);
            done++;
            progress.Report((double)(done - before) / (due - before));
        }
    }

    /// <summary>Makes the table, or for a part says how to go on.</summary>
    public int Finish()
    {
        if (wanted.Shard.IsWhole)
        {
            SweepTable table = SweepTable.Join([Journal.Read(path)!]);
            SweepFiles.Write(values.Folder!, table, wanted.Figures.Headlines, values.Plots);
            return SweepCommand.Tell(table, values.Folder!, values.Json, values.Quiet, terminal);
        }

        if (!values.Quiet)
        {
            int due = wanted.Shard.CountOf(plan.Count);
            terminal.Out.Write($"Part {wanted.Shard} done: {due} of {plan.Count} runs in {path}\nsweep merge joins the parts when all are done\n");
        }

        return ExitCode.Done;
    }

    private void RefuseStranger(Journal? found)
    {
        if (found is null)
        {
            return;
        }

        if (!wanted.Resume)
        {
            if (found.DoneCount < found.DueCount)
            {
                throw new SweepException(
                    $"'{path}' holds {found.DoneCount} of {found.DueCount} runs of a sweep that was stopped: go on with --resume, or delete it, or choose another --out");
            }

            return;
        }

        if (found.Header.Text != header.Text)
        {
            throw new SweepException(
                $"'{path}' belongs to another sweep: scenario, what varies, command and version must be the same to go on; choose another --out");
        }

        if (found.DamagedCount > 0 && !values.Quiet)
        {
            terminal.Error.WriteLine($"{found.DamagedCount} damaged lines in {path}: their runs are made again");
        }
    }
}
