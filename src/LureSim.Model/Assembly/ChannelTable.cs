using System.Runtime.InteropServices;

namespace LureSim.Model.Assembly;

/// <summary>Grows channels row by row; the first row names them.</summary>
internal sealed class ChannelTable
{
    private readonly List<(string Name, string Unit, string Meaning, List<double> Values)> _columns = [];
    private int _next;

    /// <summary>Starts a row.</summary>
    public void BeginRow() => _next = 0;

    /// <summary>Adds the next value of the row; the order of names must not change.</summary>
    /// <param name="name">Unit-suffixed name.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="meaning">One line.</param>
    /// <param name="value">Value.</param>
    /// <exception cref="InvalidOperationException">Another name stands here.</exception>
    public void Add(string name, string unit, string meaning, double value)
    {
        if (_next == _columns.Count)
        {
            _columns.Add((name, unit, meaning, []));
        }
        else if (!ReferenceEquals(_columns[_next].Name, name) && _columns[_next].Name != name)
        {
            throw new InvalidOperationException($"channel {_columns[_next].Name} expected, {name} given");
        }

        _columns[_next++].Values.Add(value);
    }

    /// <summary>All channels.</summary>
    /// <param name="from">First row.</param>
    public Series ToSeries(int from = 0) =>
        new([.. _columns.Select(c => new Channel(c.Name, c.Unit, c.Meaning, ValueList.Own(CollectionsMarshal.AsSpan(c.Values)[from..].ToArray())))]);
}
