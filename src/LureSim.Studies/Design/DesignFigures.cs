using LureSim.Model;

namespace LureSim.Studies.Design;

/// <summary>Every number of a lure in a design, in the order of tables and files.</summary>
public static class DesignFigures
{
    /// <summary>Angle at which it floats.</summary>
    public static readonly Figure<DesignPoint> Trim =
        new("trim_deg", "float angle", "angle of the axis over the water, nose up positive", p => p.TrimDeg) { Headline = new("float angle", "deg", 1.0) };

    /// <summary>Freeboard.</summary>
    public static readonly Figure<DesignPoint> Freeboard =
        new("freeboard_m", "freeboard", "back amidships over the water", p => p.FreeboardM) { Headline = new("freeboard", "mm", 1000.0) };

    /// <summary>GM across.</summary>
    public static readonly Figure<DesignPoint> Gm =
        new("gm_m", "GM across", "metacentric height across: above 0 it stands up by itself", p => p.GmM) { Headline = new("metacentric height", "mm", 1000.0) };

    /// <summary>Growth on a straight tow.</summary>
    public static readonly Figure<DesignPoint> Growth =
        new("tow_growth_per_s", "straight tow left at", "largest real part of the roots of the straight tow: above 0 it leaves it", p => p.GrowthPerS)
        {
            Headline = new("growth of an error in the straight tow", "1/s", 1.0),
        };

    /// <summary>Side force over what the straight tow needs.</summary>
    public static readonly Figure<DesignPoint> Margin =
        new("shedding_margin", "side force over critical", "chi less its critical value: above 0 it comes straight on a tight line", p => p.SheddingMargin);

    /// <summary>Turn at a pull.</summary>
    public static readonly Figure<DesignPoint> Turn = new("pull_turn_deg", "turn at one pull", "how far the heading turns at one pull", p => p.PullTurnDeg);

    /// <summary>Glide at a pull.</summary>
    public static readonly Figure<DesignPoint> Glide = new("pull_glide_m", "glide at one pull", "way across the line after one pull", p => p.PullGlideM);

    /// <summary>Those that tolerances and changes are told by.</summary>
    public static IReadOnlyList<Figure<DesignPoint>> Told { get; } = [Trim, Freeboard, Gm, Growth, Margin, Turn, Glide];

    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<DesignPoint>> All { get; } =
    [
        .. Told,
        new("tow_swing_rad_s", "swing on the tow", "swing of that root: 0 to one side, else it fishtails", p => p.Tow?.Modes[0].SwingRadS),
        new("critical_shedding", "critical side force", "least share of cross-flow shed at the stern from which the straight tow is kept", p => p.CriticalShedding),
        new("draft_m", "draft", "deepest point of the hull under the water", p => p.Trim?.DraftM),
        new("tie_height_m", "line tie over the water", "line tie over the water; negative under it", p => p.Trim?.Rest.TieHeightM),
        new("mass_kg", "mass with hooks", "mass with hooks", p => p.Trim?.Rest.MassKg),
        new("centre_x_m", "centre of gravity, x", "centre of gravity from the middle of the length, toward the nose", p => p.Trim?.Rest.CentreOfGravityXM),
        new("centre_z_m", "centre of gravity, z", "centre of gravity over the axis", p => p.Trim?.Rest.CentreOfGravityZM),
    ];
}
