using System.Text.Json.Nodes;
using CsCheck;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Wire.Tests;

/// <summary>What a page is answered.</summary>
public sealed class RunAnswerTests
{
    [Fact]
    public void The_figures_are_those_of_the_retrieve()
    {
        Scenario s = Shipped.Read(Shipped.Default, "retrieve.duration=4 s");
        RetrieveSummary summary = s.Run().Summary;
        JsonNode answer = JsonNode.Parse(RunAnswer.Answer(RunJson.Write(s.Setup, s.Retrieve!), coarse: false))!;
        Assert.Equal(["failure", "seconds", "pattern", "warm_up_twitches", "summary", "film", "remarks"], answer.AsObject().Select(m => m.Key));
        Assert.Null(answer["failure"]);
        Assert.Equal(4.0, answer["seconds"]!.GetValue<double>(), 9);
        Assert.Equal(RetrieveFigures.Name(summary.Pattern), answer["pattern"]!.GetValue<string>());
        Assert.Equal(RetrieveFigures.All.Select(f => f.Key), answer["summary"]!.AsObject().Select(m => m.Key));
        Assert.All(RetrieveFigures.All, f => Assert.Equal(f.Value(summary), answer["summary"]![f.Key]!.GetValue<double>()));
        Assert.Empty(answer["remarks"]!.AsArray());
    }

    [Fact]
    public void A_coarse_answer_says_so()
    {
        Scenario s = Shipped.Read(Shipped.Default, "retrieve.duration=4 s");
        var run = new RunInput(s.Setup, s.Retrieve!);
        RunAnswer coarse = RunAnswer.Of(RunJson.Write(s.Setup, s.Retrieve!), coarse: true);
        Assert.Equal((CoarseRun.Nodes, CoarseRun.StepS), (coarse.Result!.Task.Solver.Nodes, coarse.Result.Task.Solver.StepS));
        Assert.Contains("20 pieces", Assert.Single(coarse.Remarks), StringComparison.Ordinal);
        Assert.Equal(RetrieveRun.Run(run.Setup, CoarseRun.Of(run).Task).Demand().Summary, coarse.Result.Summary);
        Assert.Equal(CoarseRun.Of(run), CoarseRun.Of(CoarseRun.Of(run)));
        Assert.Empty(CoarseRun.Remarks(CoarseRun.Of(run)));
    }

    [Fact]
    public void A_run_that_fails_is_answered_with_what_there_is()
    {
        Scenario s = Shipped.Read(Shipped.Default, "retrieve.distance=4 m", "retrieve.duration=30 s");
        JsonNode answer = JsonNode.Parse(RunAnswer.Answer(RunJson.Write(s.Setup, s.Retrieve!), coarse: true))!;
        Assert.Contains("reached the rod", answer["failure"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.InRange(answer["seconds"]!.GetValue<double>(), 0.5, 29.0);
        Assert.True(answer["film"]!["count"]!.GetValue<int>() > 10);
    }

    [Fact]
    public void A_lure_that_sinks_is_answered_in_words()
    {
        Scenario s = Shipped.Read(Shipped.Default);
        JsonNode answer = JsonNode.Parse(RunAnswer.Answer(RunJson.Write(s.Setup with { Lure = s.Setup.Lure with { MassKg = 0.5 } }, s.Retrieve!), coarse: true))!;
        Assert.Contains("sink", answer["failure"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(answer["film"]);
        Assert.Null(answer["summary"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[[[[]]]]")]
    [InlineData("\u0000")]
    [InlineData("\"<script>alert(1)</script>\"")]
    public void What_is_no_run_is_answered_in_words(string json)
    {
        JsonNode answer = JsonNode.Parse(RunAnswer.Answer(json, coarse: true))!;
        string words = answer["failure"]!.GetValue<string>();
        Assert.EndsWith(".", words, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', words);
        Assert.Null(answer["seconds"]);
    }

    [Fact]
    public void Damaged_runs_are_answered_in_words_or_as_the_run_they_are()
    {
        string whole = RunJsonTests.Json().Replace("\"durationS\":15", "\"durationS\":0.5", StringComparison.Ordinal);
        int refused = 0;
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Int[0, 3], Gen.Char.AlphaNumeric, (at, kind, put) => kind switch
        {
            0 => whole.Remove(at, 1),
            1 => whole.Insert(at, put.ToString()),
            2 => whole[..at],
            _ => whole[..at] + put + whole[(at + 1)..],
        }).Sample(
            json =>
            {
                JsonNode answer = JsonNode.Parse(RunAnswer.Answer(json, coarse: true))!;
                if (answer["failure"] is JsonNode words)
                {
                    Assert.DoesNotContain('\n', words.GetValue<string>());
                    Interlocked.Increment(ref refused);
                }
                else
                {
                    Assert.NotNull(answer["film"]);
                }
            },
            iter: 300,
            threads: 2);
        Assert.True(refused > 100, $"{refused}");
    }

    [Fact]
    public void What_is_out_of_range_is_said_in_one_line()
    {
        Scenario s = Shipped.Read(Shipped.Default);
        string json = RunJson.Write(s.Setup, s.Retrieve! with { CadencePerS = 2.25 }).Replace(":2.25", ":99", StringComparison.Ordinal);
        Assert.Equal("CadencePerS is 99; allowed: 0.3 to 6.", JsonNode.Parse(RunAnswer.Answer(json, coarse: false))!["failure"]!.GetValue<string>());
    }

    [Fact]
    public void A_wish_to_stop_ends_it()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => RunAnswer.Answer(RunJsonTests.Json(), coarse: true, new(Stop: stop.Token)));
    }
}
