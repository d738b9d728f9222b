using System.Diagnostics;
using System.Text;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

/// <summary>What a journal takes as its own, what it refuses, and what a full disk leaves of it.</summary>
public sealed class JournalTrustTests : IDisposable
{
    private readonly SweepFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Rows_of_another_sweep_are_not_taken()
    {
        _folder.Write("own", SweepFolder.Header(), 0, 1);
        _folder.Write("other", SweepFolder.Header(print: "def"), 2, 3, 4);
        Journal mixed = Spliced("own", "other");
        Assert.Equal((2, 3), (mixed.DoneCount, mixed.DamagedCount));
        Assert.False(mixed.Has(2));
    }

    [Fact]
    public void Rows_of_another_machine_are_not_taken_for_this_ones()
    {
        _folder.Write("own", SweepFolder.Header(), 0, 1);
        _folder.WriteOn("there", "other", SweepFolder.Header(), 2, 3, 4);
        Journal mixed = Spliced("own", "other");
        Assert.Equal((2, 3), (mixed.DoneCount, mixed.DamagedCount));
    }

    // A check without a seed would be the same for the same text anywhere.
    [Fact]
    public void A_row_whose_check_was_made_for_the_bare_text_is_not_taken()
    {
        _folder.Write("own", SweepFolder.Header(), 0);
        byte[] forged = JournalSeal.First.Close(SweepFolder.Line(1));
        File.AppendAllText(_folder.At("own"), Encoding.UTF8.GetString(forged));
        Journal journal = Journal.Read(_folder.At("own"))!;
        Assert.Equal((1, 1, false), (journal.DoneCount, journal.DamagedCount, journal.Has(1)));
    }

    [Fact]
    public void A_sealed_row_with_too_few_cells_is_not_taken()
    {
        using (JournalWriter writer = JournalWriter.Start(_folder.At("a"), SweepFolder.Header(), "here"))
        {
            writer.Write("0,2.1");
            writer.Write("machine");
            writer.Write("");
        }

        Journal journal = Journal.Read(_folder.At("a"))!;
        Assert.Equal((0, 3), (journal.DoneCount, journal.DamagedCount));
    }

    [Fact]
    public void Every_machine_that_made_rows_is_named()
    {
        Journal first = _folder.WriteOn("one", "a", SweepFolder.Header(), 0, 1);
        using (JournalWriter writer = JournalWriter.Continue(first, "two"))
        {
            writer.Write(SweepFolder.Line(2));
        }

        Journal second = Journal.Read(_folder.At("a"))!;
        Assert.Equal(["one", "two"], second.Machines);
        using (JournalWriter writer = JournalWriter.Continue(second, "two"))
        {
            writer.Write(SweepFolder.Line(3));
        }

        Journal third = Journal.Read(_folder.At("a"))!;
        Assert.Equal(["one", "two"], third.Machines);
        Assert.Equal((4, 0), (third.DoneCount, third.DamagedCount));
        using FileStream stream = third.Open();
        Assert.Equal([.. Enumerable.Range(0, 4).Select(SweepFolder.Line)], Enumerable.Range(0, 4).Select(i => third.Row(stream, i)));
    }

    [Fact]
    public void This_machine_is_told_on_one_line_the_same_each_time()
    {
        Assert.Matches(@"^[a-z0-9]+, vectors of \d+ bits, fma (yes|no), \.NET [0-9.]+, functions [0-9a-f]{16}$", MachineMaths.Here);
        Assert.DoesNotContain('\t', MachineMaths.Here);
    }

