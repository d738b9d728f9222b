using System.Text;
using LureSim.Model.Crawl;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Crawl;

/// <summary>The set of files of a crawl.</summary>
public static class CrawlFiles
{
    /// <summary>Writes figures, series, twitches, effective scenario and picture, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="crawl">Crawl, whole or stopped.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CrawlResult crawl, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(crawl);
        folder.Add("crawl.json", stream => WriteJson(stream, crawl, notes, doubt));
        folder.Add("crawl_series.csv", stream => SeriesCsv.Write(stream, crawl.Series));
        folder.Add("crawl_twitches.csv", stream => DoubtFiles.Lines(stream, TwitchLines(crawl.Summary)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [CrawlChart.Build(crawl, notes.Shown)], plots);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots, notes.Shown);
        }

        folder.Commit();
    }

    /// <summary>The figures as JSON: flat snake-case keys with the unit at the end.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="crawl">Crawl.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void WriteJson(Stream stream, CrawlResult crawl, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(crawl);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", crawl.Setup.Title);
            json.WriteString("end", CrawlFigures.Name(crawl.Summary.End));
            json.WriteNumber("twitches", crawl.Summary.Twitches.Count);
            if (crawl.Failure is string failure)
            {
                json.WriteString("failure", failure);
            }

            JsonText.Figures(json, CrawlFigures.All, crawl);
            JsonText.Notes(json, notes, doubt);
        });
    }

    private static IEnumerable<string> TwitchLines(CrawlSummary summary) =>
    [
        "start_s,way_m,pull_peak_N",
        .. summary.Twitches.Select(t => CsvLine.Join(new[] { t.StartS, t.WayM, t.PullPeakN }.Select(CsvLine.Number))),
    ];
}
