using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Compare;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Compare;

public sealed class SetUpReaderTests
{
    private static readonly string Small = Shipped.File("small-walker.toml"), Large = Shipped.File("large-walker.toml");

    [Fact]
    public void Files_are_called_by_their_names() =>
        Assert.Equal(["small-walker", "large-walker"], Labels(Read([Small, Large], [], "")));

    [Fact]
    public void A_variant_is_compared_with_the_file_itself()
    {
        (IReadOnlyList<CompareSetUp> one, _) = Read([Small], ["rod.power=heavy"], "");
        Assert.Equal(["rod power medium", "rod power heavy"], one.Select(s => s.Label));
        Assert.Equal(["file as it is", "rod power heavy", "reel ratio 6.3, rod mass 5 oz"], Labels(Read([Small], ["rod.power=heavy", "reel.ratio=6.3; rod.mass=5 oz"], "")));
    }

    [Fact]
    public void Rods_take_words_after_their_length()
    {
        (IReadOnlyList<CompareSetUp> rods, IReadOnlyList<ScenarioFault> faults) = Read([Small], [], "6 ft 6 in,7 ft medium-heavy extra-fast");
        Assert.Empty(faults);
        Assert.Equal(4.5, rods[1].SetUp.Here.Setup!.Rod.ThirdLoadN, 1e-9);
        Assert.Equal(0.18, rods[1].SetUp.Here.Setup!.Rod.TipRadiusRatio, 1e-9);
        Assert.Equal(2.1336, rods[1].SetUp.Here.Setup!.Rod.LengthM, 1e-9);
    }

    [Fact]
    public void A_single_length_is_compared_with_the_rod_of_the_file() =>
        Assert.Equal(["6 ft 8 in (the file's)", "7 ft"], Labels(Read([Small], [], "7 ft")));

    [Theory]
    [InlineData("nonsense", "", "--with nonsense")]
    [InlineData("rod.power=mighty", "", "--with rod.power=mighty")]
    [InlineData("", "seven feet", "--rods seven feet")]
    [InlineData("", "7 ft,,8 ft", "--rods ")]
    [InlineData("retrieve.stroke=0 cm", "", "retrieve stroke 0 cm")]
    [InlineData("seed=7", "", "compare")]
    public void What_is_wrong_is_told_where_it_was_typed(string with, string rods, string place)
    {
        (_, IReadOnlyList<ScenarioFault> faults) = Read([Small], with.Length > 0 ? [with] : [], rods);
        Assert.Equal(place, Assert.Single(faults).Place);
    }

    [Fact]
    public void One_file_alone_files_with_variants_and_variants_with_rods_are_refused()
    {
        Assert.Single(Read([Small], [], "").Faults);
        Assert.Single(Read([Small, Large], ["rod.power=heavy"], "").Faults);
        Assert.Single(Read([Small], ["rod.power=heavy"], "7 ft").Faults);
    }

    [Fact]
    public void A_key_that_differs_and_enters_nothing_is_found()
    {
        Assert.Equal([ReelKeys.Drag], VariedKeys.Unread(Read([Small], ["reel.drag=10 lb"], "").SetUps));
        Assert.Empty(VariedKeys.Unread(Read([Small], ["reel.ratio=6.3", "rod.power=heavy", "leader.material=none"], "").SetUps));
    }

    private static IEnumerable<string> Labels((IReadOnlyList<CompareSetUp> SetUps, IReadOnlyList<ScenarioFault> Faults) read) => read.SetUps.Select(s => s.Label);

    private static (IReadOnlyList<CompareSetUp> SetUps, IReadOnlyList<ScenarioFault> Faults) Read(string[] files, string[] with, string rods)
    {
        var faults = new List<ScenarioFault>();
        return (new SetUpReader([], faults).Read(files, with, rods), faults);
    }
}
