using System.Numerics;
using System.Runtime.InteropServices;

namespace LureSim.Model.Lines.Chain;

/// <summary>Unchecked vector access to the padded arrays of the line.</summary>
internal static class Lanes
{
    /// <summary>Lanes of a vector.</summary>
    public static readonly int Width = Vector<double>.Count;

    /// <summary>First element.</summary>
    public static ref double First(double[] values) => ref MemoryMarshal.GetArrayDataReference(values);

    /// <summary>The vector that starts at an element.</summary>
    public static Vector<double> Load(ref double first, nuint index) => Vector.LoadUnsafe(ref first, index);

    /// <summary>Writes the vector that starts at an element.</summary>
    public static void Store(Vector<double> value, ref double first, nuint index) => value.StoreUnsafe(ref first, index);
}
