using LureSim.Model.Assembly;
using LureSim.Model.Lines.Air;

namespace LureSim.Model.Cast;

/// <summary>
/// A step of the reported cast, as an observer sees it: swing, then flight. A view of the running solver, good until the observer returns: copy what
/// is to be kept. Axes: x forward from the hand's start, z up from the water.
/// </summary>
public readonly ref struct CastView
{
    internal CastView(AirStep cast, double stepS, double releasedS) => (Cast, StepS, ReleasedS) = (cast, stepS, releasedS);

    /// <summary>t at the end of the step, from the start of the swing, s.</summary>
    public double TimeS => Cast.TimeS;

    /// <summary>dt, s.</summary>
    public double StepS { get; }

    /// <summary>Time of release, s; NaN before it.</summary>
    public double ReleasedS { get; }

    /// <summary>True once the line has been let go.</summary>
    public bool IsFlight => !double.IsNaN(ReleasedS);

    /// <summary>x of the lure, m.</summary>
    public double LureXM => Line.X[0];

    /// <summary>z of the lure, m; the last step ends at or below 0.</summary>
    public double LureZM => Line.Z[0];

    /// <summary>Forward speed of the lure, m/s.</summary>
    public double LureVxMS => Line.Vx[0];

    /// <summary>Upward speed of the lure, m/s.</summary>
    public double LureVzMS => Line.Vz[0];

    /// <summary>Direction in which the lure flies, above the horizontal, -pi to pi, rad.</summary>
    public double CourseRad => Math.Atan2(LureVzMS, LureVxMS);

    /// <summary>Speed of the lure, m/s.</summary>
    public double SpeedMS => Math.Sqrt((LureVxMS * LureVxMS) + (LureVzMS * LureVzMS));

    /// <summary>Pull of the line at the lure, N.</summary>
    public double NosePullN => Line.LureTensionN;

    /// <summary>Pull of the line at the rod tip, N.</summary>
    public double TipPullN => Line.TipTensionN;

    /// <summary>x of the rod tip, m.</summary>
    public double TipXM => Cast.Tip().X;

    /// <summary>z of the rod tip, m.</summary>
    public double TipZM => Cast.Tip().Z;

    /// <summary>Forward speed of the hand, m/s; 0 once the rod is held still.</summary>
    public double HandSpeedMS => Cast.RodAtRest ? 0.0 : Cast.Rod.V[0];

    /// <summary>Butt's angle from the vertical, forward, rad.</summary>
    public double ButtRad => Cast.Rod.Q[1];

    /// <summary>Its rate, rad/s; 0 once the rod is held still.</summary>
    public double ButtRateRadS => Cast.RodAtRest ? 0.0 : Cast.Rod.V[1];

    /// <summary>Speed at which line leaves the reel, m/s.</summary>
    public double ReelSpeedMS => Cast.Reel.SpeedMS;

    /// <summary>Line that lies loose on a revolving spool, m.</summary>
    public double LooseM => Cast.Reel.LooseM;

    /// <summary>x of the line points from the lure toward the rod, without the tip, m; one point, the lure, until the line grows long.</summary>
    public ReadOnlySpan<double> LineXM => Line.X.AsSpan(0, Line.Count);

    /// <summary>z of the same points, m.</summary>
    public ReadOnlySpan<double> LineZM => Line.Z.AsSpan(0, Line.Count);

    /// <summary>The running cast.</summary>
    internal AirStep Cast { get; }

    private AirLine Line => Cast.Line;
}
