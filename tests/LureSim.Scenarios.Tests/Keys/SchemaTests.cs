using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Model.Strike;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests.Keys;

public class SchemaTests
{
    [Fact]
    public void Every_default_is_readable_and_in_range()
    {
        foreach (KeySpec key in ScenarioSchema.Keys.SelectMany(k => k.Items.Prepend(k)).Where(k => k.Default is not null))
        {
            Assert.Null(ValueReader.ReadText(key, key.Default!).Error);
        }
    }

    [Fact]
    public void Every_guess_range_holds_its_default_and_is_allowed()
    {
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.IsGuess))
        {
            Assert.InRange(key.DefaultReading.Si, key.GuessLow, key.GuessHigh);
            Assert.True(key.Low <= key.GuessLow && key.GuessHigh <= key.High, key.Path);
        }
    }

    [Fact]
    public void Every_unit_of_a_key_is_one_of_its_kind()
    {
        foreach (KeySpec key in ScenarioSchema.Keys.SelectMany(k => k.Items.Prepend(k)).Where(k => Units.NeedUnit(k.Kind)))
        {
            Assert.True(double.IsFinite(Units.ToSi(key.Kind, key.Unit, 1.0)), key.Path);
        }
    }

    [Fact]
    public void Every_example_in_a_message_is_readable()
    {
        foreach (QuantityKind kind in Enum.GetValues<QuantityKind>())
        {
            foreach (string example in Units.Due(kind).Split('"').Where((_, i) => i % 2 == 1))
            {
                Assert.Null(Quantity.Read(example, kind).Error);
            }
        }
    }

    // The defaults of the records in the model and of the files must be one set of numbers.
    [Fact]
    public void Defaults_are_those_of_the_model()
    {
        Scenario read = Texts.Read(Texts.Least).Scenario!;
        Setup spec = read.Setup;
        Assert.Equal(new AnglerSpec(), spec.Angler);
        Assert.Equal(new WaterSpec(), spec.Water);
        Assert.Equal(new AirSpec(), spec.Air);
        Assert.Equal(new RetrieveTask(), read.Retrieve);
        Assert.Equal(new CastTask(), read.Cast);
        Assert.Equal(new StrikeTask(), read.Strike);
        Assert.Equal(new CrawlTask(), read.Crawl);
        Assert.Equal(new HookHold(), spec.Hook);
        Assert.Equal(new CoverSpec(), spec.Cover);
        Assert.Equal(new() { DragAreaM2 = FishBody.DragAreaM2(1.5).Value, DepthM = FishBody.DepthM(1.5), PullN = FishBody.PullN(1.5).Value }, spec.Fish);
        Assert.Equal(new HandsSpec(), spec.Hands);
        Assert.Equal(new ReelSpec().With(spec.Line), spec.Reel);
        Assert.Equal(LineFlightSpec.Usual(spec.Line.Material), spec.Line.Flight);
        RodSpec rod = spec.Rod;
        Assert.Equal(new RodSpec(rod.LengthM, rod.GripM, rod.ThirdLoadN, rod.MassKg), rod);
        var lure = spec.Lure;
        Assert.Equal(new(lure.Shape, lure.LengthM, lure.DiameterM, lure.HeightM, lure.MassKg, lure.TieXM, lure.TieZM, lure.Ballast, lure.Hooks), lure);
    }

    // Another allowed value of every scalar key must change the run: no key is read in vain.
    [Fact]
    public void Every_key_reaches_the_run()
    {
        string text = Texts.Least.Replace("material = \"braid\"\nlabel = \"50 lb\"", "material = \"braid\"\nnumber = \"no. 4\"", StringComparison.Ordinal)
            + "\nhooks = [{ size = \"no. 2\", x = \"20 mm\" }]\n[leader]\nmaterial = \"braid\"\nlength = \"15 in\"\nnumber = \"no. 4\"\n";
        var source = ScenarioSource.FromText(text);
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.Kind != QuantityKind.List && !k.IsDrawing && k.Path != "lure.tie"))
        {
            // A wall and a coat need a body of known make.
            string[] make = key == LureBuildKeys.Wall ? ["lure.material=abs", "lure.wall=1 mm"] : key == LureBuildKeys.CoatThickness || key == LureBuildKeys.CoatDensity ? ["lure.build=solid"] : [];
            ScenarioResult changed = source.Resolve([.. make, $"{key.Path}={Other(key)}"]);
            Assert.True(changed.IsValid, $"{key.Path}={Other(key)}: {string.Join('\n', changed.Errors)}");
            Assert.True(SpecText.Of(source.Resolve(make).Scenario!) != SpecText.Of(changed.Scenario!), key.Path);
        }
    }

    // No value that a file may hold is refused by the model later.
    [Fact]
    public void Both_ends_of_every_strike_key_are_allowed_by_the_model()
    {
        var source = ScenarioSource.FromText(Texts.Least);
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.ReadBy == Activities.Strike && k.Kind != QuantityKind.Choice))
        {
            foreach (double end in new[] { key.Low, key.High })
            {
                // A stroke must have an arc.
                string[] room = key == StrikeKeys.StopAngle ? ["strike.start_angle=-1.6 rad"] : key == StrikeKeys.StartAngle ? ["strike.stop_angle=1.6 rad"] : [];
                ScenarioResult result = source.Resolve([.. room, $"{key.Path}={Quantity.Format(end, key.Kind)}"]);
                Assert.True(result.IsValid, $"{key.Path}: {string.Join('\n', result.Errors)}");
                result.Setup!.Check();
                result.Strike!.Check();
            }
        }
    }

    [Fact]
    public void Both_ends_of_every_cast_key_are_allowed_by_the_model()
    {
        var source = ScenarioSource.FromText(Texts.Least);
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.ReadBy.HasFlag(Activities.Cast) && !k.ReadBy.HasFlag(Activities.Retrieve) && k.Kind != QuantityKind.Choice))
        {
            foreach (double end in new[] { key.Low, key.High })
            {
                // Ends that other keys forbid: a swing must have an arc, line must fit on its spool.
                string[] room = key == HandsKeys.StopAngle ? ["hands.start_angle=-2.6 rad"] : key == HandsKeys.StartAngle ? ["hands.stop_angle=1.6 rad"]
                    : key == SpoolKeys.LineOnSpool ? ["reel.spool_diameter=80 mm", "reel.spool_width=60 mm"] : ["angler.hand_height=4 m"];
                ScenarioResult result = source.Resolve([.. room, $"{key.Path}={Quantity.Format(end, key.Kind)}"]);
                Assert.True(result.IsValid, $"{key.Path}: {string.Join('\n', result.Errors)}");
                result.Setup!.Check();
                result.Cast!.Check();
            }
        }
    }

    private static string Other(KeySpec key) => key.Path switch
    {
        "title" => "other",
        "seed" => "7",
        "pool.speeds" => "0.2, 0.6 m/s",
        "line.label" or "leader.label" => "40 lb",
        "line.strength" or "leader.strength" => "40 lb",
        "line.number" or "leader.number" => "PE 3",
        "line.diameter" or "leader.diameter" => "0.37 mm",
        "lure.shape" => "pencil",
        "lure.length" => "120 mm",
        "lure.tie.x" or "lure.tie.z" => "5 mm",
        "lure.diameter" => "22 mm",
        "lure.height" => "22 mm",
        "lure.mass" or "lure.mass_with_hooks" => "19 g",
        "lure.material" => "balsa",
        "lure.density" => "300 kg/m3",
        "lure.wall" => "1.2 mm",
        "retrieve.hold_distance" => "true",
        "reel.drag" => "10 lb",
        "reel.take_up" => "31 in/turn",
        "reel.line_on_spool" => "60 m",
        "air.roughness" => "1 mm",
        "hands.stop_angle" => "0.9 rad",
        "strike.points" => "3",
        _ when key.Kind == QuantityKind.Choice => key.Choices[^1].Name == "none" ? "nylon" : key.Choices[^1].Name == key.Default ? key.Choices[0].Name : key.Choices[^1].Name,
        _ => Shifted(key),
    };

    private static string Shifted(KeySpec key)
    {
        double at = Texts.Read(Texts.Least).Values.Number(key);
        double start = double.IsNaN(at) ? (0.9 * key.Low) + (0.1 * key.High) : at;
        double shifted = key.Kind == QuantityKind.WholeNumber ? start + 1 : (0.98 * start) + (0.02 * (start < 0.5 * (key.Low + key.High) ? key.High : key.Low));
        return Quantity.Format(shifted, key.Kind);
    }
}
