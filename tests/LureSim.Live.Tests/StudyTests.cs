using System.Net;
using System.Text.Json;

namespace LureSim.Live.Tests;

/// <summary>Whole studies through the page's own requests.</summary>
public sealed class StudyTests(RunningServer server) : IClassFixture<RunningServer>
{
    [Fact]
    public async Task A_study_answers_with_text_and_pictures()
    {
        JsonElement last = (await Lines("""{"study":"trim","set":[]}"""))[^1];
        Assert.Contains("float", last.GetProperty("text").GetString(), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("effective.toml", last.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Files:", last.GetProperty("text").GetString(), StringComparison.Ordinal);
        JsonElement[] pictures = [.. last.GetProperty("pictures").EnumerateArray()];
        Assert.NotEmpty(pictures);
        Assert.All(pictures, p => Assert.Contains("<svg", p.GetProperty("svg").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Values_are_laid_over_the_file()
    {
        string plain = (await Lines("""{"study":"trim","set":[]}"""))[^1].GetProperty("text").GetString()!;
        string heavier = (await Lines("""{"study":"trim","set":["lure.ballast[1].mass=3 g"]}"""))[^1].GetProperty("text").GetString()!;
        Assert.NotEqual(plain, heavier);
    }

    [Fact]
    public async Task A_sweep_says_what_it_found()
    {
        JsonElement last = (await Lines("""{"study":"sweep","set":["retrieve.duration=2 s"],"vary":"retrieve.stroke=15 cm:25 cm:3"}"""))[^1];
        Assert.Contains("3", last.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"study":"trim","set":["lure.mass=-1 g"]}""", "lure.mass")]
    [InlineData("""{"study":"trim","set":["--out=elsewhere"]}""", "--set")]
    public async Task A_value_that_is_refused_comes_back_in_the_programs_words(string request, string part) =>
        Assert.Contains(part, (await Lines(request))[^1].GetProperty("fault").GetString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("""{"study":"merge","set":[]}""")]
    [InlineData("""{"study":"trim"}""")]
    [InlineData("""{"study":"trim","set":null}""")]
    [InlineData("""{"study":"trim","set":[],"out":"elsewhere"}""")]
    [InlineData("""{"study":"trim","set":[],"vary":"lure.mass=1 g:2 g:3"}""")]
    [InlineData("""{"study":"sweep","set":[]}""")]
    public async Task A_request_that_makes_no_sense_is_refused_in_words(string json)
    {
        using HttpResponseMessage answer = await server.Client.SendAsync(server.Ask("/study", json));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotEmpty(await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task A_newer_study_ends_the_one_before()
    {
        Task<HttpResponseMessage> first = server.Client.SendAsync(server.Ask("/study", """{"study":"cadence","set":[]}"""), HttpCompletionOption.ResponseHeadersRead);
        using HttpResponseMessage started = await first;
        await Lines("""{"study":"trim","set":[]}""");
        await Assert.ThrowsAnyAsync<Exception>(() => started.Content.ReadAsStringAsync());
    }

    private async Task<IReadOnlyList<JsonElement>> Lines(string request)
    {
        using HttpResponseMessage answer = await server.Client.SendAsync(server.Ask("/study", request));
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement)];
    }
}
