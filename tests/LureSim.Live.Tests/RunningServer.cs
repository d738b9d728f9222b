using System.Net.Http.Headers;
using System.Text;

namespace LureSim.Live.Tests;

/// <summary>A server on a free port of this machine with a page of three words.</summary>
public sealed class RunningServer : IAsyncLifetime, IDisposable
{
    private LiveServer? _server;

    /// <summary>A client that asks it.</summary>
    public HttpClient Client { get; } = new();

    internal LiveServer Server => _server!;

    private Uri Base => new(Server.Address.Split('#')[0]);

    private string Token => Server.Address.Split('#')[1];

    /// <summary>A shipped scenario.</summary>
    public static string Scenario => Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "..", "scenarios", "small-walker.toml");

    /// <inheritdoc/>
    public async Task InitializeAsync()
    {
        _server = new LiveServer(new(Scenario, null, 0, TimeSpan.FromMinutes(10)), new("<p>page"u8.ToArray(), "script()"u8.ToArray(), "p{}"u8.ToArray()));
        await _server.Start(CancellationToken.None);
    }

    /// <inheritdoc/>
    public async Task DisposeAsync() => await Server.DisposeAsync();

    /// <inheritdoc/>
    public void Dispose() => Client.Dispose();

    /// <summary>A request as the page itself sends it.</summary>
    /// <param name="path">Path.</param>
    /// <param name="json">Body; null = a GET.</param>
    public HttpRequestMessage Ask(string path, string? json = null)
    {
        var request = new HttpRequestMessage(json is null ? HttpMethod.Get : HttpMethod.Post, new Uri(Base, path));
        if (json is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(json)) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
            request.Headers.Add("Origin", Base.GetLeftPart(UriPartial.Authority));
            request.Headers.Add("Sec-Fetch-Site", "same-origin");
            request.Headers.Add(Gate.Header, Token);
        }

        return request;
    }
}
