using LureSim.Scenarios.Sayings;

namespace LureSim.Scenarios.Tests.Sayings;

public sealed class SayingReaderTests
{
    private const string Whole = """
        says = "Longer casts further."
        why = "A lever."
        told = { for = 9, against = 1 }
        base = "../small-walker.toml"
        [[where]]
        name = "near"
        set = ["retrieve.distance=8 m"]
        [[where]]
        name = "large"
        base = "../large-walker.toml"
        [[test]]
        command = "cast"
        figure = "distance_mean_m"
        less = { name = "short", rod = "6 ft" }
        more = { name = "long", rod = "7 ft", set = ["rod.action=fast"] }
        claim = "more is higher"
        by = "3 ft"
        """;

    private static (Saying? Saying, List<ScenarioFault> Faults) Read(string text)
    {
        var faults = new List<ScenarioFault>();
        return (SayingReader.Read(text, "my/longer.toml", "my", faults), faults);
    }

    [Fact]
    public void A_whole_file_is_read_with_the_place_of_every_override()
    {
        (Saying? saying, List<ScenarioFault> faults) = Read(Whole);
        Assert.Empty(faults);
        Assert.Equal(("longer", "Longer casts further.", new ToldBy(9, 1, "")), (saying!.Name, saying.Says, saying.Told));
        Assert.Equal(["../small-walker.toml", "../large-walker.toml"], saying.Places.Select(p => p.Base.Text));
        Assert.Equal(new SaidText("retrieve.distance=8 m", "my/longer.toml(7,8)"), saying.Places[0].Set[0]);
        SayingTest test = Assert.Single(saying.Tests);
        Assert.Equal(("7 ft", "rod.action=fast"), (test.Sides[1].Rod!.Text, test.Sides[1].Set[0].Text));
        Assert.Equal(ClaimKind.Higher, test.Claim.Kind);
        Assert.Equal(0.9144, test.Claim.Notice(20.0), 12);
    }

    [Fact]
    public void A_list_of_values_is_a_list_of_sides()
    {
        SayingTest test = Read("""
            says = "Slower is wider."
            why = "Time."
            told = "common practice, no source"
            base = "small-walker.toml"
            [[test]]
            command = "retrieve"
            words = ["alternating"]
            key = "retrieve.cadence"
            values = ["1 /s", "2 /s", "3 /s"]
            claim = "falls"
            starts = 3
            """).Saying!.Tests[0];
        Assert.Equal(["retrieve.cadence=1 /s", "retrieve.cadence=2 /s", "retrieve.cadence=3 /s"], test.Sides.Select(s => s.Set[0].Text));
        Assert.Equal((3, true, Claim.UsualNotice), (test.Starts, test.IsOfWords, test.Claim.Notice(0.0)));
    }

    // Units are those of the figure's key: 2 lb in newtons, 10 deg in degrees, a plain number where the key names none.
    [Theory]
    [InlineData("nose_down_load_N", "at most 2 lb", 8.896443230521)]
    [InlineData("sheer_deg", "at most 10 deg", 10.0)]
    [InlineData("width_m", "at least 1 in", 0.0254)]
    [InlineData("margin_hook_hold", "at least 1.5", 1.5)]
    [InlineData("tangle_share", "at most 25 %", 0.25)]
    [InlineData("spool_peak_rpm", "at most 9000", 9000.0)]
    public void A_limit_is_read_in_the_unit_of_its_figure(string figure, string claim, double limit)
    {
        (Saying? saying, List<ScenarioFault> faults) = Read($"""
            says = "A."
            why = "B."
            told = "common practice, no source"
            base = "small-walker.toml"
            [[test]]
            command = "x"
            figure = "{figure}"
            claim = "{claim}"
            """);
        Assert.Empty(faults);
        Assert.Equal(limit, saying!.Tests[0].Claim.Limit, 9);
    }

