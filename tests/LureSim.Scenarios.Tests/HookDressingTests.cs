using LureSim.Model.Lures;

namespace LureSim.Scenarios.Tests;

/// <summary>Feathers on a hook, in words and in numbers.</summary>
public sealed class HookDressingTests
{
    private static HookSpec Hook(string item, params string[] overrides) =>
        Texts.Read(Texts.Least + $"\nhooks = [{{ type = \"treble\", size = \"no. 4\", x = \"-55 mm\"{item} }}]\n", overrides).Setup!.Lure.Hooks[0];

    [Theory]
    [InlineData(", dressing = \"none\"", 0.0, 0.0)]
    [InlineData(", dressing = \"thin\"", 0.45e-4, 0.7 * 0.45e-4)]
    [InlineData(", dressing = \"full\"", 1.2e-4, 0.7 * 1.2e-4)]
    [InlineData(", feather_area = \"1 cm2\"", 1e-4, 1e-4)]
    [InlineData(", dressing = \"full\", feather_area = \"0.3 cm2\"", 0.3e-4, 0.3e-4)]
    public void A_dressing_adds_its_drag_to_that_of_the_hook(string item, double acrossM2, double alongM2)
    {
        HookSpec bare = Hook(""), dressed = Hook(item);
        Assert.Equal(acrossM2, dressed.DragAreaM2 - bare.DragAreaM2, 1e-15);
        Assert.Equal(alongM2, dressed.DragAreaAlongM2!.Value - bare.DragAreaAlongM2!.Value, 1e-15);
        Assert.Equal((bare.MassKg, bare.XM), (dressed.MassKg, dressed.XM));
    }

    [Fact]
    public void A_dressing_in_words_is_as_little_known_as_the_hook() =>
        Assert.Equal(1.7 * Hook(", dressing = \"full\"").DragAreaM2, Hook(", dressing = \"full\"", "lure.hook_drag=1.7").DragAreaM2, 1e-15);

    [Fact]
    public void Another_word_is_refused_with_those_there_are() => Assert.Contains(
        "none, thin, full", Texts.Errors(Texts.Least + "\nhooks = [{ size = \"no. 4\", x = \"-55 mm\", dressing = \"bushy\" }]\n").Single(), StringComparison.Ordinal);
}
