using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>Changes, dead ends and fates of lures in words.</summary>
public static class DesignWords
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>A change.</summary>
    /// <param name="change">Change.</param>
    /// <param name="shown">Units.</param>
    public static string Change(DesignChange change, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(shown);
        var units = new DesignUnits(shown);
        double a = change.Amount, size = Math.Abs(a);
        return change.Kind switch
        {
            ChangeKind.BallastAlong => $"weight {units.LengthText(size)} {(a > 0.0 ? "forward" : "back")}",
            ChangeKind.BallastUp => $"weight {units.LengthText(size)} {(a > 0.0 ? "up" : "down")}",
            ChangeKind.BallastMass => $"weight {units.MassText(size)} {(a > 0.0 ? "heavier" : "lighter")}",
            ChangeKind.BodyMass => $"body {units.MassText(size)} {(a > 0.0 ? "heavier" : "lighter")}",
            ChangeKind.TieAlong => $"line tie {units.LengthText(size)} {(a > 0.0 ? "forward" : "back")}",
            ChangeKind.TieUp => $"line tie {units.LengthText(size)} {(a > 0.0 ? "up" : "down")}",
            ChangeKind.HookSize => $"hooks one size {(a > 0.0 ? "larger" : "smaller")}",
            ChangeKind.NoFrontHook => "front hook left off",
            ChangeKind.NoRearHook => "rear hook left off",
            ChangeKind.Length => $"{Trade.Fixed(100.0 * size, 0)} % {(a > 0.0 ? "longer" : "shorter")}",
            _ => $"{Trade.Fixed(100.0 * size, 0)} % {(a > 0.0 ? "thicker" : "thinner")}",
        };
    }

    /// <summary>Name of a change in files.</summary>
    /// <param name="kind">Kind.</param>
    public static string Key(ChangeKind kind) => kind switch
    {
        ChangeKind.BallastAlong => "ballast_x_m",
        ChangeKind.BallastUp => "ballast_z_m",
        ChangeKind.BallastMass => "ballast_mass_kg",
        ChangeKind.BodyMass => "body_mass_kg",
        ChangeKind.TieAlong => "tie_x_m",
        ChangeKind.TieUp => "tie_z_m",
        ChangeKind.HookSize => "hook_sizes",
        ChangeKind.NoFrontHook => "no_front_hook",
        ChangeKind.NoRearHook => "no_rear_hook",
        ChangeKind.Length => "length_share",
        _ => "section_share",
    };

    /// <summary>What becomes of a lure on the water.</summary>
    /// <param name="word">Word.</param>
    public static string Fate(FloatWord word) => word switch
    {
        FloatWord.Floats => "floats",
        FloatWord.LiesOver => "lies over",
        FloatWord.Sinks => "sinks",
        _ => "cannot be made",
    };

    /// <summary>Size of a hook; as it is where none is said.</summary>
    /// <param name="row">Place in the table of sizes.</param>
    public static string Size(int? row) => row is int r ? HookSizes.Name(r) : "as is";

    /// <summary>Why a wish cannot be had.</summary>
    /// <param name="end">Dead end.</param>
    /// <param name="shown">Units.</param>
    public static string DeadEnd(DeadEnd end, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(shown);
        var units = new DesignUnits(shown);
        string weight = $"A weight of {units.MassText(end.MassKg)}";
        return end.Kind switch
        {
            DeadEndKind.OutOfBody => $"{weight} would have to lie {units.Along(end.XM)}; there is room for it as far as {units.Along(end.LimitM)}.",
            DeadEndKind.FreeboardSetByMass => $"The mass sets the freeboard: at this angle it comes to {units.LengthText(end.XM)} instead of {units.LengthText(end.LimitM)}, wherever the weight "
                + $"lies. {units.LengthText(end.LimitM)} would take {units.MassText(end.MassKg)} with hooks.",
            DeadEndKind.TooHeavy => $"It is too heavy before any of this weight goes in: body and hooks would have to be {units.MassText(end.MassKg)} lighter.",
            DeadEndKind.Sinks => $"It would sink: {units.MassText(end.MassKg)} with hooks, and hull and hooks can displace {units.MassText(end.LimitM)} of water.",
            DeadEndKind.LiesOver => $"{weight} would balance it at that angle, but it would not stand up: GM across is {units.LengthText(end.XM)}. Put it lower.",
            DeadEndKind.OtherAngle => $"{weight} would balance it at that angle, but it floats more calmly at {Trade.Fixed(end.XM / Degree, 1)} deg.",
            _ => $"A ball of {units.MassText(end.MassKg)} has no room in the body.",
        };
    }

    /// <summary>Why lures of a search do not walk.</summary>
    /// <param name="dead">Dead end.</param>
    public static string DeadWalk(DeadWalk dead)
    {
        ArgumentNullException.ThrowIfNull(dead);
        return dead.Word != FloatWord.Floats ? Fate(dead.Word) : dead.Pattern switch
        {
            WalkPattern.Alternating => "walks",
            WalkPattern.Tracking => "comes straight, never walks",
            WalkPattern.OneSided => "swings to one side",
            WalkPattern.Diving => "dives",
            WalkPattern.Standing or WalkPattern.Still => "stands still",
            WalkPattern.RolledOver => "rolls over",
            WalkPattern.Fouling => "catches its own line",
            WalkPattern.Turning => "turns on the spot",
            WalkPattern.Skipping => "misses pulls",
            WalkPattern.Spinning => "spins",
            WalkPattern.Irregular => "answers irregularly",
            _ => "the run failed",
        };
    }
}
