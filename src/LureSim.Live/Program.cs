using System.CommandLine;
using LureSim.Cli;
using LureSim.Cli.Live;
using LureSim.Cli.Running;
using LureSim.Live;

using var interrupt = new Interrupt();
Terminal terminal = StandardStreams.Open();
// Standard input is a pipe that the starter holds; typed by a person it is a terminal, where nothing comes.
using Stream? starter = Console.IsInputRedirected ? Console.OpenStandardInput() : null;
var arguments = new LiveArguments();
var command = new RootCommand("Serves the live page of a scenario; luresim live FILE starts it.");
arguments.AddTo(command);
command.SetAction(parsed => arguments.Read(parsed, terminal) is LiveValues values
    ? LiveHost.Run(values, terminal, starter, interrupt.Token).GetAwaiter().GetResult()
    : ExitCode.BadInput);
return command.Parse(args).Invoke();
