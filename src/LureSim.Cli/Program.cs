using LureSim.Cli;
using LureSim.Cli.Running;

using var interrupt = new Interrupt();
return App.Run(args, StandardStreams.Open(), interrupt.Token);
