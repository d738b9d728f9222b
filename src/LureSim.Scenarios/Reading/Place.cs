using System.Globalization;

namespace LureSim.Scenarios.Reading;

/// <summary>A file or an override that values come from.</summary>
/// <param name="Name">Name as printed.</param>
/// <param name="Order">Order of reading, for sorting faults.</param>
/// <param name="IsOverride">True for an override: it has no lines.</param>
internal sealed record Source(string Name, int Order, bool IsOverride = false);

/// <summary>Where a value stands. Lines and columns count from 1; 0 = the source as a whole.</summary>
internal readonly record struct Place(Source Source, int Line = 0, int Column = 0) : IComparable<Place>
{
    /// <inheritdoc/>
    public int CompareTo(Place other)
    {
        int bySource = Source.Order.CompareTo(other.Source.Order);
        int byLine = bySource != 0 ? bySource : Line.CompareTo(other.Line);
        return byLine != 0 ? byLine : Column.CompareTo(other.Column);
    }

    /// <inheritdoc/>
    public override string ToString() => Line == 0 || Source.IsOverride
        ? Source.Name
        : string.Create(CultureInfo.InvariantCulture, $"{Source.Name}({Line},{Column})");
}
