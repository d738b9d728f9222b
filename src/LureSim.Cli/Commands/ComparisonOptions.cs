using System.CommandLine;
using LureSim.Scenarios;
using LureSim.Studies.Across;
using LureSim.Studies.Figures;

namespace LureSim.Cli.Commands;

/// <summary>What to compare with what.</summary>
/// <param name="Axes">What differs; empty without <c>--across</c> or after faults.</param>
/// <param name="Against">The reference, a value of each axis; null for what the scenario holds by itself.</param>
/// <param name="Pairs">Whether to show every two set-ups.</param>
internal sealed record Comparison(IReadOnlyList<AcrossAxis> Axes, IReadOnlyList<AcrossPick>? Against, bool Pairs);

/// <summary>Options of a comparison with verdicts: <c>--across</c>, <c>--against</c> and <c>--pairs</c>.</summary>
internal sealed class ComparisonOptions
{
    private readonly Option<string[]> _against = new("--against")
    {
        Description = "Value that --across compares the others with, one for each --across; without it what the scenario holds by itself.",
        HelpName = "value",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<bool> _pairs = new("--pairs") { Description = "Show the verdict of every two set-ups of --across, not only of each against the reference." };

    /// <summary>What differs.</summary>
    public Option<string[]> Across { get; } = Comparing.Option();

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        command.Add(Across);
        command.Add(_against);
        command.Add(_pairs);
        command.Validators.Add(result =>
        {
            if (result.GetResult(Across) is null && (result.GetResult(_against) is not null || result.GetResult(_pairs) is not null))
            {
                result.AddError("--against and --pairs go with --across, which is missing");
            }
        });
    }

    /// <summary>What is asked for.</summary>
    /// <param name="command">Command that compares.</param>
    /// <param name="values">Common options.</param>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public Comparison Read(IFigureSource command, CommonValues values, ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        IReadOnlyList<AcrossAxis> axes = Comparing.Read(Across, command, values, parsed, faults);
        bool whole = axes.Count == (parsed.GetValue(Across) ?? []).Length;
        return new(axes, whole ? new AgainstReader(faults).Read(parsed.GetValue(_against) ?? [], axes) : null, parsed.GetValue(_pairs));
    }
}
