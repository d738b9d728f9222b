using System.Text;
using LureSim.Reports.Sweep;
using LureSim.Studies.Batches;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

public sealed class SweepTableTests : IDisposable
{
    private readonly SweepFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_table_is_in_order_whatever_the_order_of_finishing()
    {
        string first = Text(_folder.Write("a", SweepFolder.Header(), 0, 1, 2, 3, 4, 5));
        Assert.Equal(first, Text(_folder.Write("b", SweepFolder.Header(), 5, 3, 1, 0, 2, 4)));
        Assert.StartsWith("index,rod.length_m,line.material,status,reason,pattern,glide_m\n0,2.1,nylon,done,,still,0\n", first, StringComparison.Ordinal);
        Assert.Contains("3,2.1,\"a, \"\"b\"\"\",done,,still,1\n", first, StringComparison.Ordinal);
        Assert.Equal(7, first.Count(c => c == '\n'));
    }

    [Fact]
    public void Parts_join_to_the_same_bytes()
    {
        string whole = Text(_folder.Write("a", SweepFolder.Header(), 0, 1, 2, 3, 4, 5));
        Journal[] parts = [Part(3, 2, 5), Part(1, 3, 0), Part(2, 4, 1)];
        Assert.Equal(whole, Text(parts));
    }

    [Fact]
    public void A_gap_is_refused() => Refused("gap: 2 of 6 runs are missing (1, 4); run again with --resume: part 2/3", Part(1, 3, 0), Part(3, 2, 5));

    [Fact]
    public void An_unfinished_part_is_a_gap() => Refused("gap: 1 of 6 runs are missing (4); run again with --resume: part 2/3", Part(1, 0, 3), Part(2, 1), Part(3, 2, 5));

    [Fact]
    public void The_same_part_twice_is_an_overlap()
    {
        Part(2, 1, 4);
        File.Copy(_folder.At("p2"), _folder.At("again"));
        Refused("overlap: run 1 is in", Part(1, 0, 3), Part(2, 1, 4), Part(3, 2, 5), Journal.Read(_folder.At("again"))!);
    }

    [Fact]
    public void A_run_twice_in_a_part_is_an_overlap() => Refused("overlap: run 4 is twice in", Part(1, 0, 3), Part(2, 1, 4, 4), Part(3, 2, 5));

    [Fact]
    public void A_part_of_another_sweep_is_refused() =>
        Refused("parts of different sweeps", Part(1, 0, 3), _folder.Write("s", SweepFolder.Header(6, new(2, 3), "other"), 1, 4), Part(3, 2, 5));

    [Fact]
    public void Parts_of_different_lengths_are_refused() =>
        Refused("parts of different sweeps", Part(1, 0, 3), _folder.Write("s", SweepFolder.Header(7, new(2, 3)), 1, 4), Part(3, 2, 5));

    [Fact]
    public void Damage_is_told_with_the_gap()
    {
        Part(2, 1, 4);
        string text = File.ReadAllText(_folder.At("p2"));
        File.WriteAllText(_folder.At("p2"), text.Replace("4,2.1", "4,2.2", StringComparison.Ordinal));
        Refused("(4); damaged lines: 1", Part(1, 0, 3), Journal.Read(_folder.At("p2"))!, Part(3, 2, 5));
    }

    [Fact]
    public void No_parts_are_refused() => Assert.Throws<SweepException>(() => SweepTable.Join([]));

    private static void Refused(string message, params Journal[] parts) =>
        Assert.Contains(message, Assert.Throws<SweepException>(() => SweepTable.Join(parts)).Message, StringComparison.Ordinal);

    private static string Text(params Journal[] parts)
    {
        using var stream = new MemoryStream();
        SweepTable.Join(parts).Write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private Journal Part(int number, params int[] indices) => _folder.Write($"p{number}", SweepFolder.Header(6, new Shard(number, 3)), indices);
}
