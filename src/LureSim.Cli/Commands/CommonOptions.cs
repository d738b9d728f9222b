using System.CommandLine;
using LureSim.Reports.Kit.Drawing;

namespace LureSim.Cli.Commands;

/// <summary>The argument and options that every command takes.</summary>
public sealed class CommonOptions
{
    /// <summary>Scenario file.</summary>
    public Argument<string> File { get; } = new("file") { Description = "Scenario file (TOML)." };

    /// <summary>Overrides.</summary>
    public Option<string[]> Set { get; } = new("--set")
    {
        Description = "Override one key, for example --set retrieve.cadence=\"2.5 /s\"; repeatable.",
        HelpName = "key=value",
        DefaultValueFactory = _ => [],
    };

    /// <summary>Output folder.</summary>
    public Option<string?> Out { get; } = new("--out")
    {
        Description = "Folder for the files; default out/NAME, or no files with --json.",
        HelpName = "dir",
    };

    /// <summary>Summary as JSON.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "Print the summary as JSON instead of text." };

    /// <summary>Pictures.</summary>
    public Option<string> Plots { get; } = new("--plots")
    {
        Description = "Kind of pictures: svg, png, both or none.",
        HelpName = "kind",
        DefaultValueFactory = _ => "both",
    };

    /// <summary>No text.</summary>
    public Option<bool> Quiet { get; } = new("--quiet") { Description = "Print nothing but errors (and the JSON, if asked for)." };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        command.Add(File);
        command.Add(Set);
        Plots.AcceptOnlyFromAmong("svg", "png", "both", "none");
        foreach (Option option in (Option[])[Out, Json, Plots, Quiet])
        {
            command.Add(option);
        }
    }

    /// <summary>The values given.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    public CommonValues Read(ParseResult parsed)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        string file = parsed.GetRequiredValue(File);
        bool json = parsed.GetValue(Json);
        string? folder = parsed.GetValue(Out) ?? (json ? null : Path.Combine("out", Path.GetFileNameWithoutExtension(file)));
        return new CommonValues(
            file, parsed.GetValue(Set) ?? [], folder, json, Enum.Parse<PlotFormat>(parsed.GetValue(Plots)!, ignoreCase: true), parsed.GetValue(Quiet));
    }
}

/// <summary>Values of <see cref="CommonOptions"/>.</summary>
/// <param name="File">Scenario file.</param>
/// <param name="Overrides">Texts key=value.</param>
/// <param name="Folder">Output folder, or null for no files.</param>
/// <param name="Json">Print JSON.</param>
/// <param name="Plots">Pictures.</param>
/// <param name="Quiet">Print no text.</param>
public sealed record CommonValues(
    string File, IReadOnlyList<string> Overrides, string? Folder, bool Json, PlotFormat Plots, bool Quiet);