    [Theory]
    [InlineData("says = \"Longer casts further.\"", "", "says: missing")]
    [InlineData("told = { for = 9, against = 1 }", "told = { for = 0 }", "my/longer.toml(3,8): told: no page at all")]
    [InlineData("told = { for = 9, against = 1 }", "", "told: missing")]
    [InlineData("why = ", "whi = ", "my/longer.toml(2,1): whi: unknown key; did you mean why?")]
    [InlineData("why = \"A lever.\"", "why = \"A lever.\"\nverdict = \"holds\"", "verdict: unknown key")]
    [InlineData("name = \"large\"", "name = \"near\"", "where.name: \"near\" is given twice")]
    [InlineData("\"more is higher\"", "\"is better\"", "my/longer.toml(16,9): test.claim: \"is better\" is none; due: more is higher")]
    [InlineData("\"more is higher\"", "\"rises\"", "test.claim: \"rises\" goes with a list of values")]
    [InlineData("\"more is higher\"", "\"at least 3 m\"", "test.by: goes with claims that compare")]
    [InlineData("by = \"3 ft\"", "by = \"3\"", "test.by: \"3\": it has no unit")]
    [InlineData("by = \"3 ft\"", "by = \"-3 ft\"", "test.by: \"-3 ft\" is below zero")]
    [InlineData("less = { name = \"short\", rod = \"6 ft\" }", "", "test.less: missing; less and more go together")]
    [InlineData("by = \"3 ft\"", "starts = 99", "test.starts: 99; a whole number is due, 1 to 9")]
    [InlineData("set = [\"retrieve.distance=8 m\"]", "set = [\"retrieve.distance\"]", "where.set: \"retrieve.distance\": key=value is due")]
    [InlineData("figure = \"distance_mean_m\"", "figure = \"distance_mean_m\"\nwords = [\"a\"]", "test.figure: goes with numbers")]
    [InlineData("[[test]]", "[test]", "test: a table; double brackets are due; write [[test]]")]
    [InlineData("base = \"../small-walker.toml\"", "", "where.base: missing")]
    [InlineData("command = \"cast\"", "command = cast", "my/longer.toml(12,")]
    public void What_is_wrong_is_told_with_its_place(string old, string broken, string told)
    {
        (Saying? saying, List<ScenarioFault> faults) = Read(Whole.Replace(old, broken, StringComparison.Ordinal));
        Assert.Null(saying);
        Assert.Contains(faults, f => f.ToString().Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_shipped_saying_reads_and_says_who_says_so()
    {
        Assert.True(SayingLibrary.Names.Count >= 8);
        foreach (string name in SayingLibrary.Names)
        {
            var faults = new List<ScenarioFault>();
            Saying? saying = SayingLibrary.Read(name, faults);
            Assert.Empty(faults);
            Assert.Equal(name, saying!.Name);
            Assert.True(saying.Told.For + saying.Told.Against > 0 || saying.Told.Words == "common practice, no source", name);
            Assert.InRange(saying.Says.Length, 10, 140);
        }
    }

    // A file says what is compared, never what came out.
    [Fact]
    public void No_shipped_saying_holds_an_outcome()
    {
        string[] outcomes = ["holds only", "does not hold", "cannot be told", "verdict", "outcome", "is true", "is false", "is wrong", "is right", "myth", "confirmed", "refuted"];
        foreach (Saying saying in SayingLibrary.Names.Select(n => SayingLibrary.Read(n, [])!))
        {
            string[] texts = [saying.Says, saying.Why, saying.Told.Words, .. saying.Places.Select(p => p.Name), .. saying.Tests.Select(t => t.Name), .. saying.Tests.SelectMany(t => t.Sides).Select(s => s.Name)];
            Assert.All(texts, t => Assert.DoesNotContain(outcomes, o => $" {t} ".Contains($" {o} ", StringComparison.OrdinalIgnoreCase)));
        }
    }

    [Theory]
    [InlineData("slack-is-neded", "did you mean slack-is-needed?")]
    [InlineData("slack", "did you mean slack-is-needed?")]
    [InlineData("elephants", "sayings --list shows all")]
    [InlineData("nowhere.toml", "there is no such file")]
    public void A_name_that_is_none_gets_a_suggestion(string name, string told)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(SayingLibrary.Read(name, faults));
        Assert.Contains(told, Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    // The program's own scenarios, wherever it is started; a chain of bases too.
    [Fact]
    public void Shipped_sayings_stand_on_shipped_scenarios()
    {
        ScenarioSource nylon = ScenarioSource.Shipped("small-walker-nylon.toml", Activities.All);
        Assert.True(nylon.Resolve().IsValid);
        Assert.Contains("did you mean small-walker.toml?", Assert.Single(ScenarioSource.Shipped("smal-walker.toml", Activities.All).Resolve().Errors).Message, StringComparison.Ordinal);
    }
}
