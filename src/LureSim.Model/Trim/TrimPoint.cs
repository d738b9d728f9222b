using LureSim.Model.Lures;

namespace LureSim.Model.Trim;

/// <summary>How a lure floats, without its righting arms and its picture: one point of a search or of a map.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Rest">Attitude, drafts, centres, metacentric heights.</param>
/// <param name="DraftM">Deepest point of the hull under the water, m.</param>
/// <param name="FreeboardM">Back amidships over the water, m; negative when it is awash.</param>
public sealed record TrimPoint(LureSpec Lure, FloatReport Rest, double DraftM, double FreeboardM)
{
    /// <summary>True when it stands up by itself.</summary>
    public bool IsUpright => Rest.HeelRad == 0.0;
}
