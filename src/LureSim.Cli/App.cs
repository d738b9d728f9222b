using System.CommandLine;
using System.CommandLine.Parsing;
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
        return Guarded(() => Parsed(args, terminal, stop), terminal);
    }

    private static int Parsed(string[] args, Terminal terminal, CancellationToken stop)
    {
        ParseResult parsed = Root(terminal, stop).Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is not System.CommandLine.Help.HelpAction)
        {
            foreach (ParseError error in parsed.Errors)
            {
                terminal.Error.WriteLine(error.Message.ReplaceLineEndings(" "));
            }

            terminal.Error.WriteLine("luresim --help lists the commands, luresim COMMAND --help its options.");
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
        terminal.Error.WriteLine("no command given; commands: " + string.Join(", ", root.Subcommands.Select(c => c.Name)));
        return ExitCode.BadInput;
    }

    private static int Guarded(Func<int> run, Terminal terminal)
    {
        try
        {
            return run();
        }
        catch (OperationCanceledException)
        {
            terminal.Error.WriteLine("stopped");
            return ExitCode.Stopped;
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
