using LureSim.Cli;
using LureSim.Cli.Live;
using LureSim.Cli.Running;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Studies.Page;

namespace LureSim.Live;

/// <summary>From the arguments to a server that has ended.</summary>
internal static class LiveHost
{
    /// <summary>Makes the page, serves it, says where, and ends when the page was closed, Ctrl-C came, or whoever started this is gone.</summary>
    /// <param name="values">Arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="starter">What whoever started this holds open; null where nobody is in between.</param>
    /// <param name="stop">Set when the person stops it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> Run(LiveValues values, Terminal terminal, Stream? starter, CancellationToken stop)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var options = new LiveOptions(values.File, values.Units, values.Port, TimeSpan.FromMinutes(LiveArguments.Minutes));
        try
        {
            terminal.Error.WriteLine("live: making the page ...");
            var server = new LiveServer(options, Page(values, terminal, ended.Token));
            await using (server.ConfigureAwait(false))
            {
                await server.Start(ended.Token).ConfigureAwait(false);
                terminal.Out.WriteLine($"Open {server.Address}");
                terminal.Error.WriteLine($"Only this machine can open it. It ends {LiveArguments.Minutes} minutes after the page is closed, or with Ctrl-C.");
                _ = EndWithStarter(starter, ended);
                await server.UntilSilent(ended.Token).ConfigureAwait(false);
            }

            terminal.Error.WriteLine("live: the page was closed; ended");
            return ExitCode.Done;
        }
        catch (IOException e)
        {
            terminal.Error.WriteLine($"live: port {values.Port} cannot be used: {e.Message}");
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            terminal.Error.WriteLine("stopped");
            return ExitCode.Stopped;
        }
    }

    // Without the search over rhythms, which is a button there.
    private static ServedPage Page(LiveValues values, Terminal terminal, CancellationToken stop)
    {
        var file = new PageFile(values.File, []);
        using var progress = new ProgressLine("live", terminal, quiet: false);
        PageResult result = PageStudy.Run([file], new PagePlan(WithRhythms: false, WithStrike: false, WithBuilding: false), progress.Report, stop);
        Shown shown = values.Units is string units ? new(Enum.Parse<UnitChoice>(units, ignoreCase: true)) : Shown.For(file.Here.Units);
        return PageBuilder.Serve(result, shown, $"luresim live {ShellWord.Of(values.File)}");
    }

    private static async Task EndWithStarter(Stream? starter, CancellationTokenSource ended)
    {
        if (starter is null)
        {
            return;
        }

        byte[] some = new byte[1];
        try
        {
            while (await starter.ReadAsync(some, ended.Token).ConfigureAwait(false) > 0)
            {
            }

            await ended.CancelAsync().ConfigureAwait(false);
        }
        catch (Exception e) when (e is OperationCanceledException or ObjectDisposedException)
        {
            // It has ended by itself.
        }
    }
}
