using System.Diagnostics;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Running;

/// <summary>A wish to stop: its own exit code, no half-written files.</summary>
public sealed class StopTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-").FullName;

    private string Folder => Path.Combine(_root, "out");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Theory]
    [InlineData("retrieve")]
    [InlineData("cast")]
    [InlineData("cast", "--across", "rod.length=6 ft,7 ft")]
    [InlineData("cast", "--match", "30 m")]
    [InlineData("cadence")]
    [InlineData("cadence", "--across", "rod.length=6 ft,7 ft")]
    [InlineData("cadence", "--map")]
    [InlineData("trim")]
    [InlineData("pool")]
    [InlineData("strike")]
    [InlineData("strike", "--doubt", "20")]
    [InlineData("crawl", "--set", "cover.kind=mat")]
    public void Every_command_stops_with_its_own_code_and_leaves_nothing(string command, params string[] options)
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Session session = Session.Run(stop.Token, [command, Small, .. options, "--out", Folder]);
        Assert.Equal((ExitCode.Stopped, "stopped\n"), (session.Exit, session.Error));
        Assert.False(Directory.Exists(Folder));
    }

    // Drawing takes as long as the run; a wish that comes then counts too.
    [Theory]
    [InlineData("cast", "cast.json")]
    [InlineData("trim", "trim.json")]
    [InlineData("pool", "pool.json")]
    [InlineData("retrieve", "summary.json")]
    [InlineData("strike", "summary.json")]
    public void A_wish_that_comes_while_files_are_written_is_granted(string command, string first)
    {
        using var stop = new CancellationTokenSource();
        var watcher = new Thread(StopAtFirst) { IsBackground = true };
        watcher.Start();
        Session session = Session.Run(stop.Token, command, Small, "--out", Folder);
        Assert.Equal((ExitCode.Stopped, "stopped\n", ""), (session.Exit, session.Error, session.Out));
        Assert.False(Directory.Exists(Folder));

        void StopAtFirst()
        {
            string staged = Path.Combine(Folder, ".luresim-staging", "new", first);
            while (!File.Exists(staged))
            {
                Thread.Yield();
            }

            stop.Cancel();
        }
    }

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public void A_signal_stops_a_cast(string signal)
    {
        // Its own group, for a shell lets the jobs behind it ignore Ctrl-C.
        using Process process = BuiltProgram.Start($"exec {BuiltProgram.Line} cast {Small} --out {Folder}");
        while (!process.HasExited && !Directory.Exists(Path.Combine(Folder, ".luresim-staging")))
        {
            Thread.Sleep(1);
        }

        using (Process kill = Process.Start("bash", ["-c", $"kill -{signal} {process.Id}"]))
        {
            kill.WaitForExit();
        }

        Assert.Equal("stopped\n", process.StandardError.ReadToEnd());
        process.WaitForExit();
        Assert.Equal(ExitCode.Stopped, process.ExitCode);
        Assert.False(Directory.Exists(Folder));
    }
}
