using System.Diagnostics;
using LureSim.Cli.Tests.Support;
using LureSim.Reports.Sweep;

namespace LureSim.Cli.Tests.Sweeps;

/// <summary>However a sweep ends, resuming it gives the bytes of the sweep that was never interrupted.</summary>
public sealed class KillAndResumeTests(SweepFixture fixture) : IClassFixture<SweepFixture>
{
    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void A_journal_torn_at_random_places_resumes_to_the_same_bytes(int seed)
    {
        // Three kills: each time the journal is cut at a random byte, as a kill in the middle of a write would leave it.
        var random = new Random(seed);
        string folder = Copy();
        string journal = Path.Combine(folder, "sweep.journal");
        for (int kill = 0; kill < 3; kill++)
        {
            using (FileStream stream = File.OpenWrite(journal))
            {
                stream.SetLength((long)(stream.Length * (0.6 + (0.39 * random.NextDouble()))));
            }

            Assert.True(Journal.Read(journal)!.DoneCount < SweepFixture.Runs);
            Resume(folder);
        }
    }

    [Fact]
    public void A_killed_process_loses_nothing_and_repeats_nothing()
    {
        string folder = fixture.NewFolder();
        string journal = Path.Combine(folder, "sweep.journal");
        string program = Path.Combine(AppContext.BaseDirectory, "luresim.dll");
        using (var process = Process.Start(new ProcessStartInfo("dotnet", [program, .. SweepFixture.Arguments(folder), "--threads", "2"])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        })!)
        {
            while (!process.HasExited && !(File.Exists(journal) && new FileInfo(journal).Length > 20_000))
            {
                Thread.Sleep(1);
            }

            process.Kill();
            process.WaitForExit();
        }

        int done = Journal.Read(journal)!.DoneCount;
        Assert.InRange(done, 1, SweepFixture.Runs - 1);
        Assert.False(File.Exists(Path.Combine(folder, "sweep.csv")));
        Session refused = Session.Run(SweepFixture.Arguments(folder));
        Assert.Equal(ExitCode.BadInput, refused.Exit);
        Assert.Contains($"holds {done} of 500 runs of a sweep that was stopped: go on with --resume", refused.Error, StringComparison.Ordinal);
        Resume(folder);
    }

    [Fact]
    public void A_damaged_line_is_run_again()
    {
        string folder = Copy();
        string journal = Path.Combine(folder, "sweep.journal");
        byte[] bytes = File.ReadAllBytes(journal);
        bytes[bytes.Length / 2] ^= 4;
        File.WriteAllBytes(journal, bytes);
        Session session = Session.Run([.. SweepFixture.Arguments(folder).Where(a => a != "--quiet"), "--resume"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("1 damaged or foreign lines", session.Error, StringComparison.Ordinal);
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));
    }

    [Fact]
    public void A_person_who_stops_it_keeps_what_is_done()
    {
        string folder = fixture.NewFolder();
        using var stop = new CancellationTokenSource();

        // A thread of its own: the sweep keeps the pool busy, and a timer would fire too late.
        var watcher = new Thread(() => StopAtLength(Path.Combine(folder, "sweep.journal"), 10_000, stop)) { IsBackground = true };
        watcher.Start();
        Session session = Session.Run(stop.Token, SweepFixture.Arguments(folder));
        Assert.Equal(ExitCode.Stopped, session.Exit);
        Assert.Matches(@"^stopped: \d+ of 500 runs are kept in .*sweep\.journal; the same command with --resume goes on\n$", session.Error);
        Resume(folder);
    }

    private static void StopAtLength(string journal, long length, CancellationTokenSource stop)
    {
        while (new FileInfo(journal) is not { Exists: true } file || file.Length <= length)
        {
            Thread.Yield();
        }

        stop.Cancel();
    }

    [Fact]
    public void A_finished_sweep_resumes_to_itself() => Resume(Copy());

    [Fact]
    public void Another_sweep_is_not_gone_on_with()
    {
        string folder = Copy();
        Session session = Session.Run([.. SweepFixture.Arguments(folder), "--resume", "--set", "water.temperature=21 C"]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains("belongs to another sweep", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_run_apart_merge_to_the_same_bytes()
    {
        string folder = fixture.NewFolder();
        for (int part = 3; part >= 1; part--)
        {
            Session session = Session.Run([.. SweepFixture.Arguments(folder), "--shard", $"{part}/3"]);
            Assert.Equal(ExitCode.Done, session.Exit);
            Assert.False(File.Exists(Path.Combine(folder, "sweep.csv")));
        }

        Session merged = Session.Run("sweep", "merge", folder);
        Assert.Equal(ExitCode.Done, merged.Exit);
        Assert.Contains("500 runs, 250 with a result", merged.Out, StringComparison.Ordinal);
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));

        File.Delete(Path.Combine(folder, "sweep-2-of-3.journal"));
        Session gap = Session.Run("sweep", "merge", folder, "--out", fixture.At("gap"));
        Assert.Equal(ExitCode.BadInput, gap.Exit);
        Assert.Contains("gap: 167 of 500 runs are missing (1, 4, 7, 10, 13, ...)", gap.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(fixture.At("gap")));

        Session overlap = Session.Run("sweep", "merge", folder, Path.Combine(fixture.At("whole"), "sweep.journal"), "--out", fixture.At("gap"));
        Assert.Equal(ExitCode.BadInput, overlap.Exit);
        Assert.Contains("overlap: run 0 is in", overlap.Error, StringComparison.Ordinal);
    }

    private string Copy()
    {
        string folder = fixture.NewFolder();
        Directory.CreateDirectory(folder);
        File.Copy(Path.Combine(fixture.At("whole"), "sweep.journal"), Path.Combine(folder, "sweep.journal"));
        return folder;
    }

    private void Resume(string folder)
    {
        Session session = Session.Run([.. SweepFixture.Arguments(folder), "--resume", "--threads", "3"]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));
        Journal journal = Journal.Read(Path.Combine(folder, "sweep.journal"))!;
        Assert.Equal((SweepFixture.Runs, 0), (journal.DoneCount, journal.DamagedCount));
        Assert.Null(journal.Repeated);
    }
}
