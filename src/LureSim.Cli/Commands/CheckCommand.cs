using System.CommandLine;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;

namespace LureSim.Cli.Commands;

/// <summary><c>check</c>: reads a scenario and runs nothing.</summary>
public static class CheckCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    public static Command Create(Terminal terminal)
    {
        var options = new CommonOptions();
        var effective = new Option<bool>("--effective") { Description = "Print the scenario with every default spelled out." };
        var command = new Command("check", "Read a scenario and say what is wrong or guessed, without a run.") { effective };
        options.AddTo(command);
        command.SetAction(parsed => Run(options.Read(parsed, "check"), parsed.GetValue(effective), terminal));
        return command;
    }

    private static int Run(CommonValues values, bool all, Terminal terminal)
    {
        if (ScenarioInput.Read(values, [], terminal, Activities.All) is not ScenarioResult scenario)
        {
            return ExitCode.BadInput;
        }

        EffectiveScenario effective = scenario.Effective();
        if (all)
        {
            terminal.Out.Write(effective.ToToml());
        }
        else if (!values.Quiet)
        {
            Describe(values.File, scenario, effective, terminal.Out);
        }

        return ExitCode.Done;
    }

    private static void Describe(string file, ScenarioResult scenario, EffectiveScenario effective, TextWriter text)
    {
        foreach (string note in ScenarioFault.Lines(scenario.Notes))
        {
            text.Write($"note: {note}\n");
        }

        text.Write($"{file}: valid; {effective.Values.Count} values, of which {effective.Guesses.Count} are guesses:\n");
        foreach (GuessedKey guess in effective.Guesses)
        {
            text.Write($"  {guess}\n");
        }
    }
}
