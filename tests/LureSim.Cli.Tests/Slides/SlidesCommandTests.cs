using System.Text.Json;
using System.Text.RegularExpressions;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Slides;

/// <summary>The command <c>slides</c> as a person types it.</summary>
public sealed partial class SlidesCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("slides").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Pictures_are_numbered_in_the_order_of_the_notes_in_both_formats()
    {
        Session session = Session.Run("slides", Session.Scenario("large-walker"), "--quick", "--out", _folder);
        Assert.Equal(ExitCode.Done, session.Exit);
        string[] stems = [.. Directory.GetFiles(_folder, "*.svg").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];
        Assert.Equal(stems.Skip(1), Directory.GetFiles(_folder, "*.png").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal));
        Assert.Equal("01_walk", stems[0]);
        Assert.DoesNotContain(stems, s => s.Contains("cadence", StringComparison.Ordinal));
        Assert.Contains(stems, s => s.EndsWith("_cast_path", StringComparison.Ordinal));
        Assert.Contains(stems, s => s.EndsWith("_trim_side", StringComparison.Ordinal));
        Match[] lines = [.. File.ReadLines(Path.Combine(_folder, "notes.md")).Select(l => Line().Match(l)).Where(m => m.Success)];
        Assert.Equal(stems, lines.Select(m => $"{int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture):00}_{m.Groups[2].Value}"));
        Assert.All(lines, m => Assert.StartsWith("luresim ", m.Groups[3].Value, StringComparison.Ordinal));
        Assert.All(stems, s => Assert.Contains(s, session.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void Several_files_have_a_folder_each_and_json_lists_their_slides()
    {
        Session session = Session.Run(
            "slides", Session.Scenario("large-walker"), Session.Scenario("small-walker"), "--quick", "--set", "retrieve.duration=8 s", "--json", "--plots", "none", "--out", _folder);
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement talks = JsonDocument.Parse(session.Out).RootElement.GetProperty("talks");
        Assert.Equal(2, talks.GetArrayLength());
        Assert.EndsWith("--set 'retrieve.duration=8 s'", talks[0].GetProperty("slides")[0].GetProperty("command").GetString(), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_folder, "large-walker", "notes.md")));
        Assert.True(File.Exists(Path.Combine(_folder, "small-walker", "notes.md")));
    }

    [Fact]
    public void Two_files_of_one_name_and_a_file_with_a_fault_are_refused_before_anything_runs()
    {
        Session twice = Session.Run("slides", Session.Scenario("large-walker"), Session.Scenario("large-walker"), "--quick", "--out", _folder);
        Assert.Equal(ExitCode.BadInput, twice.Exit);
        Assert.Contains("another file is called large-walker", twice.Error, StringComparison.Ordinal);
        Session wrong = Session.Run("slides", Session.Scenario("large-walker"), Path.Combine(_folder, "none.toml"), "--quick", "--out", _folder);
        Assert.Equal(ExitCode.BadInput, wrong.Exit);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_steady_pull_has_slides_without_a_moving_one()
    {
        Session session = Session.Run("slides", Session.Scenario("large-walker"), "--set", "retrieve.stroke=0 cm", "--set", "retrieve.duration=6 s", "--json");
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement slides = JsonDocument.Parse(session.Out).RootElement.GetProperty("talks")[0].GetProperty("slides");
        Assert.Equal("01_path_top", slides[0].GetProperty("name").GetString());
    }

    [GeneratedRegex(@"^(\d+)\. \*\*.+\*\* \((\w+)\)\. .+ `(.+)`$")]
    private static partial Regex Line();
}
