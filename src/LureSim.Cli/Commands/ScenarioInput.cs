using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Cli.Commands;

/// <summary>Reads a scenario and tells its faults.</summary>
public static class ScenarioInput
{
    /// <summary>The scenario, or null after each fault, those of the other arguments first, was printed as one line on stderr.</summary>
    /// <param name="values">File and overrides.</param>
    /// <param name="faults">Faults of other arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="asked">What the scenario is wanted for.</param>
    public static ScenarioResult? Read(CommonValues values, IReadOnlyList<ScenarioFault> faults, Terminal terminal, Activities asked)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(faults);
        ArgumentNullException.ThrowIfNull(terminal);
        ScenarioResult result = ScenarioSource.Read(values.File, values.Overrides, asked);
        terminal.Tell(faults.Concat(result.Errors));
        return result.IsValid && faults.Count == 0 ? result : null;
    }

    /// <summary>The same for a command that needs twitches: a steady pull is refused.</summary>
    /// <param name="values">File and overrides.</param>
    /// <param name="faults">Faults of other arguments.</param>
    /// <param name="terminal">Where to write.</param>
    public static ScenarioResult? ReadTwitched(CommonValues values, IReadOnlyList<ScenarioFault> faults, Terminal terminal)
    {
        ScenarioResult? result = Read(values, faults, terminal, Activities.Retrieve);
        if (result?.Retrieve!.IsTow != true)
        {
            return result;
        }

        terminal.Error.WriteLine(new ScenarioFault(
            values.File, RetrieveKeys.Stroke.Path, "0 is a steady pull, which has no rhythm; a stroke is due here, for example \"20 cm\""));
        return null;
    }

    /// <summary>Runs; what no single key could tell, such as a lure in the water at the start of a cast or a rod tip higher than a strike is far, is one line.</summary>
    /// <param name="values">File.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="run">What runs.</param>
    internal static int Guarded(CommonValues values, Terminal terminal, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (ArgumentException e)
        {
            terminal.Error.WriteLine($"{values.File}: {e.Message.Split('\n')[0]}");
            return ExitCode.BadInput;
        }
    }
}
