using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Sweeps;

/// <summary>The journal that a study finds in its folder: whether it may be gone on with, or begun anew.</summary>
/// <param name="path">File.</param>
/// <param name="header">First line that it must have.</param>
/// <param name="what">What the study is, for people.</param>
internal sealed class JournalFile(string path, JournalHeader header, string what)
{
    /// <summary>End of a journal's file name.</summary>
    public const string Extension = ".journal";

    /// <summary>The journal to go on with, or null for a new one.</summary>
    /// <param name="wanted">What was asked for.</param>
    /// <param name="held">What an unfinished journal holds, for people.</param>
    /// <param name="quiet">Says nothing of damaged lines.</param>
    /// <param name="terminal">Where to write.</param>
    /// <exception cref="SweepException">It is unfinished and not to be gone on with, or another study's, or another machine's.</exception>
    public Journal? Find(ResumeValues wanted, Func<Journal, string> held, bool quiet, Terminal terminal)
    {
        if (Journal.Read(path) is not Journal found)
        {
            return null;
        }

        if (!wanted.Resume)
        {
            return found.DoneCount >= found.DueCount
                ? null
                : throw new SweepException($"'{path}' holds {held(found)} of a {what} that was stopped: go on with --resume, or delete it, or choose another --out");
        }

        if (found.Header.Text != header.Text)
        {
            throw new SweepException($"'{path}' belongs to another {what}: scenario, what varies, command and version must be the same to go on; choose another --out");
        }

        MachineMix.Refuse([found], MachineMaths.Here, wanted.MixMachines, terminal);
        if (found.DamagedCount > 0 && !quiet)
        {
            terminal.Error.WriteLine($"{found.DamagedCount} damaged or foreign lines in {path}: their runs are made again");
        }

        return found;
    }
}
