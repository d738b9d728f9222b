using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Model.Rods;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>One strike of a curve over the distance.</summary>
/// <param name="DistanceM">Distance from rod tip to hook, m.</param>
/// <param name="HookForceN">Largest pull on the hook, N; NaN where the model could not finish.</param>
/// <param name="ImpulseNs">Its time integral until the hands only hold, N s; NaN as well.</param>
/// <param name="TimeToForceS">First time with the pull that sets all points, s; null when it is never reached.</param>
/// <param name="LineStretchM">Stretch of line and leader at the peak, m.</param>
/// <param name="DragSlipM">Line that slipped, m.</param>
/// <param name="Limit">What limited the pull; null where the model could not finish.</param>
public sealed record StrikeCurvePoint(
    double DistanceM, double HookForceN, double ImpulseNs, double? TimeToForceS, double LineStretchM, double DragSlipM, StrikeLimit? Limit);

/// <summary>Which line a curve is of.</summary>
public enum CurveLine
{
    /// <summary>The scenario's own.</summary>
    Own,

    /// <summary>Braid of the same label.</summary>
    Braid,

    /// <summary>Dry nylon of the same label.</summary>
    Nylon,

    /// <summary>Soaked nylon of the same label.</summary>
    SoakedNylon,

    /// <summary>Fluorocarbon of the same label.</summary>
    Fluorocarbon,
}

/// <summary>Which rod a curve is of.</summary>
public enum CurveRod
{
    /// <summary>The scenario's own.</summary>
    Own,

    /// <summary>One power lighter.</summary>
    Lighter,

    /// <summary>One power heavier.</summary>
    Heavier,

    /// <summary>Six inches longer, the same rating.</summary>
    Longer,
}

/// <summary>Strikes against the distance with one line on one rod.</summary>
/// <param name="LineKind">Which line.</param>
/// <param name="RodKind">Which rod.</param>
/// <param name="Line">The line itself.</param>
/// <param name="Rod">The rod itself.</param>
/// <param name="Points">Rising distance.</param>
public sealed record StrikeCurve(CurveLine LineKind, CurveRod RodKind, LineSpec Line, RodSpec Rod, ValueList<StrikeCurvePoint> Points);

/// <summary>Strikes against the distance, all else as in the scenario.</summary>
/// <param name="Lines">Four lines on the own rod, the own line first.</param>
/// <param name="Rods">Further rods with the own line; the own rod is the first of <paramref name="Lines"/>.</param>
/// <param name="LabelN">Label that the lines share, N.</param>
/// <param name="SettingN">Pull on the hook that sets all points, N.</param>
public sealed record StrikeCurves(ValueList<StrikeCurve> Lines, ValueList<StrikeCurve> Rods, double LabelN, double SettingN);
