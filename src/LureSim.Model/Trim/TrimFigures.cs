namespace LureSim.Model.Trim;

/// <summary>Every number of a lure at rest, in the order of the files.</summary>
public static class TrimFigures
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<TrimResult>> All { get; } =
    [
        new("trim_deg", "trim, nose up", "angle of the axis over the water, nose up positive", t => t.Rest.TrimRad / Degree) { Headline = new("trim", "deg", 1.0) },
        new("heel_deg", "heel", "angle at which it lies over; 0 when it stands up by itself", t => t.Rest.HeelRad / Degree),
        new("draft_m", "draft", "deepest point of the hull under the water", t => t.DraftM) { Headline = new("draft", "mm", 1000.0) },
        new("freeboard_m", "freeboard", "back amidships over the water", t => t.FreeboardM),
        new("nose_height_m", "nose over the water", "foremost point of the axis over the water", t => t.Rest.NoseHeightM),
        new("tie_height_m", "line tie over the water", "line tie over the water; negative under it", t => t.Rest.TieHeightM),
        new("gm_m", "GM across", "metacentric height across: above 0 it stands up by itself", t => t.Rest.GmTransverseM) { Headline = new("metacentric height", "mm", 1000.0) },
        new("gm_long_m", "GM lengthwise", "metacentric height lengthwise", t => t.Rest.GmLongitudinalM),
        new("rights_itself_to_deg", "rights itself to", "heel up to which the righting arm is positive", t => t.RightsItselfToDeg),
        new("dipping_load_N", "pull that dips the nose", "downward pull at the line tie that brings the nose to the water", t => t.DippingLoadN),
        new("tie_stiffness_N_m", "stiffness at the tie", "pull at the line tie per metre that it sinks, small pulls", t => t.TieStiffnessNM),
        new("mass_kg", "mass with hooks", "mass with hooks", t => t.Rest.MassKg),
        new("volume_m3", "volume of the hull", "volume of the whole hull", t => t.Rest.HullVolumeM3),
        new("immersed_share", "under water", "displaced over whole volume, hooks in the first", t => t.Rest.DisplacedVolumeM3 / t.Rest.HullVolumeM3),
        new("centre_x_m", "centre of gravity, x", "centre of gravity from the middle of the length, toward the nose", t => t.Rest.CentreOfGravityXM),
        new("centre_z_m", "centre of gravity, z", "centre of gravity over the axis", t => t.Rest.CentreOfGravityZM),
        new("buoyancy_x_m", "centre of buoyancy, x", "centre of buoyancy from the middle of the length", t => t.Rest.CentreOfBuoyancyXM),
        new("buoyancy_z_m", "centre of buoyancy, z", "centre of buoyancy over the axis", t => t.Rest.CentreOfBuoyancyZM),
        new("wave_hump_m_s", "speed of most waves", "speed of the main hump of wave drag", t => t.Rest.WaveHumpSpeedMS),
    ];
}
