namespace LureSim.Studies.Sampling;

/// <summary>
/// Latin hypercube (McKay, Beckman and Conover 1979, Technometrics 21, 239): in every dimension each of n equal slices holds exactly one of n
/// samples, at a random place. Computed per sample, without tables, so that part 7 of 8 of a list needs nothing of the others:
/// the order of the slices is a keyed permutation (Feistel rounds with cycle walking; Black and Rogaway 2002, CT-RSA, LNCS 2271).
/// </summary>
/// <remarks>Sources from memory. The same seed gives the same bits everywhere. Immutable; safe to use from several threads.</remarks>
public sealed class LatinHypercube
{
    private const int Rounds = 6;
    private readonly ulong _seed;
    private readonly int _halfBits;

    /// <summary>Creates the design.</summary>
    /// <param name="count">n, at least 1.</param>
    /// <param name="seed">Seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No samples.</exception>
    public LatinHypercube(int count, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        (Count, _seed) = (count, seed);
        int bits = 32 - System.Numerics.BitOperations.LeadingZeroCount((uint)(count - 1));
        _halfBits = Math.Max(1, (bits + 1) / 2);
    }

    /// <summary>Number of samples.</summary>
    public int Count { get; }

    /// <summary>Place of a sample in a dimension, 0 to 1, 1 excluded.</summary>
    /// <param name="sample">0 to <see cref="Count"/> - 1.</param>
    /// <param name="dimension">0 or more.</param>
    public double Share(int sample, int dimension)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(dimension);
        ArgumentOutOfRangeException.ThrowIfNegative(sample);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(sample, Count);
        ulong key = Mix(Mix(_seed + 0x9E3779B97F4A7C15) + (ulong)dimension);
        double place = (Mix(key + 0xD1B54A32D192ED03 + (ulong)sample) >> 11) * (1.0 / (1UL << 53));
        return Math.Min((Slice((uint)sample, key) + place) / Count, Math.BitDecrement(1.0));
    }

    private uint Slice(uint sample, ulong key)
    {
        do
        {
            sample = Permute(sample, key);
        }
        while (sample >= Count);
        return sample;
    }

    private uint Permute(uint value, ulong key)
    {
        uint mask = (1u << _halfBits) - 1;
        uint left = value >> _halfBits, right = value & mask;
        for (int round = 0; round < Rounds; round++)
        {
            (left, right) = (right, left ^ ((uint)(Mix(key + ((ulong)round << 32) + right) >> 32) & mask));
        }

        return (left << _halfBits) | right;
    }

    // Finaliser of SplitMix64 (Steele, Lea and Flood 2014).
    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
