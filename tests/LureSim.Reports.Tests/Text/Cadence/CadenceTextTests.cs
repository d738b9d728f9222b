using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Tests.Text.Cadence;

public sealed class CadenceTextTests
{
    [Fact]
    public void The_text_of_one_set_up_stays_as_reviewed() => Expected.Matches(
        "window.txt", CadenceText.Build(MadeUpCadence.Window(0.9, 3.0), new RunNotes(["a note"], ["a guess"])));

    [Fact]
    public void Other_answers_read_as_reviewed() => Expected.Matches("answers.txt", string.Join("\n\n", new[]
    {
        MadeUpCadence.Window(0, 9), MadeUpCadence.Window(9, 9), MadeUpCadence.Window(1.5, 1.6), MadeUpCadence.TwoWindows(), MadeUpCadence.HalfFailed(), MadeUpCadence.Luck(),
        MadeUpCadence.Window(0.9, 3.0, new SustainedTorque(0.05, 0.05, 0.05)), MadeUpCadence.Window(0.9, 3.0, new SustainedTorque(1.5, 1, 9)),
    }.Select(r => CadenceStory.Headline(r) + "\n" + string.Join("\n", CadenceStory.Sentences(r, Shown.Both)))) + "\n");

    [Fact]
    public void The_text_of_many_set_ups_stays_as_reviewed() => Expected.Matches(
        "across.txt", AcrossText.Build(MadeUpCadence.Across(true, true), RunNotes.None));

    [Fact]
    public void The_text_of_a_map_stays_as_reviewed() => Expected.Matches("map.txt", MapText.Build(MadeUpCadence.Map(), RunNotes.None));

    [Fact]
    public void Lines_fit_a_terminal()
    {
        string text = CadenceText.Build(MadeUpCadence.TwoWindows(), RunNotes.None);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= Closing.Width, line));
        Assert.All(text, c => Assert.True(c < 128));
    }
}
