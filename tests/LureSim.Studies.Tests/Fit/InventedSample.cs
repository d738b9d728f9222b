using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>A shipped sample of measurements, invented: computed for a lure whose numbers its head tells. LURESIM_WRITE_DOCS=1 writes it anew.</summary>
/// <param name="Name">File.</param>
/// <param name="Title">What it is called.</param>
/// <param name="What">What was done, at the start of a sentence.</param>
/// <param name="Pool">Where it was computed.</param>
/// <param name="Besides">What is true besides the numbers; or nothing.</param>
internal sealed record InventedSample(string Name, string Title, string What, MadeUpPool Pool, string Besides = "")
{
    private string Text
    {
        get
        {
            string[] moved =
            [
                .. new FitModel(Pool.Source, [], null, Pool.Truth.ContainsKey("retrieve.stroke")).Unknowns.Where(u => Pool.Truth[u.Name] != 0.0)
                    .Select(u => $"{u.Name} {u.At(Pool.Truth[u.Name]).ToString("0.####", CultureInfo.InvariantCulture)}"),
            ];
            string about = $"""
                # {What}, invented: computed for the lure of large-walker.toml with the numbers below and errors drawn by chance; nobody measured it.
                # True numbers (m, plain numbers): {string.Join(", ", moved)}; all others at the middle of their guess{Besides}.
                # Written by: LURESIM_WRITE_DOCS=1 dotnet test tests/LureSim.Studies.Tests -c Release --filter FitSample. What the lines mean: docs/fit.md
                title, {Title} (invented)

                """;
            return about.ReplaceLineEndings("\n") + Pool.Text;
        }
    }

    /// <summary>The file holds what is computed.</summary>
    public void IsComputed()
    {
        string path = Shipped.File(Name), text = Text;
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    /// <summary>What its fit tells, each within four standard deviations of the truth; the bands themselves are tested elsewhere.</summary>
    public IReadOnlyList<FitEstimate> Told()
    {
        var faults = new List<ScenarioFault>();
        FitFile file = FitFile.Read(Shipped.File(Name), null, faults)!;
        Assert.Empty(faults);
        FitReport report = FitStudy.Run(file, ScenarioSource.Load(file.Scenario, FitStudy.Asked(file)), [], 0, _ => { }, default).Demand();
        FitEstimate[] told = [.. report.Values.Where(v => v.IsTold)];
        Assert.All(told, v => Assert.InRange((v.Z - Pool.Truth[v.Unknown.Name]) / (0.5 * (v.HighZ - v.LowZ) / FitUnknown.Band), -4.0, 4.0));
        Assert.Empty(report.Odd);
        return told;
    }
}
