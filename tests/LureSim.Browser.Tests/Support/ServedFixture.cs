using LureSim.Live;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Studies.Page;

namespace LureSim.Browser.Tests.Support;

/// <summary>A shipped scenario served on a free port of this machine.</summary>
public sealed class ServedFixture : IAsyncLifetime, IAsyncDisposable
{
    private LiveServer? _server;

    /// <summary>The scenario.</summary>
    public string Scenario { get; } = BrowserFixture.Scenario("small-walker.toml");

    /// <summary>Address with the token behind #.</summary>
    public string Address => _server!.Address;

    /// <summary>The same without it.</summary>
    public string Base => Address.Split('#')[0];

    public async Task InitializeAsync()
    {
        if (BrowserSkip.Reason is not null)
        {
            return;
        }

        PageResult result = PageStudy.Run([new(Scenario, [])], new(WithRhythms: false), null, CancellationToken.None);
        _server = new LiveServer(new(Scenario, null, 0, TimeSpan.FromMinutes(10)), PageBuilder.Serve(result, Shown.Both, "luresim live small-walker.toml"));
        await _server.Start(CancellationToken.None);
    }

    ValueTask IAsyncDisposable.DisposeAsync() => new(DisposeAsync());

    public async Task DisposeAsync()
    {
        if (_server is not null)
        {
            await _server.DisposeAsync();
        }
    }
}
