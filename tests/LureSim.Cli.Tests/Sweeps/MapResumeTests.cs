using LureSim.Cli.Tests.Support;
using LureSim.Reports.Sweep;

namespace LureSim.Cli.Tests.Sweeps;

/// <summary>However a map ends, resuming it gives the bytes of one that ran through.</summary>
public sealed class MapResumeTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-").FullName;

    private string Part => Path.Combine(_root, "part");

    private string JournalPath => Path.Combine(Part, "map.journal");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_map_stopped_in_the_middle_torn_and_resumed_has_the_bytes_of_one_that_ran_through()
    {
        string whole = Path.Combine(_root, "whole");
        Assert.Equal(ExitCode.Done, Session.Run([.. Map(whole), "--threads", "1"]).Exit);
        Stop();
        int done = Journal.Read(JournalPath)!.DoneCount;
        Assert.Equal(["map.journal"], Names(Part));

        Session refused = Session.Run(Map(Part));
        Assert.Equal(ExitCode.BadInput, refused.Exit);
        Assert.Contains($"holds {done} runs of a map that was stopped: go on with --resume", refused.Error, StringComparison.Ordinal);

        // As a kill in the middle of a line leaves it.
        using (FileStream stream = File.OpenWrite(JournalPath))
        {
            stream.SetLength(stream.Length - 100);
        }

        Assert.Equal(done - 1, Journal.Read(JournalPath)!.DoneCount);
        Session resumed = Session.Run([.. Map(Part), "--resume", "--threads", "3"]);
        Assert.Equal((ExitCode.Done, ""), (resumed.Exit, resumed.Error));
        Assert.Equal(Names(whole), Names(Part));
        Assert.DoesNotContain("map.journal", Names(Part));
        Assert.All(Names(whole), name => Assert.Equal(File.ReadAllBytes(Path.Combine(whole, name)), File.ReadAllBytes(Path.Combine(Part, name))));
    }

    [Fact]
    public void Another_map_and_another_study_are_not_gone_on_with()
    {
        Stop();
        foreach (string[] other in (string[][])[["--set", "water.temperature=21 C"], ["--step", "0.5 ms"]])
        {
            Session session = Session.Run([.. Map(Part), "--resume", .. other]);
            Assert.Equal(ExitCode.BadInput, session.Exit);
            Assert.Contains("belongs to another map", session.Error, StringComparison.Ordinal);
        }

        Session merged = Session.Run("sweep", "merge", Part);
        Assert.Equal(ExitCode.BadInput, merged.Exit);
        Assert.Contains("is the journal of a map that was stopped", merged.Error, StringComparison.Ordinal);
        File.WriteAllText(JournalPath, "something else\n");
        Assert.Contains("is no journal", Session.Run([.. Map(Part), "--resume"]).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("go with --map alone", "--resume")]
    [InlineData("go with --map alone", "--across", "line", "--mix-machines")]
    [InlineData("name the folder with --out", "--map", "--json", "--resume")]
    public void Going_on_is_for_maps_with_a_folder(string expected, params string[] options)
    {
        Session session = Session.Run(["cadence", Small, .. options]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(expected, session.Error, StringComparison.Ordinal);
    }

    // Short runs on few segments; nothing of them is looked at but that they are the same.
    private static string[] Map(string folder) =>
    [
        "cadence", Small, "--map", "retrieve.cadence=1.2 /s:1.3 /s,retrieve.stroke=14 cm:15 cm", "--starts", "2", "--warm-up", "1 s", "--twitches", "4", "--nodes", "8",
        "--set", "retrieve.hull=planar", "--plots", "svg", "--quiet", "--out", folder,
    ];

    private static string[] Names(string folder) => [.. Directory.EnumerateFileSystemEntries(folder).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];

    private void Stop()
    {
        using var stop = new CancellationTokenSource();

        // A thread of its own: the map keeps the pool busy, and a timer would fire too late.
        var watcher = new Thread(() =>
        {
            while (new FileInfo(JournalPath) is not { Exists: true, Length: > 30_000 })
            {
                Thread.Yield();
            }

            stop.Cancel();
        })
        { IsBackground = true };
        watcher.Start();
        Session session = Session.Run(stop.Token, Map(Part));
        Assert.Equal(ExitCode.Stopped, session.Exit);
        Assert.Matches(@"^stopped: \d+ runs of the map are kept in .*map\.journal; the same command with --resume goes on\n$", session.Error);
    }
}
