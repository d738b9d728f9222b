using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Design;
using LureSim.Studies.Runs;
using LureSim.Studies.Sayings;
using LureSim.Studies.Strike;
using LureSim.Wire;

namespace LureSim.Studies.Page;

/// <summary>What a page computes, and how much of it.</summary>
/// <param name="WithRhythms">False leaves out the rhythms, which take most of the time.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
/// <param name="WithStrike">False leaves out strike and drag.</param>
/// <param name="WithBuilding">False leaves out what changes of the lure and errors of building do; how it floats and comes on a tight line stays.</param>
public sealed record PagePlan(bool WithRhythms = true, int Threads = 0, bool WithStrike = true, bool WithBuilding = true)
{
    /// <summary>Most files of one page: each adds its runs to one document.</summary>
    public const int MostFiles = 4;
}

/// <summary>One retrieve that a page shows.</summary>
/// <param name="Id">Name for the scripts.</param>
/// <param name="Name">What sets it apart from the others, in words.</param>
/// <param name="File">Which file it comes from, counted from 0.</param>
/// <param name="Set">Overrides beyond those of the command.</param>
/// <param name="Result">The retrieve, whole or stopped; null where the model had nothing to show.</param>
/// <param name="Film">The same for playing; null with it.</param>
/// <param name="Failure">Why it stopped, or null.</param>
public sealed record PageRun(string Id, string Name, int File, IReadOnlyList<string> Set, RetrieveResult? Result, Film? Film, string? Failure);

/// <summary>What another line, leader or rod does at the file's own rhythm.</summary>
/// <param name="Group">What is changed.</param>
/// <param name="Label">To what.</param>
/// <param name="IsOwn">True for the set-up as it stands.</param>
/// <param name="Outcome">Its settled walk.</param>
public sealed record PageChange(ChangeGroup Group, string Label, bool IsOwn, StationaryOutcome Outcome);

/// <summary>What is changed.</summary>
public enum ChangeGroup
{
    /// <summary>Main line.</summary>
    Line,

    /// <summary>Leader.</summary>
    Leader,

    /// <summary>Rod length, its mass going with it.</summary>
    Rod,
}

/// <summary>All about one file.</summary>
public sealed record PageCase
{
    /// <summary>The file.</summary>
    public required PageFile File { get; init; }

    /// <summary>The retrieve as the file says.</summary>
    public required PageRun Own { get; init; }

    /// <summary>A sentence where the settled walk has another word than the retrieve, or null.</summary>
    public required string? SettlesOtherwise { get; init; }

    /// <summary>Rhythms; null where not asked for, for a steady pull, or where all failed.</summary>
    public required CadenceResult? Rhythms { get; init; }

    /// <summary>The cast, or null.</summary>
    public required CastReport? Cast { get; init; }

    /// <summary>Why there is no cast, or null.</summary>
    public required string? CastFault { get; init; }

    /// <summary>Strike and drag; null where it was left out or could not be computed.</summary>
    public StrikeReport? Strike { get; init; }

    /// <summary>Why there is no strike; null where there is one, or where it was left out.</summary>
    public string? StrikeFault { get; init; }

    /// <summary>How the lure floats and what would change it; null where it could not be computed.</summary>
    public DesignReport? Design { get; init; }

    /// <summary>Why there is no float, or null.</summary>
    public string? DesignFault { get; init; }

    /// <summary>Other lines, leaders and rods; empty for a steady pull.</summary>
    public required IReadOnlyList<PageChange> Changes { get; init; }

    /// <summary>Guesses that enter the retrieve.</summary>
    public required IReadOnlyList<GuessedKey> Guesses { get; init; }

    /// <summary>Notes of the file.</summary>
    public IReadOnlyList<string> Notes => Told(File);

    private static string[] Told(PageFile file) => [.. ScenarioFault.Lines(file.Here.Notes)];
}

/// <summary>All of a page.</summary>
/// <param name="Cases">One per file, at least one.</param>
/// <param name="Others">More runs of the first file beside its own, for a page of one file.</param>
/// <param name="HasRhythms">False where the rhythms were left out.</param>
public sealed record PageResult(IReadOnlyList<PageCase> Cases, IReadOnlyList<PageRun> Others, bool HasRhythms)
{
    /// <summary>Sayings put to the test; null where none was asked for.</summary>
    public SayingsReport? Sayings { get; init; }

    /// <summary>Runs side by side: those of the files, then the others.</summary>
    public IReadOnlyList<PageRun> Runs => [.. Cases.Select(c => c.Own), .. Others];
}
