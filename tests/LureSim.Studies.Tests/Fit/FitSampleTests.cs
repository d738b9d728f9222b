using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>The sample of measurements is invented: this computes it. LURESIM_WRITE_DOCS=1 writes it anew.</summary>
public sealed class FitSampleTests
{
    private static double Truth(FitUnknown unknown) => unknown.Name switch
    {
        "lure.stern_shedding" => -0.9,
        "lure.axial_drag_factor" => 0.5,
        "lure.added_mass_factor" => 0.5,
        "lure.roll_damping" => 0.7,
        "lure.hook_drag" => 0.6,
        "ballast up" => 0.6,
        _ => 0.0,
    };

    private static (string Text, MadeUpPool Pool) Sample()
    {
        var pool = new MadeUpPool(Shipped.File("large-walker.toml"), Truth, 7);
        pool.Tows(true, 3, 0.3, 0.6).Tows(false, 3, 0.3, 0.6).Films(true, 2, 1.0).Films(false, 2, 1.0).Swings(true, 3).Bowl();
        string[] moved =
        [
            .. new FitModel(pool.Source, []).Unknowns.Where(u => pool.Truth[u.Name] != 0.0)
                .Select(u => $"{u.Name} {u.At(pool.Truth[u.Name]).ToString("0.####", CultureInfo.InvariantCulture)}"),
        ];
        string about = $"""
            # An hour in a pool, invented: computed for the lure of large-walker.toml with the numbers below and errors drawn by chance; nobody measured it.
            # True numbers (m, plain numbers): {string.Join(", ", moved)}; all others at the middle of their guess.
            # Written by: LURESIM_WRITE_DOCS=1 dotnet test tests/LureSim.Studies.Tests -c Release --filter FitSample. What the lines mean: docs/fit.md
            title, large walker in a pool (invented)

            """;
        return (about.ReplaceLineEndings("\n") + pool.Text, pool);
    }

    [Fact]
    public void The_sample_is_what_is_computed()
    {
        string path = Shipped.File("pool-measured.csv"), text = Sample().Text;
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Its_fit_finds_most_of_what_it_was_made_with()
    {
        MadeUpPool pool = Sample().Pool;
        var faults = new List<ScenarioFault>();
        FitFile file = FitFile.Read(Shipped.File("pool-measured.csv"), null, faults)!;
        Assert.Empty(faults);
        FitReport report = FitStudy.Run(file, ScenarioSource.Load(file.Scenario, Activities.Pool), [], 0, _ => { }, default).Demand();
        FitEstimate[] told = [.. report.Values.Where(v => v.IsTold)];
        Assert.True(told.Length >= 7, $"{told.Length} told");

        // Four standard deviations each; the bands themselves are tested elsewhere.
        Assert.All(told, v => Assert.InRange((v.Z - pool.Truth[v.Unknown.Name]) / (0.5 * (v.HighZ - v.LowZ) / FitUnknown.Band), -4.0, 4.0));
        Assert.Empty(report.Odd);
    }
}
