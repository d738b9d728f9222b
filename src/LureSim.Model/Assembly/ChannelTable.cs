namespace LureSim.Model.Assembly;

/// <summary>Grows channels row by row; the first row names them.</summary>
internal sealed class ChannelTable
{
    private readonly List<(string Name, string Unit, string Meaning, List<double> Values)> columns = [];
    private int next;

    /// <summary>Starts a row.</summary>
    public void BeginRow() => next = 0;

    /// <summary>Adds the next value of the row; the order of names must not change.</summary>
    /// <param name="name">Unit-suffixed name.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="meaning">One line.</param>
    /// <param name="value">Value.</param>
    /// <exception cref="InvalidOperationException">Another name stands here.</exception>
    public void Add(string name, string unit, string meaning, double value)
    {
        if (next == columns.Count)
        {
            columns.Add((name, unit, meaning, []));
        }
        else if (!ReferenceEquals(columns[next].Name, name) && columns[next].Name != name)
        {
            throw new InvalidOperationException($"channel {columns[next].Name} expected, {name} given");
        }

        columns[next++].Values.Add(value);
    }

    /// <summary>All channels.</summary>
    public Series ToSeries() =>
        new([.. columns.Select(c => new Channel(c.Name, c.Unit, c.Meaning, ValueList.Own(c.Values.ToArray())))]);
}
