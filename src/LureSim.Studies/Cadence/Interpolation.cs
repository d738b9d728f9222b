namespace LureSim.Studies.Cadence;

/// <summary>Broken lines through samples.</summary>
public static class Interpolation
{
    /// <summary>Value of a broken line; level beyond its ends.</summary>
    /// <param name="at">Places, rising, at least one.</param>
    /// <param name="value">Values.</param>
    /// <param name="place">Where.</param>
    public static double At(ReadOnlySpan<double> at, ReadOnlySpan<double> value, double place)
    {
        int right = 0;
        while (right < at.Length && at[right] < place)
        {
            right++;
        }

        return right == 0 ? value[0]
            : right == at.Length ? value[^1]
            : value[right - 1] + ((value[right] - value[right - 1]) * (place - at[right - 1]) / (at[right] - at[right - 1]));
    }

    /// <summary>First place at which a broken line rises above a level: its first place when it starts above, NaN when it
    /// never does. Samples that are not finite are left out.</summary>
    /// <param name="at">Places, rising.</param>
    /// <param name="value">Values.</param>
    /// <param name="level">Level.</param>
    public static double FirstAbove(ReadOnlySpan<double> at, ReadOnlySpan<double> value, double level)
    {
        int before = -1;
        for (int i = 0; i < at.Length; i++)
        {
            if (!double.IsFinite(value[i]))
            {
                continue;
            }

            if (value[i] > level)
            {
                return before < 0
                    ? at[i]
                    : at[before] + ((at[i] - at[before]) * (level - value[before]) / (value[i] - value[before]));
            }

            before = i;
        }

        return double.NaN;
    }
}
