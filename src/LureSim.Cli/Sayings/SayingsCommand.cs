using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Sayings;
using LureSim.Scenarios;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Compare;
using LureSim.Studies.Figures;
using LureSim.Studies.Sayings;

namespace LureSim.Cli.Sayings;

/// <summary><c>sayings</c>: what the trade says, put to the test.</summary>
internal static class SayingsCommand
{
    private const string Name = "sayings";
    private const int MostThreads = 4096;

    /// <summary>The capability: a command over files of its own, without a summary.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var names = new Argument<string[]>("names") { Description = "Names of sayings, or files of your own (TOML); none for all.", Arity = ArgumentArity.ZeroOrMore };
        var list = new Option<bool>("--list") { Description = "Show names and texts without running anything." };
        var draws = new Option<string?>("--draws") { Description = $"Draws of the guesses in every place; default {new SayingPlan().Draws}.", HelpName = "count" };
        var threads = new Option<string?>("--threads") { Description = "Most threads; 0 uses every core. The result does not depend on it.", HelpName = "count" };
        var command = new Command(Name, "Put what the trade says to the test: holds, holds only when, does not hold, cannot be told.") { names, list, draws, threads };
        options.AddTo(command, hasFile: false, hasSet: false);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            string[] given = parsed.GetValue(names) ?? [];
            var plan = new SayingPlan(
                Counts.Read(parsed.GetValue(draws), new SayingPlan().Draws, "--draws", SayingPlan.Fewest, SayingPlan.Most, faults),
                Counts.Read(parsed.GetValue(threads), 0, "--threads", 0, MostThreads, faults));
            Saying[] sayings = Named(given, faults);
            bool only = parsed.GetValue(list);
            ReadySaying[] ready = only ? [] : Ready(sayings, faults);
            if (faults.Count > 0)
            {
                terminal.Tell(faults);
                return ExitCode.BadInput;
            }

            if (only)
            {
                terminal.Out.Write(SayingsText.List(sayings));
                return ExitCode.Done;
            }

            return Run(options.Read(parsed, Name, ""), ready, plan, terminal, stop);
        });
        return command;
    }

    /// <summary>Sayings by name or file; all for none.</summary>
    /// <param name="names">Names.</param>
    /// <param name="faults">Gets what is wrong.</param>
    public static Saying[] Named(IReadOnlyCollection<string> names, List<ScenarioFault> faults) =>
        [.. (names.Count == 0 ? SayingLibrary.Names : names.Distinct(StringComparer.Ordinal)).Select(n => SayingLibrary.Read(n, faults)).OfType<Saying>()];

    /// <summary>The same, ready to run.</summary>
    /// <param name="sayings">Sayings.</param>
    /// <param name="faults">Gets what is wrong.</param>
    public static ReadySaying[] Ready(IEnumerable<Saying> sayings, List<ScenarioFault> faults) => [.. sayings.Select(s => ReadySaying.Of(s, Commands, faults)).OfType<ReadySaying>()];

    // The search over rhythm is the coarse one of a comparison: a saying takes dozens of them.
    private static IReadOnlyList<IFigureSource> Commands =>
        [.. Capabilities.Summaries.Select(s => s == Capabilities.Cadence ? new CadenceSource(ComparePlan.Coarse) : s)];

    private static int Run(CommonValues values, ReadySaying[] sayings, SayingPlan plan, Terminal terminal, CancellationToken stop)
    {
        // A person who stops wants what is finished: the files are written all the same.
        using OutputFolder? folder = values.Open(CancellationToken.None);
        SayingsReport report;
        using (var progress = new ProgressLine(Name, terminal, values.Quiet))
        {
            int done = 0;
            report = SayingStudy.Run(sayings, plan, progress.Report, r => progress.Tell($"{r.Saying.Name} done, {++done} of {sayings.Length}"), stop);
        }

        Shown shown = values.ShownFor(UnitFamily.Mixed);
        if (folder is not null)
        {
            SayingsFiles.Write(folder, report, shown, values.Plots);
        }

        terminal.Print(values, stream => SayingsJson.Write(stream, report), () => SayingsText.Build(report, shown));
        if (!report.IsWhole)
        {
            terminal.Error.WriteLine(FormattableString.Invariant($"stopped: {report.Results.Count} of {report.Asked} sayings are finished"));
        }

        return report.IsWhole ? ExitCode.Done : ExitCode.Stopped;
    }
}
