using System.Globalization;
using System.Text.Json.Nodes;
using CsCheck;
using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Wire.Tests;

/// <summary>A run survives being written and read, bit for bit.</summary>
public sealed class RunJsonTests
{
    public static TheoryData<string> Files => [.. Shipped.Files];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_shipped_run_comes_back_the_same(string file)
    {
        Scenario s = Shipped.Read(file);
        Assert.Equal(new RunInput(s.Setup, s.Retrieve!), RunJson.Read(RunJson.Write(s.Setup, s.Retrieve!)));
    }

    [Fact]
    public void Random_runs_come_back_the_same()
    {
        int read = 0;
        RandomScenario.Any.Sample(
            random =>
            {
                if (random.Resolve() is { Setup: { } setup, Retrieve: { } task })
                {
                    string json = RunJson.Write(setup, task);
                    RunInput back = RunJson.Read(json);
                    Assert.Equal(new RunInput(setup, task), back);
                    Assert.Equal(json, RunJson.Write(back.Setup, back.Task));
                    Interlocked.Increment(ref read);
                }
            },
            iter: 400,
            threads: 2);
        Assert.True(read > 100, $"only {read} of the random scenarios were valid");
    }

    [Fact]
    public void Any_double_keeps_its_bits() => Gen.Double[-0.35, 0.35].Sample(
        bearing =>
        {
            Scenario s = Shipped.Read(Shipped.Default);
            RunInput back = RunJson.Read(RunJson.Write(s.Setup with { Angler = s.Setup.Angler with { RodElevationRad = bearing } }, s.Retrieve!));
            Assert.Equal(BitConverter.DoubleToInt64Bits(bearing), BitConverter.DoubleToInt64Bits(back.Setup.Angler.RodElevationRad));
        },
        iter: 1000);

    [Theory]
    [MemberData(nameof(Files))]
    public void A_run_from_JSON_gives_the_bits_of_the_run_from_the_file(string file)
    {
        Scenario s = Shipped.Read(file, "retrieve.duration=3 s");
        RunInput back = RunJson.Read(RunJson.Write(s.Setup, s.Retrieve!));
        RetrieveResult a = s.Run(), b = RetrieveRun.Run(back.Setup, back.Task).DemandAny();
        Assert.Equal(a.Summary, b.Summary);
        foreach ((Channel x, Channel y) in a.Series.Channels.Zip(b.Series.Channels))
        {
            Assert.Equal(x.Values, y.Values);
        }
    }

    [Fact]
    public void What_is_no_default_is_kept()
    {
        // Members that are set beside the constructor are the ones a reader may forget.
        Scenario s = Shipped.Read(Shipped.Default);
        var run = new RunInput(
            s.Setup with { Hands = s.Setup.Hands with { Style = CastingStyle.OneHanded, Skill = CastingSkill.Expert }, Seed = ulong.MaxValue },
            s.Retrieve! with { EndsWhenSettled = true, StartTakeUpMS = 0.4, Solver = new(7, 1e-4, 2e-3) });
        Assert.Equal(run, RunJson.Read(RunJson.Write(run.Setup, run.Task)));
    }

    [Theory]
    [InlineData("", "This is no run")]
    [InlineData("null", "no run but null")]
    [InlineData("[]", "This is no run")]
    [InlineData("{}", "This is no run")]
    [InlineData("{\"setup\":{}}", "setup")]
    [InlineData("3", "This is no run")]
    [InlineData("{\"setup\":null,\"task\":null}", "setup")]
    public void What_is_no_run_is_refused_in_words(string json, string words) =>
        Assert.Contains(words, Assert.Throws<FormatException>(() => RunJson.Read(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Every_member_is_demanded_and_no_other_allowed()
    {
        JsonNode whole = JsonNode.Parse(Json())!;
        int members = 0;
        List<string> missed = [];
        foreach (JsonObject at in Objects(whole).ToArray())
        {
            foreach (string name in at.Select(m => m.Key).ToArray())
            {
                JsonNode? value = at[name];
                at.Remove(name);
                if (Record.Exception(() => RunJson.Read(whole.ToJsonString())) is not FormatException)
                {
                    missed.Add(name);
                }

                at[name] = value;
                members++;
            }

            at["colour"] = "red";
            if (Record.Exception(() => RunJson.Read(whole.ToJsonString())) is not FormatException)
            {
                missed.Add(at.GetPath() + ".colour");
            }

            at.Remove("colour");
        }

        Assert.Empty(missed);
        Assert.True(members > 100, $"{members}");
        RunJson.Read(whole.ToJsonString());
    }

    [Theory]
    [InlineData("/task/cadencePerS", "1e9", "CadencePerS")]
    [InlineData("/setup/rod/lengthM", "99", "Rod.LengthM")]
    [InlineData("/setup/lure/ballast/0/xm", "0.19", "b.XM")]
    [InlineData("/task/hull", "\"Sideways\"", "task.hull")]
    [InlineData("/task/hull", "7", "hull")]
    [InlineData("/task/solver/nodes", "1.5", "nodes")]
    [InlineData("/setup/water", "null", "water")]
    [InlineData("/setup/lure/hooks", "[null]", "hooks")]
    [InlineData("/setup/seed", "1", "seed")]
    public void What_is_out_of_range_is_named(string place, string value, string named)
    {
        using var json = System.Text.Json.JsonDocument.Parse(value);
        string changed = new RunPatch([new(place, json.RootElement.Clone())]).ApplyTo(Json());
        Exception e = Assert.ThrowsAny<Exception>(() => RunJson.Read(changed));
        Assert.True(e is FormatException or ArgumentException, e.ToString());
        Assert.Contains(named, e.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_run_with_faults_is_not_written()
    {
        Scenario s = Shipped.Read(Shipped.Default);
        Assert.ThrowsAny<ArgumentException>(() => RunJson.Write(s.Setup, s.Retrieve! with { CadencePerS = double.NaN }));
    }

    [Fact]
    public void The_culture_of_the_machine_does_not_matter()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string plain = Json();
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(plain, Json());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    internal static string Json()
    {
        Scenario s = Shipped.Read(Shipped.Default);
        return RunJson.Write(s.Setup, s.Retrieve!);
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(m => Objects(m.Value)).Prepend(o),
        JsonArray a => a.SelectMany(Objects),
        _ => [],
    };
}
