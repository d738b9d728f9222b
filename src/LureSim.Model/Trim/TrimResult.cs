using LureSim.Model.Lures;

namespace LureSim.Model.Trim;

/// <summary>How a lure floats, with what a designer asks of it.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Rest">Attitude, drafts, centres, metacentric heights.</param>
/// <param name="Righting">Righting arms over heel.</param>
/// <param name="Profile">Hull from the side as it floats.</param>
/// <param name="DraftM">Deepest point of the hull under the water, m.</param>
/// <param name="FreeboardM">Lowest point of the back amidships over the water, m; negative when it is awash.</param>
/// <param name="DippingLoadN">Downward pull at the line tie that brings the nose to the water, N; null where the nose is under already or no such pull exists.</param>
/// <param name="TieStiffnessNM">Pull at the line tie per metre that it sinks, small pulls, N/m.</param>
public sealed record TrimResult(
    LureSpec Lure,
    FloatReport Rest,
    RightingCurve Righting,
    HullProfile Profile,
    double DraftM,
    double FreeboardM,
    double? DippingLoadN,
    double TieStiffnessNM)
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>True when it stands up by itself.</summary>
    public bool IsUpright => Rest.HeelRad == 0.0;

    /// <summary>True when the planar walk holds for this attitude.</summary>
    public bool IsWithinWalk => IsUpright && Math.Abs(Rest.TrimRad) <= FloatSolver.PlanarTrimLimitRad;

    /// <summary>Heel at which it no longer rights itself, deg: 180 when it always does, 0 when never.</summary>
    public double RightsItselfToDeg
    {
        get
        {
            int last = Righting.LastRighting;
            if (last == Righting.HeelRad.Count - 2)
            {
                return 180.0;
            }

            double a = Righting.ArmM[last], b = Righting.ArmM[last + 1], from = Righting.HeelRad[last];
            double share = last == 0 || a <= b ? 0.0 : a / (a - b);
            return (from + (share * (Righting.HeelRad[last + 1] - from))) / Degree;
        }
    }
}

/// <summary>A hull from the side: x along the water toward the nose from the middle of the length, z over the water, m.</summary>
/// <param name="BackXM">Back, tail to nose.</param>
/// <param name="BackZM">Back.</param>
/// <param name="BellyXM">Belly, tail to nose.</param>
/// <param name="BellyZM">Belly.</param>
/// <param name="Marks">Centres, tie, weights and hooks by name.</param>
public sealed record HullProfile(
    IReadOnlyList<double> BackXM, IReadOnlyList<double> BackZM, IReadOnlyList<double> BellyXM, IReadOnlyList<double> BellyZM, IReadOnlyList<HullMark> Marks);

/// <summary>A point of the lure in the side view.</summary>
/// <param name="Name">What it is.</param>
/// <param name="XM">x, m.</param>
/// <param name="ZM">z, m.</param>
public sealed record HullMark(string Name, double XM, double ZM);
