using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>The sample of a walk is invented: this computes it. LURESIM_WRITE_DOCS=1 writes it anew.</summary>
public sealed class FitSampleOfWalkTests
{
    private static double Truth(FitUnknown unknown) => unknown.Name switch
    {
        "lure.stern_shedding" => 0.4,
        "lure.hook_drag" => 0.5,
        "retrieve.stroke" => 0.7,
        "retrieve.slack" => 0.4,
        _ => 0.0,
    };

    private static (string Text, MadeUpPool Pool) Sample()
    {
        var pool = new MadeUpPool(Shipped.File("large-walker.toml"), Truth, 11, true);
        pool.Films(true, 2, 1.0).Walks(1, 6, 1.5);
        string[] moved =
        [
            .. new FitModel(pool.Source, [], null, true).Unknowns.Where(u => pool.Truth[u.Name] != 0.0)
                .Select(u => $"{u.Name} {u.At(pool.Truth[u.Name]).ToString("0.####", CultureInfo.InvariantCulture)}"),
        ];
        string about = $"""
            # Two pushes in a pool and a walk filmed from a bridge, invented: computed for the lure of large-walker.toml with the numbers below and errors drawn by chance; nobody measured it.
            # True numbers (m, plain numbers): {string.Join(", ", moved)}; all others at the middle of their guess; 1.5 twitches a second.
            # Written by: LURESIM_WRITE_DOCS=1 dotnet test tests/LureSim.Studies.Tests -c Release --filter FitSample. What the lines mean: docs/fit.md
            title, large walker under twitches (invented)

            """;
        return (about.ReplaceLineEndings("\n") + pool.Text, pool);
    }

    [Fact]
    public void The_sample_is_what_is_computed()
    {
        string path = Shipped.File("walk-measured.csv"), text = Sample().Text;
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Its_fit_finds_the_hand_that_it_was_made_with()
    {
        MadeUpPool pool = Sample().Pool;
        var faults = new List<ScenarioFault>();
        FitFile file = FitFile.Read(Shipped.File("walk-measured.csv"), null, faults)!;
        Assert.Empty(faults);
        FitReport report = FitStudy.Run(file, ScenarioSource.Load(file.Scenario, FitStudy.Asked(file)), [], 0, _ => { }, default).Demand();
        FitEstimate[] told = [.. report.Values.Where(v => v.IsTold)];
        Assert.Contains(told, v => v.Unknown.Name == "retrieve.stroke");

        // Four standard deviations each; the bands themselves are tested elsewhere.
        Assert.All(told, v => Assert.InRange((v.Z - pool.Truth[v.Unknown.Name]) / (0.5 * (v.HighZ - v.LowZ) / FitUnknown.Band), -4.0, 4.0));
        Assert.Empty(report.Odd);
    }
}
