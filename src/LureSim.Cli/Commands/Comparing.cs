using System.CommandLine;
using LureSim.Scenarios;
using LureSim.Studies.Across;
using LureSim.Studies.Figures;

namespace LureSim.Cli.Commands;

/// <summary>The option <c>--across</c>, the same for every command.</summary>
internal static class Comparing
{
    /// <summary>Makes the option.</summary>
    public static Option<string[]> Option() => new("--across")
    {
        Description = $"Compare set-ups: KEY=list or range, or a ready-made comparison ({string.Join(", ", ReadyComparison.Names)}); once or twice.",
        HelpName = "what",
        DefaultValueFactory = _ => [],
    };

    /// <summary>What differs; empty without the option or after faults.</summary>
    /// <param name="option">The option.</param>
    /// <param name="command">Command that compares.</param>
    /// <param name="values">Common options.</param>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public static IReadOnlyList<AcrossAxis> Read(
        Option<string[]> option, IFigureSource command, CommonValues values, ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        string[] texts = parsed.GetValue(option) ?? [];
        return texts.Length == 0 ? [] : new AcrossReader(command, ScenarioSource.Read(values.File, values.Overrides, command.Asks), faults).Read(texts);
    }
}
