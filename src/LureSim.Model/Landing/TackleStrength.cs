using LureSim.Model.Assembly;

namespace LureSim.Model.Landing;

/// <summary>What ends a pull or a lift.</summary>
public enum LandingLimit
{
    /// <summary>The hands hold no more torque.</summary>
    Hands,

    /// <summary>Arms and body hold no more pull.</summary>
    Arms,

    /// <summary>The rod is bent as far as it bears.</summary>
    Rod,

    /// <summary>Knot in the main line; the line itself bears more.</summary>
    Knot,

    /// <summary>Leader at its knots.</summary>
    Leader,

    /// <summary>Wire of the hook, bent open.</summary>
    HookWire,

    /// <summary>Hold of the points in the fish.</summary>
    HookHold,
}

/// <summary>The weakest of what a pull goes through between tip and fish.</summary>
/// <param name="Limit">Which.</param>
/// <param name="LoadN">What it bears, N.</param>
public readonly record struct TackleStrength(LandingLimit Limit, double LoadN)
{
    /// <summary>Of a set-up.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="knotShare">Strength of the knots over the line's.</param>
    public static TackleStrength Weakest(Setup setup, double knotShare)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var weakest = new TackleStrength(LandingLimit.Knot, knotShare * setup.Line.BreakN);
        if (setup.Leader is not null)
        {
            weakest = weakest.Or(LandingLimit.Leader, knotShare * setup.Leader.Line.BreakN);
        }

        return weakest.Or(LandingLimit.HookWire, setup.Hook.OpeningN).Or(LandingLimit.HookHold, setup.Hook.TearingN);
    }

    /// <summary>The weaker of this and another; this one where they are equal.</summary>
    /// <param name="limit">The other.</param>
    /// <param name="loadN">What it bears, N.</param>
    public TackleStrength Or(LandingLimit limit, double loadN) => loadN < LoadN ? new(limit, loadN) : this;
}
