using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Wire.Tests;

/// <summary>What a slider does: differences of two runs, put into the first, give the second.</summary>
public sealed class RunPatchTests
{
    [Fact]
    public void Differences_of_random_runs_lead_from_one_to_the_other()
    {
        int done = 0;
        Gen.Select(RandomScenario.Any, RandomScenario.Any).Sample(
            (a, b) =>
            {
                if (a.Resolve() is { Setup: { } setup, Retrieve: { } task } && b.Resolve() is { Setup: { } other, Retrieve: { } otherTask })
                {
                    string from = RunJson.Write(setup, task), to = RunJson.Write(other, otherTask);
                    string there = RunPatch.Between(from, to).ApplyTo(from);
                    Assert.Equal(new RunInput(other, otherTask), RunJson.Read(there));
                    Interlocked.Increment(ref done);
                }
            },
            iter: 200,
            threads: 2);
        Assert.True(done > 20, $"{done}");
    }

    [Fact]
    public void A_slider_of_one_key_is_one_value()
    {
        Scenario a = Shipped.Read(Shipped.Default), b = Shipped.Read(Shipped.Default, "retrieve.cadence=3 /s");
        RunPatch patch = RunPatch.Between(RunJson.Write(a.Setup, a.Retrieve!), RunJson.Write(b.Setup, b.Retrieve!));
        Assert.Equal("/task/cadencePerS", Assert.Single(patch.Values).Key);
        Assert.Equal("""{"/task/cadencePerS":3}""", Text(patch));
    }

    [Theory]
    [InlineData("""{"a":1,"b":[1,2]}""", """{"a":1,"b":[1,2]}""", "{}")]
    [InlineData("""{"a":1,"b":[1,2]}""", """{"b":[1,3],"a":1}""", """{"/b/1":3}""")]
    [InlineData("""{"a":[1,2]}""", """{"a":[1,2,3]}""", """{"/a":[1,2,3]}""")]
    [InlineData("""{"a":null}""", """{"a":{"b":1}}""", """{"/a":{"b":1}}""")]
    [InlineData("""{"a":{"b":1}}""", """{"a":null}""", """{"/a":null}""")]
    [InlineData("""{"a":{"b":1}}""", """{"a":{"c":1}}""", """{"/a":{"c":1}}""")]
    [InlineData("""{"x/y":{"~":1}}""", """{"x/y":{"~":2}}""", """{"/x~1y/~0":2}""")]
    [InlineData("""{"a":0.1}""", """{"a":1e-1}""", "{}")]
    [InlineData("1", "2", """{"":2}""")]
    [InlineData("{}", "null", """{"":null}""")]
    public void Differences_are_these(string from, string to, string patch)
    {
        RunPatch found = RunPatch.Between(from, to);
        Assert.Equal(patch, Text(found));
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(to), JsonNode.Parse(found.ApplyTo(from))));
    }

    [Theory]
    [InlineData("/b")]
    [InlineData("/a/2")]
    [InlineData("/a/-1")]
    [InlineData("/a/0/x")]
    [InlineData("a")]
    [InlineData("/a/01x")]
    public void A_place_that_is_not_there_is_refused(string place)
    {
        using var one = JsonDocument.Parse("1");
        var patch = new RunPatch([new(place, one.RootElement.Clone())]);
        Assert.Throws<FormatException>(() => patch.ApplyTo("""{"a":[1,2]}"""));
    }

    [Fact]
    public void What_is_no_JSON_is_refused() => Assert.Throws<FormatException>(() => RunPatch.Between("{", "{}"));

    private static string Text(RunPatch patch)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            patch.WriteTo(json);
        }

        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
