using LureSim.Scenarios.Sayings;
using LureSim.Studies.Sayings;

namespace LureSim.Studies.Tests.Sayings;

public sealed class SayingRuleTests
{
    private static Claim Claim(ClaimKind kind, double limit = double.NaN, double share = 0.1) => new(kind, new("", ""), limit, share, double.NaN, false);

    private static bool? Is(ClaimKind kind, params double[] values) => SayingRule.IsTrue(kind, Claim(kind, 5.0), values);

    private static bool?[] Draws(int yes, int no, int none = 0) => [.. Enumerable.Repeat<bool?>(true, yes), .. Enumerable.Repeat<bool?>(false, no), .. Enumerable.Repeat<bool?>(null, none)];

    // Noticed is a tenth of the first side: 10 against 11.1 is, 10 against 10.9 is not.
    [Theory]
    [InlineData(ClaimKind.Higher, 10.0, 11.1, true)]
    [InlineData(ClaimKind.Higher, 10.0, 10.9, false)]
    [InlineData(ClaimKind.Higher, 10.0, 8.0, false)]
    [InlineData(ClaimKind.Lower, 10.0, 8.9, true)]
    [InlineData(ClaimKind.Lower, 10.0, 9.1, false)]
    [InlineData(ClaimKind.NoDifference, 10.0, 10.9, true)]
    [InlineData(ClaimKind.NoDifference, 10.0, 8.9, false)]
    [InlineData(ClaimKind.Higher, -10.0, -8.9, true)]
    public void Two_sides_are_compared_by_what_is_noticed(ClaimKind kind, double less, double more, bool holds) => Assert.Equal(holds, Is(kind, less, more));

    [Fact]
    public void A_list_rises_only_without_a_noticed_step_down()
    {
        Assert.True(Is(ClaimKind.Rises, 10, 10, 12));
        Assert.True(Is(ClaimKind.Rises, 10, 12, 11.5));
        Assert.False(Is(ClaimKind.Rises, 10, 14, 12));
        Assert.False(Is(ClaimKind.Rises, 10, 10.5, 10.9));
        Assert.True(Is(ClaimKind.Falls, 10, 8, 6));
        Assert.False(Is(ClaimKind.Falls, 10, 4, 6));
        Assert.False(Is(ClaimKind.NoDifference, 10, 14, 10));
    }

    [Fact]
    public void A_limit_is_kept_by_every_side_and_a_missing_value_is_no_answer()
    {
        Assert.True(Is(ClaimKind.AtLeast, 5, 6));
        Assert.False(Is(ClaimKind.AtLeast, 6, 4.9));
        Assert.True(Is(ClaimKind.AtMost, 5, 4));
        Assert.False(Is(ClaimKind.AtMost, 5.1, 4));
        Assert.Null(Is(ClaimKind.AtMost, double.NaN, 4));
    }

    [Theory]
    [InlineData(6, 3, PlaceWord.True)]
    [InlineData(5, 4, PlaceWord.Unknown)]
    [InlineData(4, 5, PlaceWord.Unknown)]
    [InlineData(3, 6, PlaceWord.False)]
    public void Two_thirds_are_true_one_third_is_false(int yes, int no, PlaceWord word) => Assert.Equal(word, SayingRule.Word(SayingRule.Chance(Draws(yes, no))));

    [Fact]
    public void Draws_without_value_are_left_out_but_not_too_many()
    {
        Assert.Equal(1.0, SayingRule.Chance(Draws(4, 0, 5)));
        Assert.True(SayingRule.MissesTooMany(Draws(4, 1, 4)));
        Assert.False(SayingRule.MissesTooMany(Draws(5, 1, 3)));
        Assert.Equal(PlaceWord.Unknown, SayingRule.Word(SayingRule.Chance(Draws(0, 0, 3))));
    }

    [Fact]
    public void A_finer_run_moves_the_chance_by_the_mean_change_of_its_draws()
    {
        Assert.Equal(1.0, SayingRule.Moved(1.0, [true, true, true], [true, true, true]));
        Assert.Equal(1.0 - (1.0 / 3.0), SayingRule.Moved(1.0, [true, true, true], [true, false, true]), 12);
        Assert.Equal(0.5, SayingRule.Moved(0.5, [true, false], [false, true]), 12);
        Assert.True(double.IsNaN(SayingRule.Moved(1.0, [null], [true])));
    }

    [Fact]
    public void Another_seed_must_not_say_the_opposite()
    {
        Assert.True(SayingRule.Stands(PlaceWord.True, Draws(9, 0), Draws(3, 1)));
        Assert.False(SayingRule.Stands(PlaceWord.True, Draws(9, 0), Draws(1, 3)));
        Assert.False(SayingRule.Stands(PlaceWord.True, Draws(6, 3), Draws(2, 2)));
        Assert.True(SayingRule.Stands(PlaceWord.False, Draws(0, 9), Draws(2, 2)));
        Assert.False(SayingRule.Stands(PlaceWord.True, Draws(9, 0), Draws(0, 9)));
    }

    [Theory]
    [InlineData("TTT", SayingVerdict.Holds)]
    [InlineData("TFT", SayingVerdict.HoldsOnlyWhen)]
    [InlineData("TF?", SayingVerdict.HoldsOnlyWhen)]
    [InlineData("FFF", SayingVerdict.DoesNotHold)]
    [InlineData("FF?", SayingVerdict.CannotBeTold)]
    [InlineData("TT?", SayingVerdict.CannotBeTold)]
    [InlineData("?", SayingVerdict.CannotBeTold)]
    public void Places_make_a_verdict(string words, SayingVerdict verdict) =>
        Assert.Equal(verdict, SayingRule.Verdict([.. words.Select(w => w == 'T' ? PlaceWord.True : w == 'F' ? PlaceWord.False : PlaceWord.Unknown)]));
}
