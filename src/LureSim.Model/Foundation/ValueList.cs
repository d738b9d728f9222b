using System.Collections;
using System.Runtime.CompilerServices;

namespace LureSim.Model;

/// <summary>A list inside a specification or a result: it never changes, and two are equal when their items are.</summary>
/// <typeparam name="T">Type of the items.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] _items;

    internal ValueList(T[] items) => _items = items;

    /// <inheritdoc/>
    public int Count => _items.Length;

    /// <inheritdoc/>
    public T this[int index] => _items[index];

    /// <summary>The items for loops that must be fast.</summary>
    public ReadOnlySpan<T> Span => _items;

    /// <summary>The items as a span.</summary>
    /// <param name="list">List.</param>
    public static implicit operator ReadOnlySpan<T>(ValueList<T> list) => list is null ? default : list._items;

    /// <summary>Part of the items, not copied; lets a range stand in brackets.</summary>
    /// <param name="start">First.</param>
    /// <param name="length">How many.</param>
    public ReadOnlySpan<T> Slice(int start, int length) => _items.AsSpan(start, length);

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && _items.AsSpan().SequenceEqual(other._items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode() => _items.Aggregate(_items.Length, HashCode.Combine);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes lists from collection expressions.</summary>
public static class ValueList
{
    /// <summary>A list of these items.</summary>
    /// <typeparam name="T">Type of the items.</typeparam>
    /// <param name="items">Items; copied.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>A list around an array that nobody else holds or will change: long series need not be copied.</summary>
    /// <typeparam name="T">Type of the items.</typeparam>
    /// <param name="items">Items; not copied.</param>
    public static ValueList<T> Own<T>(T[] items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return new(items);
    }
}
