using System.Net;

namespace LureSim.Live.Tests;

/// <summary>Who is answered, and how others are turned away (rules of the browsers: WHATWG Fetch, RFC 6454 origin, W3C Fetch Metadata).</summary>
public sealed class GateTests(RunningServer server) : IClassFixture<RunningServer>
{
    [Fact]
    public async Task The_page_itself_is_answered_with_a_strict_policy()
    {
        using HttpResponseMessage answer = await server.Client.SendAsync(server.Ask("/"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("<p>page", await answer.Content.ReadAsStringAsync());
        string policy = string.Join(';', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self';", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.True(answer.Headers.CacheControl!.NoStore);
    }

    [Theory]
    [InlineData("/page.js", "text/javascript", "script()")]
    [InlineData("/page.css", "text/css", "p{}")]
    public async Task Script_and_style_come_as_such(string path, string type, string text)
    {
        using HttpResponseMessage answer = await server.Client.SendAsync(server.Ask(path));
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(text, await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task A_sign_of_life_is_taken() => await Turned(server.Ask("/alive", "{}"), HttpStatusCode.OK);

    [Fact]
    public async Task A_name_that_points_here_is_turned_away()
    {
        HttpRequestMessage request = server.Ask("/");
        request.Headers.Host = "example.org";
        await Turned(request, HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task Another_port_in_the_host_is_turned_away()
    {
        HttpRequestMessage request = server.Ask("/");
        request.Headers.Host = "127.0.0.1:1";
        await Turned(request, HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData("Origin", "http://example.org")]
    [InlineData("Origin", null)]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData(Gate.Header, null)]
    [InlineData(Gate.Header, "")]
    [InlineData(Gate.Header, "0123456789abcdef")]
    public async Task Whoever_is_not_the_page_is_turned_away(string header, string? value)
    {
        HttpRequestMessage request = server.Ask("/alive", "{}");
        request.Headers.Remove(header);
        if (value is not null)
        {
            request.Headers.TryAddWithoutValidation(header, value);
        }

        await Turned(request, HttpStatusCode.Forbidden);
    }

    [Theory]
    [InlineData("OPTIONS")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public async Task No_other_page_gets_leave_to_ask(string method)
    {
        HttpRequestMessage request = server.Ask("/run");
        request.Method = new HttpMethod(method);
        request.Headers.Add("Access-Control-Request-Method", "POST");
        request.Headers.Add("Origin", "http://example.org");
        using HttpResponseMessage answer = await server.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.DoesNotContain(answer.Headers, h => h.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task A_form_of_another_page_is_no_request()
    {
        HttpRequestMessage request = server.Ask("/run", "{}");
        request.Content!.Headers.ContentType = new("text/plain");
        await Turned(request, HttpStatusCode.UnsupportedMediaType);
    }

    [Fact]
    public async Task A_body_too_large_is_refused_in_words() =>
        Assert.Contains(
            LiveServer.MostBytes.ToString(System.Globalization.CultureInfo.InvariantCulture),
            await Turned(server.Ask("/study", new string(' ', LiveServer.MostBytes + 1)), HttpStatusCode.RequestEntityTooLarge), StringComparison.Ordinal);

    [Fact]
    public async Task Nothing_else_is_here() => await Turned(server.Ask("/etc/passwd"), HttpStatusCode.NotFound);

    private async Task<string> Turned(HttpRequestMessage request, HttpStatusCode status)
    {
        using HttpResponseMessage answer = await server.Client.SendAsync(request);
        Assert.Equal(status, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync();
    }
}
