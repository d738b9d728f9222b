using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Model;
using LureSim.Reports.Bend;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Bend;

namespace LureSim.Cli.Bend;

/// <summary><c>bend</c>: a rod from a bend test.</summary>
internal static class BendCommand
{
    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        options.File.Description = "Bend test (CSV): lines such as \"length, 7 ft\" and rows \"weight, drop, angle\"; docs/bend-test.md.";
        var command = new Command("bend", "Turn a bend test (weights at the tip, drops of the tip) into a rod for scenarios.");
        options.AddTo(command, hasSet: false);
        command.SetAction(parsed =>
        {
            CommonValues values = options.Read(parsed, "bend");
            var faults = new List<ScenarioFault>();
            BendFile? file = BendFile.Read(values.File, faults);
            terminal.Tell(faults);
            return file is null ? ExitCode.BadInput : Run(values, file, terminal, stop);
        });
        return command;
    }

    private static int Run(CommonValues values, BendFile file, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        Outcome<BendReport> outcome = BendStudy.Run(file, stop);
        if (!outcome.IsWhole)
        {
            terminal.Tell([new(values.File, "", outcome.Failure.Reason)]);
            return ExitCode.BadInput;
        }

        BendReport report = outcome.Result;
        Shown shown = values.ShownFor(file.Units);
        string part = BendFiles.PartName(values.File);
        if (folder is not null)
        {
            BendFiles.Write(folder, report, part, shown, values.Plots);
        }

        string? written = values.Folder is null ? null : Path.Combine(values.Folder, part);
        terminal.Print(values, stream => BendFiles.WriteJson(stream, report), () => BendText.Build(report, shown, written));
        return ExitCode.Done;
    }
}
