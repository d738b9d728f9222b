using System.CommandLine;
using LureSim.Cli.Commands;

namespace LureSim.Cli.Live;

/// <summary>Arguments of <c>live</c>, for the command and for the program behind it, which is a program of its own (docs/live.md).</summary>
public sealed class LiveArguments
{
    /// <summary>Minutes after which the server ends when its page is closed.</summary>
    public const int Minutes = 3;

    private const int MostPort = 65535;

    private readonly CommonOptions _common = new();

    private readonly Option<string?> _port = new("--port") { Description = "Port on this machine; default a free one.", HelpName = "number" };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        _common.CheckUnits();
        command.Add(_common.File);
        command.Add(_common.Units);
        command.Add(_port);
    }

    /// <summary>The values given, or null after each fault was told.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="terminal">Where to tell faults.</param>
    public LiveValues? Read(ParseResult parsed, Terminal terminal)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(terminal);
        var faults = new List<Scenarios.ScenarioFault>();
        var values = new LiveValues(parsed.GetRequiredValue(_common.File), parsed.GetValue(_common.Units), Counts.Read(parsed.GetValue(_port), 0, "--port", 1, MostPort, faults));
        faults.AddRange(Scenarios.ScenarioSource.Read(values.File, null, Scenarios.Activities.Retrieve).Errors);
        terminal.Tell(faults);
        return faults.Count == 0 ? values : null;
    }
}

/// <summary>Values of <see cref="LiveArguments"/>.</summary>
/// <param name="File">Scenario file, whole.</param>
/// <param name="Units">Units, or null.</param>
/// <param name="Port">Port; 0 = a free one.</param>
public sealed record LiveValues(string File, string? Units, int Port);
