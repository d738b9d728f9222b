using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Scenarios;
using LureSim.Studies.Across;
using LureSim.Studies.Cast;
using LureSim.Studies.Figures;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

/// <summary>Which set-ups are cast, what they are compared with, and that nothing else that is listed enters: made-up casts, real draws of the guesses.</summary>
public sealed class CastVariantsTests
{
    private const int Draws = 20;

    private static readonly ScenarioSource Source = ScenarioSource.FromText(
        """
        [rod]
        length = "6 ft 8 in"
        power = "medium"
        [line]
        material = "braid"
        label = "30 lb"
        [lure]
        shape = "cigar"
        length = "90 mm"
        diameter = "17.5 mm"
        mass = "10 g"
        """,
        asked: Activities.Cast);

    private static readonly string[] Lengths = ["6 ft 6 in", "7 ft 4 in", "7 ft", "9 ft", "6 ft", "6 ft 8 in"];

    [Theory]
    [InlineData("rod.length")]
    [InlineData("rod-length")]
    public void Two_set_ups_get_the_same_verdict_to_the_last_bit_whatever_else_is_listed_and_in_any_order(string what)
    {
        string[][] lists =
        [
            ["6 ft 6 in", "7 ft 4 in"], ["7 ft 4 in", "6 ft 6 in"], ["6 ft 6 in", "7 ft", "7 ft 4 in"], ["7 ft 4 in", "6 ft 8 in", "6 ft 6 in"],
            Lengths, [.. Lengths.Reverse()],
        ];
        CastPair[] pairs = [.. lists.Select(list => Forward(Cast(Make([Of(what, list)])), "6 ft 6 in", "7 ft 4 in"))];
        Assert.True(pairs[0].GainM > 0.0 && pairs[0].Share is > 0.03 and < 0.999);
        Assert.All(pairs, p => Assert.Equal((pairs[0].GainM, pairs[0].Share, pairs[0].Verdict, pairs[0].Casts), (p.GainM, p.Share, p.Verdict, p.Casts)));
        Assert.All(pairs, p => Assert.Equal(pairs[0].Ratios, p.Ratios));
    }

    // The failure that this replaces: what a row is compared with must not be whoever stands before it.
    [Fact]
    public void A_row_is_compared_with_the_same_reference_whatever_stands_before_it()
    {
        CastAcross two = Cast(Make([Of("rod.length", ["6 ft 6 in", "7 ft 4 in"])])), three = Cast(Make([Of("rod.length", ["6 ft 6 in", "7 ft", "7 ft 4 in"])]));
        Assert.Equal((two.Against(2)!.From, two.Against(2)!.GainM, two.Against(2)!.Share), (three.Against(3)!.From, three.Against(3)!.GainM, three.Against(3)!.Share));
    }

    [Fact]
    public void The_gain_is_the_difference_of_the_means_of_all_rows_and_pairs()
    {
        CastAcross result = Cast(Make([Of("rod-length", Lengths)]));
        Dictionary<string, double> means = result.Cases.Select((c, i) => (c.Label, Mean: result.MeanM(i))).ToDictionary(c => c.Label, c => c.Mean);
        Assert.All(result.Pairs(), p => Assert.Equal(means[p.To] - means[p.From], p.GainM, 1e-9));
        Assert.Equal(15, result.Pairs().Count());
    }

    [Theory]
    [InlineData("rod.length", "7 ft,80 in,6 ft", "7 ft|80 in|6 ft", "80 in")]
    [InlineData("rod.length", "6 ft,7 ft", "6 ft|6 ft 8 in|7 ft", "6 ft 8 in")]
    [InlineData("rod.length", "7 ft,6 ft", "6 ft 8 in|7 ft|6 ft", "6 ft 8 in")]
    [InlineData("line.label", "30 lb,20 lb", "30 lb|20 lb", "30 lb")]
    [InlineData("line.label", "50 lb,20 lb", "30 lb|50 lb|20 lb", "30 lb")]
    [InlineData("line.material", "nylon,fluorocarbon", "braid|nylon|fluorocarbon", "braid")]
    [InlineData("rod.length+lure.mass", "7 ft+9 g,8 ft+9 g", "6 ft 8 in + 10 g|7 ft + 9 g|8 ft + 9 g", "6 ft 8 in + 10 g")]
    [InlineData("rod.length", "7 ft,7 ft,6 ft 8 in", "7 ft|7 ft (2)|6 ft 8 in", "6 ft 8 in")]
    public void The_reference_is_what_the_scenario_holds_by_itself_listed_or_not(string key, string list, string labels, string reference)
    {
        CastVariantList all = Make([Axis($"{key}={list}")]);
        Assert.Equal(labels, string.Join('|', all.All.Select(v => v.Label)));
        Assert.Equal(reference, all.All[all.Reference].Label);
    }

