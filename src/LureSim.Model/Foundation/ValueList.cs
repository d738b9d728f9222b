using System.Collections;
using System.Runtime.CompilerServices;

namespace LureSim.Model;

/// <summary>A list inside a specification: it never changes, and two are equal when their items are.</summary>
/// <typeparam name="T">Type of the items.</typeparam>
/// <param name="items">Items; copied.</param>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T>(ReadOnlySpan<T> items) : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items = items.ToArray();

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => items.Aggregate(items.Length, HashCode.Combine);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes lists from collection expressions.</summary>
public static class ValueList
{
    /// <summary>A list of these items.</summary>
    /// <typeparam name="T">Type of the items.</typeparam>
    /// <param name="items">Items; copied.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items);
}
