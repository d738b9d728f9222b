namespace LureSim.Model.Lures;

/// <summary>How a lure floats at rest. Positions in body axes: from the middle of the length, on the axis.</summary>
/// <param name="TrimRad">theta, nose up positive, rad.</param>
/// <param name="HeelRad">phi, 0 for a body that stands up by itself, rad.</param>
/// <param name="TieHeightM">Line tie over the water, m (negative: under water).</param>
/// <param name="NoseHeightM">Foremost point of the axis over the water, m.</param>
/// <param name="StationXM">Stations of the draft, m from the middle.</param>
/// <param name="StationDraftM">Immersed depth of the section there, perpendicular to the axis, m.</param>
/// <param name="MassKg">With hooks, kg.</param>
/// <param name="DisplacedVolumeM3">Hull and hooks under water, m3.</param>
/// <param name="HullVolumeM3">Whole hull, m3.</param>
/// <param name="CentreOfGravityXM">G, m.</param>
/// <param name="CentreOfGravityZM">G, m.</param>
/// <param name="CentreOfBuoyancyXM">B, m.</param>
/// <param name="CentreOfBuoyancyZM">B, m.</param>
/// <param name="GmTransverseM">GM across, m: above 0 it stands up by itself.</param>
/// <param name="GmLongitudinalM">GM lengthwise, m.</param>
/// <param name="WaterplaneAreaM2">Aw, m2.</param>
/// <param name="FlotationXM">Centre of the waterplane ahead of G, horizontally, m.</param>
/// <param name="HeaveStiffnessNM">rho g Aw, N/m.</param>
/// <param name="TrimStiffnessNMRad">m g GM lengthwise, N m/rad.</param>
/// <param name="WaveFreeSpeedMS">Below this speed steady straight motion makes no waves, m/s.</param>
/// <param name="WaveHumpSpeedMS">Speed of the main wave drag hump, Froude number 0.5 on L, m/s.</param>
/// <param name="Notes">What a user should know: limits of the planar model, instability, other attitudes.</param>
public sealed record FloatReport(
    double TrimRad,
    double HeelRad,
    double TieHeightM,
    double NoseHeightM,
    IReadOnlyList<double> StationXM,
    IReadOnlyList<double> StationDraftM,
    double MassKg,
    double DisplacedVolumeM3,
    double HullVolumeM3,
    double CentreOfGravityXM,
    double CentreOfGravityZM,
    double CentreOfBuoyancyXM,
    double CentreOfBuoyancyZM,
    double GmTransverseM,
    double GmLongitudinalM,
    double WaterplaneAreaM2,
    double FlotationXM,
    double HeaveStiffnessNM,
    double TrimStiffnessNMRad,
    double WaveFreeSpeedMS,
    double WaveHumpSpeedMS,
    IReadOnlyList<string> Notes);

/// <summary>How a heeled lure rights itself.</summary>
/// <param name="HeelRad">Heel angles, 0 to pi, rad.</param>
/// <param name="ArmM">
/// GZ at those heels, m, turned about the hull's axis with trim held and heave free (slope at 0: GM cos trim); positive
/// rights the lure.
/// </param>
public sealed record RightingCurve(IReadOnlyList<double> HeelRad, IReadOnlyList<double> ArmM)
{
    /// <summary>Index of the last heel short of 180 deg up to which every arm rights the lure; 0 when none does.</summary>
    internal int LastRighting
    {
        get
        {
            int last = 0;
            while (last + 1 < HeelRad.Count - 1 && ArmM[last + 1] > 0.0)
            {
                last++;
            }

            return last;
        }
    }
}
