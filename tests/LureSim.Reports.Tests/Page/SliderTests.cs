using System.Text.Json;
using LureSim.Reports.Page;
using LureSim.Reports.Tests.Support;
using LureSim.Scenarios;
using LureSim.Studies.Page;

namespace LureSim.Reports.Tests.Page;

/// <summary>The browser lays differences over the file's own run and knows no rule of the files: any combination of stops must give the run that the
/// program itself reads with the same overrides.</summary>
public sealed class SliderTests
{
    private const int Combinations = 60;

    public static TheoryData<string, string[]> Files
    {
        get
        {
            var data = new TheoryData<string, string[]>();
            foreach (string file in MadeUpPage.Shipped)
            {
                data.Add(Path.GetFileNameWithoutExtension(file), []);
            }

            // Values that lead to others: a wrist angle, whose stroke goes with the rod; a mass with hooks; a numbered line; a leader as a part of its own.
            data.Add("small-walker", ["retrieve.stroke=6 deg"]);
            data.Add("small-walker", ["lure.mass_with_hooks=11.5 g", "lure.tie.z=2 mm"]);
            data.Add("small-walker", ["line.number=PE 2", "leader.diameter=0.3 mm", "leader.knot=fixed"]);
            data.Add("large-walker", ["leader.material=fluorocarbon", "leader.label=20 lb", "leader.length=50 cm", "rod.mass=4 oz"]);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Any_stops_together_give_the_run_that_the_program_reads(string name, string[] overrides)
    {
        PageFile file = MadeUpPage.File(name, overrides);
        string own = ControlJson.Run(file.Here);
        foreach (bool trade in (bool[])[true, false])
        {
            IReadOnlyList<PageControl> controls = PageControls.Of(file, trade);
            var random = new Random(name.Length + overrides.Length);
            for (int k = 0; k < Combinations; k++)
            {
                PageStop[] stops = [.. controls.Select(c => c.Stops[random.Next(c.Stops.Count)])];
                ScenarioResult there = file.With([.. stops.SelectMany(s => s.Set)]);
                Assert.True(there.IsValid, string.Join("; ", there.Errors));
                string laid = stops.Reverse().Aggregate(own, (run, stop) => ControlJson.Patch(own, file, stop).ApplyTo(run));
                Assert.True(JsonElement.DeepEquals(Parse(ControlJson.Run(there)), Parse(laid)), string.Join(" ", stops.SelectMany(s => s.Set)));
            }
        }
    }

    // Laid on the other way round the stroke of a wrist angle would take the place of the one that is said.
    [Fact]
    public void The_order_of_the_patches_matters_where_a_stroke_is_an_angle()
    {
        PageFile file = MadeUpPage.File("small-walker", "retrieve.stroke=6 deg");
        string own = ControlJson.Run(file.Here);
        IReadOnlyList<PageControl> controls = PageControls.Of(file, trade: true);
        PageStop stroke = controls.Single(c => c.Kind == ControlKind.Stroke).Stops[^1], rod = controls.Single(c => c.Kind == ControlKind.Rod).Stops[^1];
        string right = ControlJson.Patch(own, file, stroke).ApplyTo(ControlJson.Patch(own, file, rod).ApplyTo(own));
        string wrong = ControlJson.Patch(own, file, rod).ApplyTo(ControlJson.Patch(own, file, stroke).ApplyTo(own));
        JsonElement native = Parse(ControlJson.Run(file.With([.. rod.Set, .. stroke.Set])));
        Assert.True(JsonElement.DeepEquals(native, Parse(right)));
        Assert.False(JsonElement.DeepEquals(native, Parse(wrong)));
    }

    [Fact]
    public void Stops_rise_with_the_files_own_value_among_them_and_every_slider_moves_something()
    {
        PageFile file = MadeUpPage.File("small-walker");
        string own = ControlJson.Run(file.Here);
        foreach (PageControl control in PageControls.Of(file, trade: false))
        {
            Assert.Single(control.Stops, s => s.IsOwn);
            double[] numbers = [.. control.Stops.Select(s => s.Si).Where(double.IsFinite)];
            Assert.Equal(numbers.Order(), numbers);
            Assert.All(control.Stops.Where(s => !s.IsOwn), s => Assert.NotEmpty(ControlJson.Patch(own, file, s).Values));
        }
    }

    private static JsonElement Parse(string json) => JsonDocument.Parse(json).RootElement;
}
