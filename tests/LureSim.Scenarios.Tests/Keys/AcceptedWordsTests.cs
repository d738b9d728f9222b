using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests.Keys;

/// <summary>Words that people of the trade type, and the word of the key that each stands for.</summary>
public sealed class AcceptedWordsTests
{
    [Theory]
    [InlineData("line.material", "nylon", "mono", "Mono", "monofilament", "NYLON")]
    [InlineData("leader.material", "fluorocarbon", "fluoro", "Fluoro", "FC")]
    [InlineData("line.material", "braid", "PE", "Braid", "BRAID", "braided line")]
    [InlineData("rod.power", "ultralight", "UL", "ultra-light", "Ultra Light")]
    [InlineData("rod.power", "light", "L", "Light")]
    [InlineData("rod.power", "medium-light", "ML", "med light", "medium light")]
    [InlineData("rod.power", "medium", "M", "med", "Medium")]
    [InlineData("rod.power", "medium-heavy", "MH", "mh", "med heavy", "medium heavy", "Medium-Heavy", "medium_heavy")]
    [InlineData("rod.power", "heavy", "H", "Heavy")]
    [InlineData("rod.power", "extra-heavy", "XH", "x-heavy", "extra heavy")]
    [InlineData("rod.action", "extra-fast", "x-fast", "xf", "XF", "Extra Fast", "xtra-fast")]
    [InlineData("rod.action", "moderate-fast", "mod-fast", "MF", "mod fast", "medium fast")]
    [InlineData("rod.action", "fast", "F", "Fast")]
    [InlineData("rod.action", "moderate", "mod", "medium", "M", "regular")]
    [InlineData("reel.kind", "fixed", "spinning", "Spinning reel")]
    [InlineData("reel.kind", "revolving", "baitcaster", "casting")]
    [InlineData("reel.drag", "locked", "Locked", "locked down")]
    [InlineData("water.salinity", "sea", "salt", "saltwater", "salt water")]
    [InlineData("air.wind_from", "from behind", "behind", "tailwind", "from_behind")]
    [InlineData("cast.skill", "practised", "practiced", "average")]
    [InlineData("cast.style", "two-handed", "two handed", "2-handed")]
    [InlineData("strike.style", "sweep", "Side sweep", "sideways", "sweep set")]
    [InlineData("fish.way", "comes", "comes toward me", "towards", "at me")]
    [InlineData("fish.way", "fast", "snag", "snagged")]
    [InlineData("cover.kind", "mat", "slop", "lily pads", "Pads", "weeds", "matted", "thick mat")]
    [InlineData("cover.kind", "open", "open water", "edge", "none", "clear")]
    [InlineData("cover.kind", "sparse", "scattered", "single plants")]
    [InlineData("lure.hooks.size", "no. 4", "4", "#4", "no 4", "No. 4", "no.4", "size 4")]
    [InlineData("lure.hooks.size", "1/0", "1/0", "#1/0", "size 1/0")]
    [InlineData("lure.hooks.type", "treble", "Treble", "trebles")]
    public void A_word_is_read_in_its_spellings(string path, string word, params string[] spellings)
    {
        KeySpec key = ScenarioSchema.Keys.SelectMany(k => k.Items.Prepend(k)).Single(k => k.Path == path);
        Assert.All(spellings, s => Assert.Equal(word, ValueReader.FindChoice(key, s)?.Name));
    }

    // Marks between digits are part of a number.
    [Theory]
    [InlineData("1.0")]
    [InlineData("1-0")]
    [InlineData("3")]
    [InlineData("")]
    public void What_only_looks_like_a_size_is_none(string text) => Assert.Null(ValueReader.FindChoice(LureItemKeys.HookSize, text));

    [Fact]
    public void A_whole_file_in_words_of_the_trade_reads_like_its_plain_form()
    {
        string trade = Texts.Least.Replace("\"7 ft\"", "\"7'\"", StringComparison.Ordinal).Replace("medium-heavy", "MH", StringComparison.Ordinal)
            .Replace("\"braid\"", "\"PE\"", StringComparison.Ordinal).Replace("50 lb", "50#", StringComparison.Ordinal) + "\nhooks = [{ size = 4, x = \"20mm\" }]\n";
        string plain = Texts.Least + "\nhooks = [{ size = \"no. 4\", x = \"20 mm\" }]\n";
        Assert.Empty(Texts.Errors(trade));
        Assert.Equal(SpecText.Of(Texts.Read(plain).Scenario!), SpecText.Of(Texts.Read(trade).Scenario!));
        ScenarioResult back = ScenarioSource.FromText(Texts.Read(trade).Effective().ToToml()).Resolve();
        Assert.Equal(SpecText.Of(Texts.Read(trade).Scenario!), SpecText.Of(back.Scenario!));
    }

