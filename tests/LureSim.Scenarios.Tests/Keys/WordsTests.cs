using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests.Keys;

/// <summary>A guess stands in charts and sentences by words, not by its key.</summary>
public sealed class WordsTests
{
    [Fact]
    public void Every_guess_is_called_by_words_of_its_own()
    {
        KeySpec[] guesses = [.. Guesses()];
        Assert.InRange(guesses.Length, 60, 150);
        Assert.All(guesses, k =>
        {
            Assert.DoesNotMatch("[_.]", k.Words);
            Assert.InRange(k.Words.Length, 8, 44);
            Assert.True(k.Words != $"{k.Table} {k.Name.Replace('_', ' ')}", $"{k.Path} has no words: give its row Words");
        });
        Assert.Equal(guesses.Length, guesses.Select(k => k.Words).Distinct().Count());
    }

    [Fact]
    public void A_key_without_words_is_called_by_its_name()
    {
        Assert.Equal("rod length", RodKeys.Length.Words);
        Assert.Equal("title", TopKeys.Title.Words);
    }

    // Of the schema, and those that follow in a shipped file, with a fixed spool and with a leader of its own guesses.
    private static IEnumerable<KeySpec> Guesses()
    {
        string[] leader = ["leader.material=nylon", "leader.label=20 lb", "leader.length=0.5 m", "reel.kind=fixed", "cast.effort=gentle"];
        IEnumerable<GuessedKey> followed = Directory.GetFiles(Folder.Shipped, "*.toml").SelectMany(f => ScenarioSource.Read(f, leader).Effective().Guesses);
        return ScenarioSchema.Keys.Where(k => k.IsGuess).Concat(followed.Select(g => g.Key)).Distinct();
    }
}
