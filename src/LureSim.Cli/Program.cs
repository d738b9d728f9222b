using LureSim.Cli;
using LureSim.Cli.Running;

using var interrupt = new Interrupt();
return App.Run(args, new Terminal(Console.Out, Console.Error, !Console.IsErrorRedirected), interrupt.Token);
