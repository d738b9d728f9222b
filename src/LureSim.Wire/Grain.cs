using System.Buffers.Binary;

namespace LureSim.Wire;

/// <summary>Numbers kept as 16-bit steps: value = offset + unit * step.</summary>
internal static class Grain
{
    /// <summary>Steps either way of the middle.</summary>
    public const int Reach = short.MaxValue;

    /// <summary>The unit with which values this far from the middle still fit.</summary>
    /// <param name="reach">Largest distance from the middle.</param>
    public static double Unit(double reach) => reach / Reach;

    /// <summary>The nearest step.</summary>
    /// <param name="value">Value.</param>
    /// <param name="offset">Middle.</param>
    /// <param name="unit">Unit, 0 where all values are the middle.</param>
    public static short Step(double value, double offset, double unit) =>
        unit > 0.0 ? (short)Math.Clamp(Math.Round((value - offset) / unit), -Reach, Reach) : (short)0;

    /// <summary>Steps as base64 of little-endian 16-bit integers.</summary>
    /// <param name="steps">Steps.</param>
    public static string Text(ReadOnlySpan<short> steps)
    {
        byte[] bytes = new byte[2 * steps.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(2 * i), steps[i]);
        }

        return Convert.ToBase64String(bytes);
    }
}
