using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cadence;
using LureSim.Studies.Figures;

namespace LureSim.Cli;

/// <summary>One thing that the program can do.</summary>
/// <param name="Create">Makes its command.</param>
/// <param name="Figures">Its summary, for sweeps, bands and comparisons; null where it has none.</param>
internal sealed record Capability(Func<Terminal, CancellationToken, Command> Create, IFigureSource? Figures = null);

/// <summary>Everything that the program can do. A new capability is a line here and files of its own.</summary>
internal static class Capabilities
{
    /// <summary>The summary of <c>retrieve</c>.</summary>
    public static readonly IFigureSource Retrieve = new RetrieveSource();

    /// <summary>The summary of <c>cadence</c>.</summary>
    public static readonly IFigureSource Cadence = new CadenceSource(new CadencePlan());

    /// <summary>The summary of <c>cast</c>.</summary>
    public static readonly IFigureSource Cast = new CastSource();

    /// <summary>All, in the order of help.</summary>
    public static IReadOnlyList<Capability> All { get; } =
    [
        Start.StartCommand.Capability,
        List.ListCommand.Capability,
        new(RetrieveCommand.Create, Retrieve),
        new(CadenceCommand.Create, Cadence),
        new(CastCommand.Create, Cast),
        Strike.StrikeCommand.Capability,
        Compare.CompareCommand.Capability,
        Trim.TrimCommand.Capability,
        Design.DesignCommand.Capability,
        Pool.PoolCommand.Capability,
        Fit.FitCommand.Capability,
        Cover.CoverCommand.Capability,
        Sayings.SayingsCommand.Capability,
        Crawl.CrawlCommand.Capability,
        Bend.BendCommand.Capability,
        Board.BoardCommand.Capability,
        Page.PageCommand.Capability,
        Live.LiveCommand.Capability,
        new(SweepCommand.Create),
        Slides.SlidesCommand.Capability,
        new((terminal, _) => CheckCommand.Create(terminal)),
        Completion.CompletionCommand.Capability,
    ];

    /// <summary>Summaries that a sweep can tabulate; the first is the default.</summary>
    public static IReadOnlyList<IFigureSource> Summaries { get; } = [.. All.Select(c => c.Figures).OfType<IFigureSource>()];

    /// <summary>What the reader must know beside the numbers of a command: notes of the scenario, keys that were set but do not enter, guesses that do.</summary>
    /// <param name="figures">Command.</param>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="effective">Its values.</param>
    /// <param name="values">What was asked for.</param>
    public static RunNotes Notes(IFigureSource figures, ScenarioResult scenario, EffectiveScenario effective, CommonValues values) => new(
        [.. ScenarioFault.Lines(scenario.Notes), .. scenario.Values.Overridden.Where(k => !figures.Reads(k, scenario)).Select(k => $"{k.Path} does not enter {figures.Name}")],
        [.. effective.Guesses.Where(g => figures.Draws(g.Key, scenario)).Select(g => g.ToString())])
    {
        Shown = values.ShownFor(scenario),
    };
}
