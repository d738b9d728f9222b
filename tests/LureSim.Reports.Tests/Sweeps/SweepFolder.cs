using LureSim.Reports.Sweep;
using LureSim.Studies.Batches;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

/// <summary>A folder of made-up journals, gone after the test.</summary>
public sealed class SweepFolder : IDisposable
{
    public static readonly SweepLayout Layout = new(["rod.length_m", "line.material"], [], ["pattern"], ["glide_m"], 1);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("luresim-");

    public void Dispose() => _folder.Delete(recursive: true);

    public string At(string name) => Path.Combine(_folder.FullName, name);

    public static JournalHeader Header(int count = 6, Shard? shard = null, string print = "abc") => new(print, "retrieve", count, shard ?? Shard.Whole, Layout);

    public static string Line(int index) => Layout.Line(index, new(["2.1", index == 3 ? "a, \"b\"" : "nylon"], SweepRow.Done, "", ["still"], [index / 3.0]));

    /// <summary>Writes a journal with the runs in the order given.</summary>
    public Journal Write(string name, JournalHeader header, params int[] indices) => WriteOn("here", name, header, indices);

    /// <summary>The same on a machine of any name.</summary>
    public Journal WriteOn(string machine, string name, JournalHeader header, params int[] indices)
    {
        using (JournalWriter writer = JournalWriter.Start(At(name), header, machine))
        {
            foreach (int index in indices)
            {
                writer.Write(Line(index));
            }
        }

        return Journal.Read(At(name))!;
    }
}
