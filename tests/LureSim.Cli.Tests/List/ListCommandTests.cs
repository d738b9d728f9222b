using System.Text.Json;
using LureSim.Cli.Tests.Support;
using LureSim.Reports.Start;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;

namespace LureSim.Cli.Tests.List;

/// <summary>The command <c>list</c> as a person types it.</summary>
public sealed class ListCommandTests
{
    [Fact]
    public void The_overview_names_every_list_and_where_the_parts_lie()
    {
        Session session = Session.Run("list");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.All(NameLists.All, l => Assert.Contains($"\n  {l.Name} ", session.Out, StringComparison.Ordinal));
        Assert.Contains("scenarios/parts", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_list_shows_its_parts_in_a_narrow_table()
    {
        foreach (NameList list in NameLists.All)
        {
            Session session = Session.Run("list", list.Name);
            Assert.Equal(ExitCode.Done, session.Exit);
            Assert.All(PartLibrary.In(list.Name), p => Assert.Contains($"\n  {p.Name} ", session.Out, StringComparison.Ordinal));
            Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
        }
    }

    [Fact]
    public void A_part_is_printed_as_it_is()
    {
        Part part = PartLibrary.Find("rod", "medium-fast")!;
        Assert.All((string[])["rods/medium-fast", "medium-fast", "rods/medium-fast.toml"], n => Assert.Equal(part.Text, Session.Run("list", n).Out));
    }

    [Fact]
    public void Words_come_with_the_range_of_their_guess()
    {
        string rods = Session.Run("list", "rods").Out, styles = Session.Run("list", "styles").Out;
        Assert.All(RodKeys.Power.Choices.Concat(RodKeys.Action.Choices), c => Assert.Contains($"\n  {c.Name} ", rods, StringComparison.Ordinal));
        Assert.All(
            CastKeys.Style.Choices.Concat(CastKeys.Effort.Choices).Concat(CastKeys.Skill.Choices), c => Assert.Contains($"\n  {c.Name} ", styles, StringComparison.Ordinal));
        JsonElement heavy = JsonDocument.Parse(Session.Run("list", "rods", "--json").Out).RootElement.GetProperty("powers").EnumerateArray()
            .First(p => p.GetProperty("name").GetString() == "medium-heavy");
        Choice known = RodKeys.Power.Choices.First(c => c.Name == "medium-heavy");
        Assert.Equal((known.Value, known.Low, known.High), (heavy.GetProperty("load_N").GetDouble(), heavy.GetProperty("low_N").GetDouble(), heavy.GetProperty("high_N").GetDouble()));
    }

    [Fact]
    public void Json_holds_every_table()
    {
        JsonElement json = JsonDocument.Parse(Session.Run("list", "--json").Out).RootElement;
        Assert.Equal(
            ["lures", "rods", "powers", "actions", "lines", "leaders", "reels", "hands", "styles", "efforts", "skills", "water", "cover"], json.EnumerateObject().Select(t => t.Name));
        Assert.Equal(PartLibrary.In("lures").Count(), json.GetProperty("lures").GetArrayLength());
        Assert.Equal(25.0, json.GetProperty("lures").EnumerateArray().First(l => l.GetProperty("name").GetString() == "slanted").GetProperty("trim_deg").GetDouble(), 1.0);
    }

    [Fact]
    public void A_name_that_is_nothing_is_refused_in_one_line()
    {
        Session session = Session.Run("list", "rodz");
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Equal("list: \"rodz\" is neither a list nor a part; lists: lures, rods, lines, leaders, reels, hands, styles, water, cover\n", session.Error);
    }
}
