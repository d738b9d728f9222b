using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Cli.Sayings;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Scenarios;
using LureSim.Studies.Page;
using LureSim.Studies.Sayings;

namespace LureSim.Cli.Page;

/// <summary><c>page</c>: one HTML file that tells, plays and recomputes a retrieve.</summary>
internal static class PageCommand
{
    private const string Name = "page";

    /// <summary>The capability: a command without a summary of its own.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var files = new Argument<string[]>("files") { Description = $"Scenario files (TOML): one, or up to {PagePlan.MostFiles} side by side.", Arity = ArgumentArity.OneOrMore };
        var quick = new Option<bool>("--quick") { Description = "Leave out the search over rhythms, which takes most of the time, and what changes of the lure would do." };
        var sayings = new Option<string?>("--sayings") { Description = "Put sayings to the test on the page: names with commas between, or all (minutes); luresim sayings --list names them.", HelpName = "names" };
        var command = new Command(Name, "Write one HTML file to hand out: the retrieve in motion, why it walks, which rhythms, what tackle changes, how the lure floats, the cast.") { files };
        foreach (Option option in (Option[])[options.Set, options.Out, options.Units, options.Quiet, quick, sayings])
        {
            command.Add(option);
        }

        options.CheckUnits();
        command.SetAction(parsed =>
        {
            string[] given = parsed.GetRequiredValue(files);
            string? folder = parsed.GetValue(options.Out);
            string own = Path.Combine("out", Path.GetFileNameWithoutExtension(given[0]), Name);
            var values = new CommonValues(given[0], parsed.GetValue(options.Set) ?? [], folder ?? own, own, Name, false, Reports.Kit.Drawing.PlotFormat.None, parsed.GetValue(options.Quiet), options.UnitsOf(parsed));
            PageFile[] read = [.. given.Take(PagePlan.MostFiles).Select(f => new PageFile(f, values.Overrides))];
            List<ScenarioFault> faults = [.. read.SelectMany(f => f.Here.Errors)];
            if (given.Length > PagePlan.MostFiles)
            {
                faults.Add(new(Name, "", $"{given.Length} files are too many for one page; at most {PagePlan.MostFiles}"));
            }

            if (folder?.EndsWith(".html", StringComparison.OrdinalIgnoreCase) == true)
            {
                faults.Add(new("--out", "", $"'{folder}' looks like a file; a folder is due, and the page in it is called {PageName(given[0])}"));
            }

            ReadySaying[] asked = Asked(parsed.GetValue(sayings), faults);
            terminal.Tell(faults.Distinct());
            return faults.Count > 0 ? ExitCode.BadInput : Run(values, read, !parsed.GetValue(quick), asked, terminal, stop);
        });
        return command;
    }

    private static ReadySaying[] Asked(string? names, List<ScenarioFault> faults) => names is null ? []
        : SayingsCommand.Ready(SayingsCommand.Named(names.Trim() == "all" ? [] : names.Split(',', StringSplitOptions.TrimEntries), faults), faults);

    private static int Run(CommonValues values, PageFile[] files, bool withRhythms, ReadySaying[] sayings, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder folder = values.Open(stop)!;
        PageResult result;
        using (var progress = new ProgressLine(Name, terminal, values.Quiet))
        {
            result = PageStudy.Run(files, new PagePlan(withRhythms, WithBuilding: withRhythms), progress.Report, stop);
        }

        if (sayings.Length > 0)
        {
            result = result with { Sayings = PutToTest(sayings, values.Quiet, terminal, stop) };
        }

        byte[] page = PageBuilder.Build(result, values.ShownFor(files[0].Here), CommandLine(values, files, withRhythms, sayings), PageEngine.Carried);
        string name = PageName(values.File);
        folder.Add(name, page);
        folder.Commit();
        if (!values.Quiet)
        {
            terminal.Out.Write($"Page: {Path.Combine(values.Folder!, name)} ({Trade.Digits(page.Length / 1e6)} MB). Open it in a browser; print it for a handout.\n{Closing.Caution}\n");
        }

        string? failure = result.Cases.Select(c => c.Own.Failure).FirstOrDefault(f => f is not null);
        if (failure is not null)
        {
            terminal.Error.WriteLine($"the model could not finish; the page says so: {failure}");
        }

        return failure is null ? ExitCode.Done : ExitCode.NotFinished;
    }

    // A page with half of its sayings would not say so: who stops gets none.
    private static SayingsReport PutToTest(ReadySaying[] sayings, bool quiet, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("sayings", terminal, quiet);
        SayingsReport report = SayingStudy.Run(sayings, new SayingPlan(), progress.Report, null, stop);
        stop.ThrowIfCancellationRequested();
        return report;
    }

    private static string PageName(string file) => Path.GetFileNameWithoutExtension(file) + ".html";

    private static string CommandLine(CommonValues values, PageFile[] files, bool withRhythms, ReadySaying[] sayings) => string.Join(' ', (string[])
    [
        "luresim", Name, .. files.Select(f => ShellWord.Of(f.Source.Name)), .. values.Overrides.Select(o => $"--set {ShellWord.Of(o)}"),
        .. values.Units is UnitChoice units ? [$"--units {units.ToString().ToLowerInvariant()}"] : Array.Empty<string>(), .. withRhythms ? Array.Empty<string>() : ["--quick"],
        .. sayings.Length == 0 ? Array.Empty<string>() : ["--sayings", ShellWord.Of(string.Join(',', sayings.Select(s => s.Saying.Name)))],
    ]);
}
