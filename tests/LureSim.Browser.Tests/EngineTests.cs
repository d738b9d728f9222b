using System.Text.Json.Nodes;
using LureSim.Browser.Tests.Support;
using LureSim.Model.Retrieve;
using LureSim.Reports.Page;
using LureSim.Scenarios;
using LureSim.Wire;

namespace LureSim.Browser.Tests;

/// <summary>The solver inside a page, on a page that holds nothing else.</summary>
[Collection(BrowserCollection.Name)]
public sealed class EngineTests(BrowserFixture browser) : IDisposable
{
    // Digits that two ways of computing the same may lose over thousands of steps; between browser and program 1e-11 were seen.
    private const double Digits = 1e-9;

    private const string Ask = "([run, coarse]) => window.solver.run(JSON.parse(run), { coarse }).then(a => JSON.stringify(a), e => e.name + ': ' + e.message)";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("luresim-engine");

    [BrowserTheory]
    [InlineData("large-walker.toml")]
    [InlineData("hollow-weedless.toml")]
    public async Task It_answers_what_the_program_answers(string file)
    {
        Scenario s = Read(file);
        string run = RunJson.Write(s.Setup, s.Retrieve!);
        await using OpenPage page = await browser.Open(file: Trial(PageEngine.Carried.Parts));
        foreach (bool coarse in new[] { true, false })
        {
            Same(JsonNode.Parse(RunAnswer.Answer(run, coarse))!, await Answer(page, run, coarse));
        }

        Assert.Empty(page.Complaints);
        Assert.All(page.Requests, r => Assert.True(r.StartsWith("blob:null/", StringComparison.Ordinal) || r == page.Requests[0], r));
    }

    [BrowserFact]
    public async Task What_is_no_run_is_answered_in_words()
    {
        Scenario s = Read("large-walker.toml");
        string run = RunJson.Write(s.Setup, s.Retrieve!), wrong = run.Replace("\"cadencePerS\":2,", "\"cadencePerS\":99,", StringComparison.Ordinal);
        await using OpenPage page = await browser.Open(file: Trial(PageEngine.Carried.Parts));
        Assert.Equal("CadencePerS is 99; allowed: 0.3 to 6.", (await Answer(page, wrong, true))["failure"]!.GetValue<string>());
        Assert.Equal("This is no run: a set-up and a task in JSON are expected, nothing else.", (await Answer(page, "[]", true))["failure"]!.GetValue<string>());
        Assert.Null((await Answer(page, run, true))["failure"]);
        Assert.Empty(page.Complaints);
    }

    [BrowserFact]
    public async Task A_newer_run_takes_the_place_of_an_older_one()
    {
        Scenario s = Read("large-walker.toml");
        string run = RunJson.Write(s.Setup, s.Retrieve!), slow = RunJson.Write(s.Setup, s.Retrieve! with { DurationS = 60.0, HoldDistance = true });
        await using OpenPage page = await browser.Open(file: Trial(PageEngine.Carried.Parts));
        string[] said = await page.Page.EvaluateAsync<string[]>(
            """
            async ([run, slow]) => {
              const ask = (json, coarse) => window.solver.run(JSON.parse(json), { coarse }).then(a => a.failure ?? a.seconds.toFixed(1), e => e.name);
              const first = await ask(run, true);
              const fine = ask(slow, false), begun = new Promise(done => setTimeout(done, 300));
              await begun;
              return [first, ...await Promise.all([fine, ask(run, true), ask(run, true), ask(run, false)]), await ask(run, false)];
            }
            """,
            new[] { run, slow });
        Assert.Equal(["4.0", "AbortError", "AbortError", "AbortError", "4.0", "4.0"], said);
        Assert.Empty(page.Complaints);
    }

    [BrowserFact]
    public async Task Without_a_solver_the_page_has_words_for_it()
    {
        await using OpenPage page = await browser.Open(file: Trial([]));
        Assert.Contains("This page carries no solver.", await Sleeping(page), StringComparison.Ordinal);
        await using OpenPage old = await browser.Open(file: Trial(PageEngine.Carried.Parts, "delete window.DecompressionStream;"));
        Assert.Contains("This browser cannot run the solver.", await Sleeping(old), StringComparison.Ordinal);
        await using OpenPage broken = await browser.Open(file: Trial([.. PageEngine.Carried.Parts.Select(p => p.Name == "LureSim.Wire.wasm" ? (p.Name, "AAAA") : p)]));
        Assert.StartsWith("Error: The solver did not start (", await Sleeping(broken), StringComparison.Ordinal);
    }

    [Fact]
    public void It_leaves_room_in_six_megabytes() => Assert.InRange(PageEngine.Carried.Parts.Sum(p => p.Base64.Length), 1_000_000, 4_200_000);

    public void Dispose() => _folder.Delete(recursive: true);

    private static async Task<JsonNode> Answer(OpenPage page, string run, bool coarse) =>
        JsonNode.Parse(await page.Page.EvaluateAsync<string>(Ask, new object[] { run, coarse }))!;

    private static Task<string> Sleeping(OpenPage page) => page.Page.EvaluateAsync<string>("() => window.solver.ready.then(() => 'awake', e => String(e))");

    private static void Same(JsonNode program, JsonNode browser)
    {
        Assert.Equal(program["pattern"]!.GetValue<string>(), browser["pattern"]!.GetValue<string>());
        Assert.Equal(program["seconds"]!.GetValue<double>(), browser["seconds"]!.GetValue<double>(), Digits);
        foreach (string key in RetrieveFigures.All.Select(f => f.Key))
        {
            double a = program["summary"]![key]!.GetValue<double>(), b = browser["summary"]![key]!.GetValue<double>();
            Assert.True(Math.Abs(a - b) <= Digits * Math.Max(1e-6, Math.Abs(a)), $"{key}: {a} in the program, {b} in the browser");
        }

        Assert.Equal(program["film"]!["count"]!.GetValue<int>(), browser["film"]!["count"]!.GetValue<int>());
        Assert.Equal(program["film"]!["line"]!["error"]!.GetValue<double>(), browser["film"]!["line"]!["error"]!.GetValue<double>(), 1e-6);
    }

    private static Scenario Read(string file) =>
        ScenarioSource.Read(BrowserFixture.Scenario(file), ["retrieve.duration=4 s"]).Scenario ?? throw new InvalidOperationException(file);

    private string Trial(IEnumerable<(string Name, string Base64)> parts, string before = "")
    {
        using var reader = new StreamReader(typeof(PageEngine).Assembly.GetManifestResourceStream("page/engine.js")!);
        string path = Path.Combine(_folder.FullName, $"{Guid.NewGuid():N}.html");
        File.WriteAllText(path, $"""
            <!doctype html><html lang="en"><meta charset="utf-8"><title>trial</title>
            {string.Concat(parts.Select(p => $"<script type=\"text/plain\" id=\"engine-{p.Name}\">{p.Base64}</script>\n"))}
            <script type="module">{before} {reader.ReadToEnd()} window.solver = embeddedSolver();</script></html>
            """);
        return path;
    }
}
