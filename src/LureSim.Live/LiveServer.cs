using System.Net;
using System.Net.Mime;
using System.Text;
using System.Text.Json;
using LureSim.Reports.Page;
using LureSim.Wire;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace LureSim.Live;

/// <summary>What the server serves and how long it waits.</summary>
/// <param name="File">Scenario file.</param>
/// <param name="Units">Units, or null for those of the file.</param>
/// <param name="Port">Port; 0 = a free one.</param>
/// <param name="Silence">It ends when the page was not heard of for so long.</param>
internal sealed record LiveOptions(string File, string? Units, int Port, TimeSpan Silence);

/// <summary>
/// The page on the own machine: the page itself, its script and style, one run, whole studies, and a sign of life. Loopback only; who may ask: <see cref="Gate"/>.
/// </summary>
internal sealed class LiveServer : IAsyncDisposable
{
    /// <summary>Bytes that a request may have: a run is 10 to 30 kB.</summary>
    public const int MostBytes = 200_000;

    // CSP level 3: nothing but what this server sends; pictures of studies are blobs that the page makes of an answer.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data: blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private const string NewLines = "application/x-ndjson";

    private readonly WebApplication _app;
    private readonly ServedPage _page;
    private readonly Gate _gate;
    private readonly LastSeen _seen = new(TimeProvider.System);
    private readonly LiveOptions _options;
    private readonly StudyRun _studies;
    private readonly string _token = Gate.NewToken();
    private readonly Latest _latestStudy = new();
    private int _port;

    /// <summary>Prepares the server.</summary>
    /// <param name="options">What it serves.</param>
    /// <param name="page">The page.</param>
    public LiveServer(LiveOptions options, ServedPage page)
    {
        (_options, _page, _gate, _studies) = (options, page, new(_token), new(options.File, options.Units));
        // No file and no variable of the machine changes how it serves.
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(k =>
        {
            k.Listen(IPAddress.Loopback, options.Port);
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = MostBytes;
        });
        _app = builder.Build();
        _app.Run(Serve);
    }

    /// <summary>Address to open: the token stands behind #, which no browser sends anywhere.</summary>
    public string Address => $"http://127.0.0.1:{_port}/#{_token}";

    /// <summary>Starts to listen.</summary>
    /// <param name="stop">Ends the start.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public async Task Start(CancellationToken stop)
    {
        await _app.StartAsync(stop).ConfigureAwait(false);
        string bound = _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
        _port = new Uri(bound).Port;
        _seen.Now();
    }

    /// <summary>Serves until the page has been closed for a while, or it is stopped.</summary>
    /// <param name="stop">Ends it; then this throws.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public Task UntilSilent(CancellationToken stop) => _seen.Silence(_options.Silence, stop);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _latestStudy.Dispose();
        await _app.DisposeAsync().ConfigureAwait(false);
    }

    private async Task Serve(HttpContext context)
    {
        IHeaderDictionary head = context.Response.Headers;
        head.ContentSecurityPolicy = Policy;
        head.XContentTypeOptions = "nosniff";
        head.CacheControl = "no-store";
        head["Referrer-Policy"] = "no-referrer";
        head["Cross-Origin-Resource-Policy"] = "same-origin";
        if (_gate.Refusal(context.Request, _port) is (int status, string words))
        {
            await Say(context, status, words).ConfigureAwait(false);
            return;
        }

        _seen.Now();
        try
        {
            await Answer(context).ConfigureAwait(false);
        }
        catch (FormatException e)
        {
            await Say(context, StatusCodes.Status422UnprocessableEntity, e.Message).ConfigureAwait(false);
        }
        catch (Microsoft.AspNetCore.Http.BadHttpRequestException e)
        {
            await Say(context, e.StatusCode, e.StatusCode == StatusCodes.Status413PayloadTooLarge ? $"a request may have {MostBytes} bytes" : "the request cannot be read").ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            // The page asks for something newer, or is closed: nobody waits for this answer.
            context.Abort();
        }
    }

    private Task Answer(HttpContext context) => (context.Request.Method, context.Request.Path.Value) switch
    {
        ("GET", "/") => Send(context, "text/html; charset=utf-8", _page.Html),
        ("GET", PageBuilder.ScriptPath) => Send(context, "text/javascript; charset=utf-8", _page.Script),
        ("GET", PageBuilder.StylePath) => Send(context, "text/css; charset=utf-8", _page.Style),
        ("POST", "/run") => Run(context),
        ("POST", "/study") => Study(context),
        ("POST", "/alive") => Say(context, StatusCodes.Status200OK, ""),
        _ => Say(context, StatusCodes.Status404NotFound, "there is nothing here"),
    };

    private static async Task Run(HttpContext context)
    {
        string run = Encoding.UTF8.GetString(await Body(context).ConfigureAwait(false));
        bool coarse = context.Request.Query.ContainsKey("coarse");
        CancellationToken gone = context.RequestAborted;
        string answer = await Task.Run(() => RunAnswer.Answer(run, coarse, new(null, gone)), gone).ConfigureAwait(false);
        await Send(context, MediaTypeNames.Application.Json, Encoding.UTF8.GetBytes(answer)).ConfigureAwait(false);
    }

    // Studies use every core: a newer one ends the one before.
    private async Task Study(HttpContext context)
    {
        StudyRequest request = StudyRequest.Read(await Body(context).ConfigureAwait(false));
        using CancellationTokenSource own = _latestStudy.Next(context.RequestAborted);
        using IDisposable work = _seen.AtWork();
        context.Response.ContentType = NewLines;
        await foreach (StudyLine line in _studies.Lines(request, own.Token).ConfigureAwait(false))
        {
            byte[] bytes = JsonSerializer.SerializeToUtf8Bytes(line, StudyJson.Default.StudyLine);
            await context.Response.BodyWriter.WriteAsync(bytes, own.Token).ConfigureAwait(false);
            await context.Response.BodyWriter.WriteAsync("\n"u8.ToArray(), own.Token).ConfigureAwait(false);
        }
    }

    private static async Task<byte[]> Body(HttpContext context)
    {
        using var all = new MemoryStream();
        await context.Request.Body.CopyToAsync(all, context.RequestAborted).ConfigureAwait(false);
        return all.ToArray();
    }

    private static Task Say(HttpContext context, int status, string words)
    {
        context.Response.StatusCode = status;
        return Send(context, "text/plain; charset=utf-8", Encoding.UTF8.GetBytes(words));
    }

    private static async Task Send(HttpContext context, string type, byte[] bytes)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = bytes.Length;
        await context.Response.BodyWriter.WriteAsync(bytes, context.RequestAborted).ConfigureAwait(false);
    }
}
