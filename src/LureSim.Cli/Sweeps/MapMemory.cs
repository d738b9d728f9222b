using LureSim.Cli.Commands;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Sweep;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Maps;
using LureSim.Studies.Runs;

namespace LureSim.Cli.Sweeps;

/// <summary>The journal of a map beside its files, while the map is not whole; without a folder nothing is kept.</summary>
internal sealed class MapMemory : IDisposable
{
    private const string Name = "map" + JournalFile.Extension;
    private readonly string? _path;
    private readonly JournalHeader _header;
    private readonly Journal? _old;
    private readonly IReadOnlyDictionary<int, StationaryOutcome> _known = new Dictionary<int, StationaryOutcome>();
    private JournalWriter? _writer;
    private int _kept;

    /// <summary>Looks for a journal to go on with.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="effective">The scenario that is varied, with every default spelled out.</param>
    /// <param name="axes">Axes of the map.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="wanted">Whether to go on.</param>
    /// <param name="terminal">Where to write.</param>
    /// <exception cref="Studies.Sweep.SweepException">A journal must not be gone on with, or not be overwritten.</exception>
    public MapMemory(CommonValues values, string effective, IReadOnlyList<Axis> axes, MapPlan plan, ResumeValues wanted, Terminal terminal)
    {
        _header = MapJournal.Header(effective, axes, plan);
        _path = values.Folder is null ? null : Path.Combine(values.Folder, Name);
        if (_path is null)
        {
            return;
        }

        _old = new JournalFile(_path, _header, "map").Find(wanted, f => $"{f.DoneCount} runs", values.Quiet, terminal);
        if (_old is not null)
        {
            _known = MapJournal.Outcomes(_old);
            _kept = _old.DoneCount;
        }
    }

    /// <summary>What is kept and how to go on; null where nothing is.</summary>
    public string? Told => _kept > 0 ? $"{_kept} runs of the map are kept in {_path}; the same command with --resume goes on" : null;

    /// <summary>The outcome of a run that was made before, or null.</summary>
    /// <param name="index">Index.</param>
    public StationaryOutcome? Find(int index) => _known.GetValueOrDefault(index);

    /// <summary>Keeps an outcome. The journal begins with the first, so that a map stopped before leaves nothing.</summary>
    /// <param name="index">Index.</param>
    /// <param name="outcome">Outcome.</param>
    /// <exception cref="OutputException">It cannot be written.</exception>
    public void Keep(int index, StationaryOutcome outcome)
    {
        if (_path is null)
        {
            return;
        }

        try
        {
            _writer ??= _old is null ? JournalWriter.Start(_path, _header, MachineMaths.Here) : JournalWriter.Continue(_old, MachineMaths.Here);
            _writer.Write(MapJournal.Row(index, outcome));
            _kept++;
        }
        catch (OutputException e) when (Told is string told)
        {
            throw new OutputException($"{e.Message}; {told}, once there is room");
        }
    }

    /// <summary>Forces what is kept to the disk.</summary>
    public void Force() => _writer?.Force();

    /// <summary>Removes the journal of a map whose files are written.</summary>
    public void Forget()
    {
        Dispose();
        if (_path is not null)
        {
            File.Delete(_path);
        }
    }

    /// <summary>Closes the journal.</summary>
    public void Dispose()
    {
        _writer?.Dispose();
        _writer = null;
    }
}
