using System.CommandLine;
using LureSim.Cli.Completion;
using LureSim.Model;
using LureSim.Reports.Kit.Files;
using LureSim.Studies.Sweep;

namespace LureSim.Cli;

/// <summary>The command line as a function, so that tests can call it.</summary>
public static class App
{
    /// <summary>Parses the arguments and runs the command.</summary>
    /// <param name="args">Arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, Terminal terminal, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(terminal);
        return Guarded(() => Parsed(args, terminal, stop), terminal, stop);
    }

    private static int Parsed(string[] args, Terminal terminal, CancellationToken stop)
    {
        RootCommand root = Root(terminal, stop);
        if (Candidates.AreAskedFor(args))
        {
            terminal.Out.Write(string.Concat(Candidates.Answer(root, args).Select(w => w + "\n")));
            return ExitCode.Done;
        }

        string[] meant = CommandHints.WithoutHelpWord(root, args);
        if (CommandHints.NoCommand(root, meant) is string wrong)
        {
            terminal.Error.WriteLine(wrong);
            return ExitCode.BadInput;
        }

        ParseResult parsed = root.Parse(meant);
        if (parsed.Errors.Count > 0 && parsed.Action is not System.CommandLine.Help.HelpAction)
        {
            foreach (string fault in CommandHints.Faults(parsed))
            {
                terminal.Error.WriteLine(fault);
            }

            return ExitCode.BadInput;
        }

        var configuration = new InvocationConfiguration
        {
            Output = terminal.Out,
            Error = terminal.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        return parsed.Invoke(configuration);
    }

    private static RootCommand Root(Terminal terminal, CancellationToken stop)
    {
        var root = new RootCommand("Surface lures by physics: why one walks, how far it casts, what the line costs.");
        foreach (Capability capability in Capabilities.All)
        {
            root.Add(capability.Create(terminal, stop));
        }

        root.SetAction(_ => Guide(root, terminal));
        return root;
    }

    private static int Guide(RootCommand root, Terminal terminal)
    {
        string[] lines =
        [
            "luresim works on a scenario: a text file that holds rod, reel, line and lure, and what you do with them.",
            "To begin, write one in a few words, then see what it does and which rod suits it:",
            "  luresim start walker --mass \"1/2 oz\" --rod \"7 ft medium-heavy fast\" --line \"30 lb braid\"",
            "  luresim retrieve walker.toml",
            "  luresim compare walker.toml --rods \"6 ft 6 in,7 ft,7 ft 4 in\"",
            "",
            "Commands:",
            .. root.Subcommands.Select(c => $"  {c.Name,-12}{c.Description}"),
            "",
            "luresim help COMMAND tells what a command takes.",
        ];
        Array.ForEach(lines, terminal.Error.WriteLine);
        return ExitCode.BadInput;
    }

    private static int Stopped(Terminal terminal)
    {
        terminal.Error.WriteLine("stopped");
        return ExitCode.Stopped;
    }

    private static int Guarded(Func<int> run, Terminal terminal, CancellationToken stop)
    {
        try
        {
            return run();
        }
        catch (OperationCanceledException)
        {
            return Stopped(terminal);
        }
        catch (TypeInitializationException) when (stop.IsCancellationRequested)
        {
            // A signal that comes while a native library is loaded can break off its first use; the person wanted to stop anyway.
            return Stopped(terminal);
        }
        catch (SweepException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCode.BadInput;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCode.BadInput;
        }
        catch (ModelException e)
        {
            terminal.Error.WriteLine("the model could not finish: " + e.Message);
            return ExitCode.NotFinished;
        }
    }
}