    [Fact]
    public void A_locked_drag_is_a_guess_at_what_the_reel_really_holds()
    {
        EffectiveValue drag = Texts.Read(Texts.Least, "reel.drag=locked").Effective().Values.Single(v => v.Key == ReelKeys.Drag);
        Assert.Equal(ValueMark.Guess, drag.Mark);
        Assert.Equal(4.0 * 9.80665, drag.Si, 1e-12);
        Assert.Equal((3.5 * 9.80665, 13.0 * 4.4482216152605), (drag.Low, drag.High));
    }

    [Fact]
    public void No_spelling_of_a_word_is_another_word_of_the_same_key()
    {
        foreach (KeySpec key in ScenarioSchema.Keys.SelectMany(k => k.Items.Prepend(k)).Where(k => k.Choices.Count > 0))
        {
            Assert.Equal(key.Choices.Count, key.Choices.Select(c => Synonyms.Form(c.Name)).Distinct().Count());
            Assert.All(key.Choices, c => Assert.True(Synonyms.WordOf(key, c.Name) is null || Synonyms.WordOf(key, c.Name) == c.Name, $"{key.Path}: {c.Name}"));
        }
    }

    // A hint points at something that is there.
    [Fact]
    public void Every_hint_of_the_table_is_a_key_or_a_word()
    {
        Assert.All(Synonyms.Keys.Where(k => !k.Table.Contains('.', StringComparison.Ordinal)), k => Assert.True(ScenarioSchema.Find(k.Key) is not null || ScenarioSchema.Tables.Contains(k.Key), k.Key));
        KeySpec[] all = [.. ScenarioSchema.Keys.SelectMany(k => k.Items.Prepend(k))];
        foreach ((string keys, string word) in Synonyms.Read.Select(r => (r.Keys, r.Word)).Concat(Synonyms.Words.Where(w => w.Word.Length > 0).Select(w => (w.Keys, w.Word))))
        {
            Assert.Contains(keys.Split('|'), path => all.Single(k => k.Path == path).Choices.Any(c => c.Name == word));
        }
    }

    [Theory]
    [InlineData("line.label", "MH")]
    [InlineData("rod.power", "MHH")]
    [InlineData("rod.power", "stiff")]
    public void A_class_is_never_answered_with_a_weight_of_line(string path, string text)
    {
        string error = ValueReader.ReadText(ScenarioSchema.Find(path)!, text).Error!;
        Assert.DoesNotContain("did you mean \"8 lb\"", error, StringComparison.Ordinal);
        Assert.True(path != "rod.power" || !error.Contains("lb", StringComparison.Ordinal), error);
    }

    [Theory]
    [InlineData("rod.length")]
    [InlineData("lure.length")]
    [InlineData("retrieve.distance")]
    public void Both_ends_of_a_range_can_be_typed_as_they_are_shown(string path)
    {
        KeySpec key = ScenarioSchema.Find(path)!;
        foreach (string unit in (string[])["ft", "m", "in", "cm"])
        {
            string[] ends = RangeText.Of(key, unit: unit).Replace(" " + unit, "", StringComparison.Ordinal).Split(" to ");
            Assert.Equal(2, ends.Length);
            Assert.All(ends, e => Assert.Null(ValueReader.ReadText(key, $"{e} {unit}").Error));
        }
    }

    [Fact]
    public void A_file_without_a_title_is_called_by_its_name()
    {
        using var folder = new Folder();
        Assert.Equal("my-rod", ScenarioSource.Read(folder.Write("my-rod.toml", Texts.Least)).Setup!.Title);
        Assert.Equal("x", ScenarioSource.Read(folder.Write("named.toml", "title = \"x\"\n" + Texts.Least)).Setup!.Title);
    }

    [Fact]
    public void A_file_that_is_nearly_named_is_offered()
    {
        using var folder = new Folder();
        folder.Write("small-walker.toml", Texts.Least);
        string told = Assert.Single(ScenarioSource.Read(Path.Combine(folder.Root, "small-waker.toml")).Errors).ToString();
        Assert.EndsWith($"there is no such file; did you mean {Path.Combine(folder.Root, "small-walker.toml")}?", told, StringComparison.Ordinal);
        Assert.EndsWith("small-walker.toml?", Assert.Single(ScenarioSource.Read(Path.Combine(folder.Root, "small-walker")).Errors).ToString(), StringComparison.Ordinal);
    }
}
