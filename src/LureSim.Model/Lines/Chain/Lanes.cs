using System.Numerics;
using System.Runtime.InteropServices;

namespace LureSim.Model.Lines.Chain;

/// <summary>Unchecked vector access to the padded arrays of the line.</summary>
internal static class Lanes
{
    /// <summary>Lanes of a vector.</summary>
    public static readonly int Width = Vector<double>.Count;

    private static readonly Vector<double> Ascending = CountUp();

    /// <summary>Above 0 in the lanes of a vector from <paramref name="index"/> on that stand before <paramref name="end"/>.</summary>
    public static Vector<double> LanesBefore(nuint index, int end) => new Vector<double>(end - (double)index) - Ascending;

    /// <summary>First element.</summary>
    public static ref double First(double[] values) => ref MemoryMarshal.GetArrayDataReference(values);

    /// <summary>The vector that starts at an element.</summary>
    public static Vector<double> Load(ref double first, nuint index) => Vector.LoadUnsafe(ref first, index);

    /// <summary>Largest of the values and 0.</summary>
    public static double Largest(ReadOnlySpan<double> values)
    {
        ref double first = ref MemoryMarshal.GetReference(values);
        Vector<double> most = Vector<double>.Zero;
        int i = 0;
        for (; i <= values.Length - Width; i += Width)
        {
            most = Vector.Max(most, Load(ref first, (nuint)i));
        }

        double largest = 0.0;
        for (int lane = 0; lane < Width; lane++)
        {
            largest = Math.Max(largest, most[lane]);
        }

        for (; i < values.Length; i++)
        {
            largest = Math.Max(largest, values[i]);
        }

        return largest;
    }

    /// <summary>Writes the vector that starts at an element.</summary>
    public static void Store(Vector<double> value, ref double first, nuint index) => value.StoreUnsafe(ref first, index);

    private static Vector<double> CountUp()
    {
        var lanes = new double[Width];
        for (int k = 0; k < lanes.Length; k++)
        {
            lanes[k] = k;
        }

        return new(lanes);
    }
}
