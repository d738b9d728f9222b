namespace LureSim.Scenarios.Starting;

/// <summary>Hooks that lures of a mass usually carry. Common practice, no source; makers differ by a size or two.</summary>
internal static class UsualHooks
{
    // From this mass of the whole lure on, kg: size of each of two trebles.
    private static readonly (double FromKg, string Size)[] Trebles =
    [
        (0.0, "no. 10"), (0.004, "no. 8"), (0.006, "no. 6"), (0.0115, "no. 4"), (0.017, "no. 2"), (0.026, "1/0"), (0.040, "2/0"), (0.060, "3/0"), (0.090, "4/0"),
    ];

    // The same for the double hook of a hollow lure.
    private static readonly (double FromKg, string Size)[] Doubles =
    [
        (0.0, "no. 2"), (0.004, "1/0"), (0.007, "2/0"), (0.011, "3/0"), (0.0145, "4/0"), (0.022, "5/0"),
    ];

    /// <summary>The usual size.</summary>
    /// <param name="points">Points of a hook.</param>
    /// <param name="massKg">Mass of the lure as sold, kg.</param>
    public static string Size(double points, double massKg) => (points < 3.0 ? Doubles : Trebles).Last(r => massKg >= r.FromKg).Size;
}