    [Theory]
    [InlineData("abc\tretrieve\t-6\t1/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\t0\t1/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\t2147483647\t1/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\t99999999999\t1/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\tsix\t1/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\t6\t2/1\t2,0,1,1,1")]
    [InlineData("abc\tretrieve\t6\t1/1\t2,0,1,1,0")]
    [InlineData("abc\tretrieve\t6\t1/1\t2,0,1,1,4")]
    [InlineData("abc\tretrieve\t6\t1/1\t2,0,1,1,2")]
    [InlineData("abc\tretrieve\t6\t1/1\t2147483647,2147483647,1,1,1")]
    [InlineData("abc\tretrieve\t6\t1/1\t")]
    [InlineData("abc\tretr\u001b[31m\t6\t1/1\t2,0,1,1,1")]
    public void A_crafted_first_line_is_refused(string middle)
    {
        File.WriteAllBytes(_folder.At("x"), JournalSeal.First.Close($"luresim-sweep-2\t{middle}\t{SweepFolder.Layout.Header}"));
        Assert.Contains("is no journal", Assert.Throws<SweepException>(() => Journal.Read(_folder.At("x"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_line_without_end_is_refused_before_it_is_read_whole()
    {
        using (FileStream stream = File.Create(_folder.At("x")))
        {
            // Takes no room on the disk; read whole it would take all memory.
            stream.SetLength(1L << 40);
        }

        Assert.Contains("is no journal", Assert.Throws<SweepException>(() => Journal.Read(_folder.At("x"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_line_among_the_rows_is_a_damaged_line()
    {
        _folder.Write("a", SweepFolder.Header(), 0);
        byte[] whole = File.ReadAllBytes(_folder.At("a"));
        _folder.Write("b", SweepFolder.Header(), 1);
        byte[] row = File.ReadAllBytes(_folder.At("b"))[^(SweepFolder.Line(1).Length + 18)..];
        File.WriteAllBytes(_folder.At("x"), [.. whole, .. new byte[3 << 20], (byte)'\n', .. row]);
        Journal journal = Journal.Read(_folder.At("x"))!;
        Assert.Equal((2, 1), (journal.DoneCount, journal.DamagedCount));
        using FileStream stream = journal.Open();
        Assert.Equal(SweepFolder.Line(1), journal.Row(stream, 1));

        // Zeros without a line feed, as a power cut leaves them, are a torn line.
        File.WriteAllBytes(_folder.At("y"), [.. whole, .. new byte[3 << 20]]);
        journal = Journal.Read(_folder.At("y"))!;
        Assert.Equal((1, 0, whole.Length), (journal.DoneCount, journal.DamagedCount, journal.End));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(40)]
    public void A_full_disk_is_told_once_and_leaves_whole_lines(int room)
    {
        using var disk = new SmallDisk();
        JournalWriter writer = JournalWriter.On(disk, SweepFolder.Header(), "here");
        writer.Write(SweepFolder.Line(0));
        byte[] before = disk.ToArray();
        disk.Room = before.Length + room;
        var error = Assert.Throws<OutputException>(() => writer.Write(SweepFolder.Line(1)));
        Assert.Equal("cannot write to 'stream': No space left on device", error.Message);
        disk.Room = int.MaxValue;

        // Another thread may come with its row: after a hole in the list nothing more is taken, and closing is no second error.
        Assert.Same(error, Assert.Throws<OutputException>(() => writer.Write(SweepFolder.Line(2))));
        Assert.Equal(before, disk.ToArray());
        disk.IsBroken = true;
        writer.Dispose();
    }

    [Fact]
    public void A_pipe_as_journal_is_refused_at_once()
    {
        string pipe = _folder.At("pipe");
        using (Process made = Process.Start("mkfifo", pipe))
        {
            made.WaitForExit();
        }

        Assert.Null(Journal.Read(pipe));
        Assert.Contains("it is a pipe", Assert.Throws<OutputException>(() => JournalWriter.Start(pipe, SweepFolder.Header(), "here")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/dev/zero")]
    [InlineData("/dev/full")]
    [InlineData("/dev/null")]
    public void A_device_as_journal_is_refused(string device)
    {
        Assert.Null(Journal.Read(device));
        Assert.Throws<OutputException>(() => JournalWriter.Start(device, SweepFolder.Header(), "here"));
    }

    private Journal Spliced(string own, string other)
    {
        const int heads = 2;
        File.AppendAllLines(_folder.At(own), File.ReadAllLines(_folder.At(other))[heads..]);
        return Journal.Read(_folder.At(own))!;
    }

    /// <summary>A file on a disk with little room: it takes what fits and then complains, and when broken complains on closing.</summary>
    private sealed class SmallDisk : MemoryStream
    {
        public int Room { get; set; } = int.MaxValue;

        public bool IsBroken { get; set; }

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            int fits = (int)Math.Min(buffer.Length, Room - Position);
            base.Write(buffer[..fits].ToArray(), 0, fits);
            if (fits < buffer.Length)
            {
                throw new IOException("No space left on device");
            }
        }

        protected override void Dispose(bool disposing)
        {
            base.Dispose(disposing);
            if (IsBroken)
            {
                IsBroken = false;
                throw new IOException("No space left on device");
            }
        }
    }
}
