using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Starting;

namespace LureSim.Scenarios.Tests.Starting;

/// <summary>A few words cut into values.</summary>
public class PhraseReaderTests
{
    private static readonly PhraseReader Rod = new("rods", "7 ft fast", RodKeys.Length, RodKeys.Power, RodKeys.Action);

    private static readonly PhraseReader Leader = new(
        "leaders", "15 in of 20 lb nylon", LeaderKeys.Length, LeaderKeys.Set.Material, LeaderKeys.Set.Label, LeaderKeys.Set.Number, LeaderKeys.Set.Diameter);

    [Theory]
    [InlineData("7 ft medium-heavy fast", "7 ft", "medium-heavy", "fast")]
    [InlineData("fast medium heavy 7' 6\" rod", "7' 6\"", "medium-heavy", "fast")]
    [InlineData("Medium Heavy, moderate fast; 2.1 m", "2.1 m", "medium-heavy", "moderate-fast")]
    [InlineData("7 ft 3 in, heavy power and extra fast action", "7 ft 3 in", "heavy", "extra-fast")]
    [InlineData("medium moderate", null, "medium", "moderate")]
    public void A_rod_in_words(string text, string? length, string? power, string? action)
    {
        Phrase said = Rod.Read(text);
        Assert.Null(said.Fault);
        Assert.Equal((length, power, action), (said.Texts.GetValueOrDefault(RodKeys.Length), said.Texts.GetValueOrDefault(RodKeys.Power), said.Texts.GetValueOrDefault(RodKeys.Action)));
        Assert.Null(said.Part);
    }

    [Theory]
    [InlineData("15 in nylon", "15 in", "nylon", null, null)]
    [InlineData("2 ft of 20 lb fluorocarbon", "2 ft", "fluorocarbon", "20 lb", null)]
    [InlineData("0.43 mm nylon, 40 cm long", "40 cm", "nylon", null, "0.43 mm")]
    [InlineData("none", null, "none", null, null)]
    public void Two_lengths_of_a_leader_are_told_apart_by_their_size(string text, string? length, string? material, string? label, string? diameter)
    {
        Phrase said = Leader.Read(text);
        Assert.Null(said.Fault);
        Assert.Equal((length, material), (said.Texts.GetValueOrDefault(LeaderKeys.Length), said.Texts.GetValueOrDefault(LeaderKeys.Set.Material)));
        Assert.Equal((label, diameter), (said.Texts.GetValueOrDefault(LeaderKeys.Set.Label), said.Texts.GetValueOrDefault(LeaderKeys.Set.Diameter)));
    }

    [Fact]
    public void A_part_may_be_named_and_changed()
    {
        Phrase said = Rod.Read("heavy-fast 7 ft");
        Assert.Null(said.Fault);
        Assert.Equal("heavy-fast", said.Part!.Name);
        Assert.Equal("7 ft", said.Texts[RodKeys.Length]);
    }

    [Theory]
    [InlineData("7 ft blue", "\"blue\" is not understood; say it like \"7 ft fast\"; luresim list rods shows the words")]
    [InlineData("7 ft medium-hevy", "\"medium-hevy\" is not understood; nearest: medium-heavy; say it like \"7 ft fast\"; luresim list rods shows the words")]
    [InlineData("70 ft fast", "rod length: \"70 ft\" is out of range; allowed: 3.94 to 14.7 ft; did you mean \"70 in\"?")]
    [InlineData("8 lb fast", "\"8 lb\": the line weight printed on a rod does not tell how it bends; a weight that you hung on the tip yourself goes into rod.bend_load; say it like \"7 ft fast\"; luresim list rods shows the words")]
    public void What_is_not_understood_is_said_in_one_line(string text, string fault) => Assert.Equal(fault, Rod.Read(text).Fault);

    [Fact]
    public void Twice_the_same_and_endless_words_are_refused()
    {
        Assert.Contains("is one rod length too many", Rod.Read("7 ft 90 in").Fault, StringComparison.Ordinal);
        Assert.Equal("more than 16 words", Rod.Read(string.Join(' ', Enumerable.Repeat("fast", 5000))).Fault);
        Assert.True(Rod.Read("  ").IsEmpty);
    }
}