    [Theory]
    [InlineData("line", "braid 20 lb|braid 30 lb|braid 50 lb|nylon 10 lb|nylon 14 lb|fluorocarbon 12 lb", "braid 30 lb")]
    [InlineData("effort", "0.3|0.5|0.75|1", "0.5")]
    [InlineData("style", "wrist-flick|one-handed|two-handed", "two-handed")]
    [InlineData("brake", "0|0.5|1|1.5|2|4", "1")]
    [InlineData("lure-mass", "7 g|8 g|9 g|10 g|11 g", "10 g")]
    [InlineData("leader-material", "as in the file|nylon, loop|nylon, fixed knot|fluorocarbon, loop|braid, loop", "as in the file")]
    public void Ready_made_lists_find_the_scenario_or_add_it(string name, string labels, string reference)
    {
        AcrossAxis axis = Axis(name);
        axis = name == "leader-material" ? axis with { Values = [.. axis.Values.Skip(1)] } : axis;
        CastVariantList all = Make([axis]);
        Assert.Equal(labels, string.Join('|', all.All.Select(v => v.Label)));
        Assert.Equal(reference, all.All[all.Reference].Label);
    }

    [Theory]
    [InlineData("rod.length", "7 ft", 1, 3)]
    [InlineData("rod.length", "84 in", 1, 3)]
    [InlineData("rod.length", "2.0 m", 1, 4)]
    [InlineData("rod-length", "84 in", 1, 3)]
    [InlineData("rod-length", "6 ft 3 in", 1, 4)]
    public void Another_reference_is_found_in_the_list_or_added_at_its_place(string what, string against, int place, int count)
    {
        var faults = new List<ScenarioFault>();
        AcrossAxis axis = Of(what, ["6 ft", "7 ft", "8 ft"]);
        CastVariantList all = Make([axis], new AgainstReader(faults).Read([against], [axis]));
        Assert.Empty(faults);
        Assert.Equal((place, count), (all.Reference, all.All.Count));
    }

    [Theory]
    [InlineData("rod.length=6 ft,7 ft", "7 fathoms", "\"fathoms\" does not fit here")]
    [InlineData("rod.length=6 ft,7 ft", "6 ft,8 ft", "one value is due, no list and no range")]
    [InlineData("rod.length=6 ft,7 ft", "", "is due")]
    [InlineData("rod-length", "long", "long")]
    [InlineData("line", "wire", "unknown; allowed: braid 20 lb; braid 30 lb")]
    [InlineData("line.material=braid,nylon", "silk", "silk")]
    public void A_reference_that_cannot_be_read_is_one_clear_line(string across, string against, string told)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(new AgainstReader(faults).Read([against], [Axis(across)]));
        ScenarioFault fault = Assert.Single(faults);
        Assert.StartsWith("--against", fault.Place, StringComparison.Ordinal);
        Assert.Contains(told, fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', fault.ToString());
    }

    [Fact]
    public void Two_keys_want_two_references()
    {
        var faults = new List<ScenarioFault>();
        AcrossAxis[] axes = [Axis("rod.length=6 ft,7 ft"), Axis("line.material=braid,nylon")];
        Assert.Null(new AgainstReader(faults).Read(["7 ft"], axes));
        Assert.Contains("one value for each --across", Assert.Single(faults).Message, StringComparison.Ordinal);
        faults.Clear();
        CastVariantList all = Make(axes, new AgainstReader(faults).Read(["7 ft", "nylon"], axes));
        Assert.Equal("7 ft, nylon", all.All[all.Reference].Label);
        Assert.Equal("6 ft 8 in, braid", Make(axes).All[Make(axes).Reference].Label);
    }

