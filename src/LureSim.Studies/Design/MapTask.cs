using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Design;

/// <summary>How a map is made.</summary>
/// <param name="Columns">What varies from column to column.</param>
/// <param name="Rows">What varies from row to row.</param>
/// <param name="Sizes">Hooks of the lure by size.</param>
/// <param name="Keeps">What stays when the mass of the weight varies.</param>
/// <param name="Height">How the weight is held where its place or its mass varies.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record MapTask(MapAxis Columns, MapAxis Rows, HookSizes Sizes, KeptMass Keeps = KeptMass.Total, BallastHeight Height = BallastHeight.Kept, int Threads = 0)
{
    /// <summary>The usual map of a lure; one without a weight gets a new one, as low as it fits, where place and mass vary.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <param name="columns">What varies from column to column.</param>
    /// <param name="rows">What varies from row to row.</param>
    /// <param name="keeps">What stays.</param>
    /// <param name="height">How the weight is held.</param>
    /// <exception cref="ArgumentException">The two make no map of this lure; the message says why.</exception>
    public static MapTask Of(LureSpec lure, HookSizes sizes, ChangeKind columns, ChangeKind rows, KeptMass keeps, BallastHeight height)
    {
        var task = new MapTask(MapAxis.Of(columns, lure, sizes), MapAxis.Of(rows, lure, sizes), sizes, keeps, BallastSlot.Of(lure, height).Height);
        task.Check(lure);
        return task;
    }

    /// <summary>True where something varies.</summary>
    /// <param name="kind">What.</param>
    public bool Varies(ChangeKind kind) => Columns.Kind == kind || Rows.Kind == kind;

    /// <summary>The lure of a cell. Which of the two are columns leaves no trace.</summary>
    /// <param name="lure">Lure as it is.</param>
    /// <param name="column">Value of the column.</param>
    /// <param name="row">Value of the row.</param>
    /// <exception cref="ArgumentException">There is nothing of the kind on the lure.</exception>
    public LureSpec At(LureSpec lure, double column, double row)
    {
        ArgumentNullException.ThrowIfNull(lure);
        var slot = BallastSlot.Of(lure);
        LureSpec bare = slot.Index < 0 && IsNewWeight ? slot.With(slot.Weight) : lure;
        return Columns.Order < Rows.Order
            ? Rows.With(Columns.With(bare, column, this), row, this)
            : Columns.With(Rows.With(bare, row, this), column, this);
    }

    /// <summary>Throws <see cref="ArgumentException"/> when the axes make no map of a lure.</summary>
    /// <param name="lure">Lure.</param>
    public void Check(LureSpec lure)
    {
        Columns.Check();
        Rows.Check();
        if (Columns.Kind == Rows.Kind)
        {
            throw new ArgumentException($"a map needs two axes that differ, not \"{Columns.Name}\" twice");
        }

        bool hasWeight = BallastSlot.Of(lure).Index >= 0;
        if (!hasWeight && (Columns.IsOfWeight || Rows.IsOfWeight) && !IsNewWeight)
        {
            throw new ArgumentException("the lure has no weight (lure.ballast); a new one is tried on the map of its place and mass alone");
        }

        if (Height == BallastHeight.Lowest && Varies(ChangeKind.BallastUp))
        {
            throw new ArgumentException("the height of the weight is an axis of the map, so the weight cannot be the lowest that fits too");
        }
    }

    private bool IsNewWeight => Varies(ChangeKind.BallastAlong) && Varies(ChangeKind.BallastMass);
}
