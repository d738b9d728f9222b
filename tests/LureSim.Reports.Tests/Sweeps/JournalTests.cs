using LureSim.Reports.Kit.Files;
using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

public sealed class JournalTests : IDisposable
{
    // The lines before the rows: which sweep, which machine.
    private const int Heads = 2;
    private readonly SweepFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_was_written_is_there_again()
    {
        Journal journal = _folder.Write("a", SweepFolder.Header(), 4, 0, 3);
        Assert.Equal((3, 6, 0), (journal.DoneCount, journal.DueCount, journal.DamagedCount));
        Assert.Equal([true, false, false, true, true, false], Enumerable.Range(0, 6).Select(journal.Has));
        Assert.Equal(SweepFolder.Header().Text, journal.Header.Text);
        Assert.Equal(SweepFolder.Layout.Header, journal.Header.Layout.Header);
        Assert.Null(journal.Repeated);
    }

    [Fact]
    public void A_file_torn_at_any_byte_keeps_every_whole_run()
    {
        _folder.Write("a", SweepFolder.Header(), 2, 3);
        byte[] whole = File.ReadAllBytes(_folder.At("a"));
        int[] ends = [.. whole.Index().Where(b => b.Item == '\n').Select(b => b.Index + 1)];
        for (int cut = 0; cut <= whole.Length; cut++)
        {
            File.WriteAllBytes(_folder.At("t"), whole[..cut]);
            Journal? journal = Journal.Read(_folder.At("t"));
            if (cut < ends[0])
            {
                Assert.Null(journal);
                continue;
            }

            Assert.Equal((Math.Max(ends.Count(e => e <= cut) - Heads, 0), 0), (journal!.DoneCount, journal.DamagedCount));
            using (JournalWriter writer = JournalWriter.Continue(journal, "here"))
            {
                writer.Write(SweepFolder.Line(5));
            }

            Assert.Equal(journal.DoneCount + 1, Journal.Read(_folder.At("t"))!.DoneCount);
        }
    }

    // A torn line longer than the next one would show behind it if it were only written over.
    [Fact]
    public void Going_on_leaves_nothing_of_a_torn_line_however_long_it_was()
    {
        _folder.Write("a", SweepFolder.Header(), 2);
        byte[] whole = File.ReadAllBytes(_folder.At("a"));
        _folder.Write("b", SweepFolder.Header(), 2, 5);
        File.WriteAllBytes(_folder.At("t"), [.. whole, .. Enumerable.Repeat((byte)'5', 5000)]);
        using (JournalWriter writer = JournalWriter.Continue(Journal.Read(_folder.At("t"))!, "here"))
        {
            writer.Write(SweepFolder.Line(5));
        }

        Assert.Equal(File.ReadAllBytes(_folder.At("b")), File.ReadAllBytes(_folder.At("t")));
    }

    [Fact]
    public void Any_changed_bit_of_a_run_is_found()
    {
        _folder.Write("a", SweepFolder.Header(), 2, 3, 4);
        byte[] whole = File.ReadAllBytes(_folder.At("a"));
        int[] ends = [.. whole.Index().Where(b => b.Item == '\n').Select(b => b.Index)];
        for (int at = ends[Heads] + 1; at < ends[Heads + 1]; at++)
        {
            for (int bit = 0; bit < 8; bit++)
            {
                byte[] damaged = [.. whole];
                damaged[at] ^= (byte)(1 << bit);
                File.WriteAllBytes(_folder.At("d"), damaged);
                Journal journal = Journal.Read(_folder.At("d"))!;
                Assert.False(journal.Has(3));
                Assert.True(journal.Has(2) && journal.Has(4));
                Assert.InRange(journal.DamagedCount, 1, 2);
            }
        }
    }

    [Theory]
    [InlineData("index,status\n0,done\n")]
    [InlineData("\n")]
    [InlineData("luresim-sweep-1\tabc\tretrieve\t6\t1/1\t2,0,1,1,1\tindex\t0123456789abcdef\n")]
    public void What_is_no_journal_is_refused(string text)
    {
        File.WriteAllText(_folder.At("x"), text);
        Assert.Contains("is no journal", Assert.Throws<SweepException>(() => Journal.Read(_folder.At("x"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_no_error() => Assert.Null(Journal.Read(_folder.At("none")));

    [Fact]
    public void A_run_of_another_part_does_not_count()
    {
        Journal journal = _folder.Write("a", SweepFolder.Header(6, new(1, 2)), 0, 1, 2);
        Assert.Equal((2, 1, 3), (journal.DoneCount, journal.DamagedCount, journal.DueCount));
    }

    [Fact]
    public void Two_writers_are_refused()
    {
        using JournalWriter first = JournalWriter.Start(_folder.At("a"), SweepFolder.Header(), "here");
        Assert.Throws<OutputException>(() => JournalWriter.Start(_folder.At("a"), SweepFolder.Header(), "here"));
    }

    [Fact]
    public void An_unwritable_place_is_an_output_error() =>
        Assert.Throws<OutputException>(() => JournalWriter.Start("/dev/null/x", SweepFolder.Header(), "here"));
}