    [Fact]
    public void A_reference_out_of_range_is_named_by_its_own_option()
    {
        var faults = new List<ScenarioFault>();
        AcrossAxis axis = Of("rod-length", ["6 ft", "7 ft"]);
        Make([axis], new AgainstReader(faults).Read(["16 ft"], [axis]), faults);
        Assert.StartsWith("--against 16 ft: ", Assert.Single(faults).ToString(), StringComparison.Ordinal);
    }

    // A guess that is compared stands still in every row, the added reference included.
    [Fact]
    public void A_guess_that_differs_is_not_drawn_in_the_reference_either()
    {
        CastVariantList all = Make([Axis("hands.speed=10 rad/s,12 rad/s")]);
        Assert.All(all.All, v => Assert.Single(Enumerable.Range(0, Draws).Select(d => v.Drawn(d)!.Value.Setup.Hands.SpeedRadS).Distinct()));
        Assert.Equal(3, all.All.Count);
    }

    // The length scales the rod of its row, in the cast as it stands and in every draw.
    [Fact]
    public void Rods_of_several_lengths_keep_what_else_is_compared()
    {
        AcrossAxis ladder = Of("rod-length", ["7 ft"]), mass = Axis("rod.mass=100 g,150 g");
        foreach (AcrossAxis[] axes in (AcrossAxis[][])[[ladder, mass], [mass, ladder]])
        {
            CastVariant[] rows = [.. Make(axes).All.Where(v => v.Label.Contains("7 ft", StringComparison.Ordinal))];
            Assert.Equal(2, rows.Length);
            Assert.Equal(1.5, rows[1].Setup.Rod.MassKg / rows[0].Setup.Rod.MassKg, 1e-9);
            Assert.All(Enumerable.Range(0, Draws), d => Assert.Equal(1.5, rows[1].Drawn(d)!.Value.Setup.Rod.MassKg / rows[0].Drawn(d)!.Value.Setup.Rod.MassKg, 1e-9));
        }
    }

    private static CastPair Forward(CastAcross result, string a, string b)
    {
        CastPair pair = result.Pairs().Single(p => (p.From == a && p.To == b) || (p.From == b && p.To == a));
        return pair.From == a ? pair : pair with { GainM = -pair.GainM };
    }

    private static CastVariantList Make(IReadOnlyList<AcrossAxis> axes, IReadOnlyList<AcrossPick>? against = null, List<ScenarioFault>? faults = null)
    {
        List<ScenarioFault> all = faults ?? [];
        CastVariantList made = new CastVariants(Source, [], Source.Resolve(), Draws).Make(axes, against, all);
        Assert.True(faults is not null || all.Count == 0, string.Join('\n', all));
        return made;
    }

    private static CastAcross Cast(CastVariantList all) =>
        new("", "", null, CastAcrossStudy.Run(all.All, Draws, 1, null, default, Farther), all.Reference, true);

    private static AcrossAxis Of(string what, IReadOnlyList<string> lengths)
    {
        if (what != RodLadder.Name)
        {
            return Axis($"{what}={string.Join(',', lengths)}");
        }

        return Axis(what) with { Values = [.. lengths.Select(l => new AcrossPick(RodLadder.Shown(l), []))] };
    }

    private static AcrossAxis Axis(string text)
    {
        var faults = new List<ScenarioFault>();
        AcrossAxis axis = Assert.Single(new AcrossReader(new Anything(), Source.Resolve(), faults).Read([text]));
        Assert.Empty(faults);
        return axis;
    }

    // No physics: farther with length and speed, less so with mass and with the rod's air drag; a scatter that differs from draw to draw.
    private static Outcome<CastResult> Farther(Setup setup, CastTask task)
    {
        double mean = (6.0 * setup.Rod.LengthM) + setup.Hands.SpeedRadS - (20.0 * setup.Rod.MassKg) - (2.0 * setup.Rod.AirDragCoefficient * setup.Rod.LengthM);
        return new(MadeUpCast.Result(setup, task, mean + 1.0, mean, 0.1 * mean * setup.Rod.AirDragCoefficient));
    }

    private sealed class Anything() : FigureSource<int>("anything", Activities.Cast, ["word"], [])
    {
        public override bool Reads(Scenarios.Keys.KeySpec key, ScenarioResult scenario) => true;

        public override FigureRow Run(ScenarioResult scenario, CancellationToken stop) => Row([""], 0);
    }
}
