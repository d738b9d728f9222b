using System.Globalization;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Security.Cryptography;

namespace LureSim.Reports.Sweep;

/// <summary>What the last digits of a row depend on besides program and scenario: kind of processor, width of the vectors that are used, fused multiply-add, version
/// of .NET, and the functions that the system brings. Two machines with the same text are taken to make the same bits.</summary>
public static class MachineMaths
{
    private const int Samples = 200, Digits = 16;

    private static readonly Func<double, double>[] Functions =
    [
        Math.Sin, Math.Cos, Math.Tan, Math.Atan, Math.Exp, Math.Sinh, Math.Cosh, Math.Tanh, Math.Asinh, Math.Cbrt,
        x => Math.Log(Math.Abs(x)), x => Math.Pow(Math.Abs(x), 1.7), x => Math.Atan2(x, 0.3), x => Math.Asin(x / 50.0), x => Math.Acos(x / 50.0),
    ];

    /// <summary>This machine, on one line.</summary>
    public static string Here { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"{RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant()}, vectors of {64 * Vector<double>.Count} bits, fma {(IsFused() ? "yes" : "no")}, .NET {Environment.Version}, functions {Hash()}");

    private static bool IsFused() => System.Runtime.Intrinsics.X86.Fma.IsSupported || System.Runtime.Intrinsics.Arm.AdvSimd.Arm64.IsSupported;

    // Bits of functions over the arguments that a run meets, and of a sum whose order hangs on the vector's width.
    private static string Hash()
    {
        var bits = new List<byte>(Functions.Length * Samples * sizeof(double));
        var sum = Vector<double>.Zero;
        foreach (Func<double, double> function in Functions)
        {
            for (int i = 0; i < Samples; i++)
            {
                double value = function((i - (0.5 * Samples) + 0.37) * 0.4);
                bits.AddRange(BitConverter.GetBytes(BitConverter.DoubleToInt64Bits(value)));
                sum = (sum * 0.9) + new Vector<double>(value);
            }
        }

        bits.AddRange(BitConverter.GetBytes(BitConverter.DoubleToInt64Bits(Vector.Sum(sum))));
        return Convert.ToHexStringLower(SHA256.HashData(CollectionsMarshal.AsSpan(bits)))[..Digits];
    }
}
