using System.CommandLine;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios;

namespace LureSim.Cli.Commands;

/// <summary>The argument and options that every command takes.</summary>
public sealed class CommonOptions
{
    private static readonly string[] UnitNames = [.. Enum.GetNames<UnitChoice>().Select(n => n.ToLowerInvariant())];

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
        Description = "Folder for the files; default out/NAME/COMMAND, or no files with --json.",
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

    /// <summary>Units of texts and pictures.</summary>
    public Option<string?> Units { get; } = new("--units")
    {
        Description = "Units of texts, tables and pictures: trade, metric or both; default those of the file. JSON and CSV are SI always.",
        HelpName = "kind",
    };

    /// <summary>No text.</summary>
    public Option<bool> Quiet { get; } = new("--quiet") { Description = "Print nothing but errors (and the JSON, if asked for)." };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    /// <param name="hasFile">False for a command that takes several files.</param>
    /// <param name="hasSet">False for a command whose file is no scenario.</param>
    public void AddTo(Command command, bool hasFile = true, bool hasSet = true)
    {
        ArgumentNullException.ThrowIfNull(command);
        if (hasFile)
        {
            command.Add(File);
        }

        if (hasSet)
        {
            command.Add(Set);
        }

        Plots.AcceptOnlyFromAmong("svg", "png", "both", "none");
        CheckUnits();
        foreach (Option option in (Option[])[Out, Json, Plots, Units, Quiet])
        {
            command.Add(option);
        }
    }

    /// <summary>Refuses units that are none; for a command that adds options one by one.</summary>
    public void CheckUnits() => Units.Validators.Add(result =>
    {
        if (result.Tokens is [var given] && Array.IndexOf(UnitNames, given.Value) < 0)
        {
            result.AddError($"--units: '{given.Value}' is none of its words; say {UnitNames[0]}, {UnitNames[1]} or {UnitNames[2]}");
        }
    });

    /// <summary>The units asked for, or null.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    public UnitChoice? UnitsOf(ParseResult parsed)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        return parsed.GetValue(Units) is string name ? Enum.Parse<UnitChoice>(name, ignoreCase: true) : null;
    }

    /// <summary>The values given.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="kind">What the files will be, for example <c>cadence-map</c>: the end of the default folder.</param>
    public CommonValues Read(ParseResult parsed, string kind)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        return Read(parsed, kind, parsed.GetRequiredValue(File));
    }

    /// <summary>The values given, of a command that takes several files.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="kind">What the files will be.</param>
    /// <param name="file">The first of them: it names the default folder.</param>
    public CommonValues Read(ParseResult parsed, string kind, string file)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        bool json = parsed.GetValue(Json);
        string own = Path.Combine("out", Path.GetFileNameWithoutExtension(file), kind);
        string? folder = parsed.GetValue(Out) ?? (json ? null : own);
        var plots = Enum.Parse<PlotFormat>(parsed.GetValue(Plots)!, ignoreCase: true);
        return new CommonValues(file, parsed.GetValue(Set) ?? [], folder, own, kind, json, plots, parsed.GetValue(Quiet), UnitsOf(parsed));
    }
}

/// <summary>Values of <see cref="CommonOptions"/>.</summary>
/// <param name="File">Scenario file.</param>
/// <param name="Overrides">Texts key=value.</param>
/// <param name="Folder">Output folder, or null for no files.</param>
/// <param name="OwnFolder">Output folder where none is given.</param>
/// <param name="Kind">What the files will be.</param>
/// <param name="Json">Print JSON.</param>
/// <param name="Plots">Pictures.</param>
/// <param name="Quiet">Print no text.</param>
/// <param name="Units">Units of texts and pictures, or null for those of the file.</param>
public sealed record CommonValues(
    string File, IReadOnlyList<string> Overrides, string? Folder, string OwnFolder, string Kind, bool Json, PlotFormat Plots, bool Quiet, UnitChoice? Units)
{
    /// <summary>How quantities are told: as asked for, else in the units that the file itself uses, both where it uses both.</summary>
    /// <param name="scenario">What was read from the file.</param>
    public Shown ShownFor(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return ShownFor(scenario.Units);
    }

    /// <summary>The same for a file of another kind.</summary>
    /// <param name="file">Units that it is written in.</param>
    public Shown ShownFor(UnitFamily file) => Units is UnitChoice choice ? new(choice) : Shown.For(file);

    /// <summary>Opens the output folder, before a run, so that one that cannot be written is found in time.</summary>
    /// <param name="stop">Set when the person stops the run.</param>
    /// <returns>Null where no files are wanted.</returns>
    /// <exception cref="OutputException">It cannot be written, or holds the results of another command.</exception>
    public OutputFolder? Open(CancellationToken stop) => Folder is null ? null : new(Folder, Kind, stop);
}
