using System.Globalization;

namespace LureSim.Model.Tests.Data;

/// <summary>A stored reference trace: columns by header.</summary>
internal sealed class Trace
{
    private readonly string[] _header;
    private readonly double[][] _rows;

    private Trace(string[] header, double[][] rows) => (_header, _rows) = (header, rows);

    public int Count => _rows.Length;

    public static Trace Read(string file)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", file));
        return new Trace(
            lines[0].Split(','),
            lines.Skip(1).Select(l => l.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToArray());
    }

    public double[] this[string name]
    {
        get
        {
            int column = Array.IndexOf(_header, name);
            return _rows.Select(r => r[column]).ToArray();
        }
    }
}
