using LureSim.Model.Assembly;
using LureSim.Model.Lures;

namespace LureSim.Model.Retrieve;

/// <summary>
/// An accepted step of a retrieve, as an observer sees it. A view of the running solver, good until the observer returns: copy what is to be kept.
/// World axes: x from the resting rod tip toward the cast, y to the angler's left, z up from the water.
/// </summary>
/// <remarks>Steps vary in length; forces are means over the step, all else is the state at its end. With
/// <see cref="RetrieveTask.HoldDistance"/> the angler backs away toward -x.</remarks>
public readonly ref struct RetrieveView
{
    private readonly CoupledStep _coupled;

    internal RetrieveView(RetrieveParts parts, double timeS, double stepS, double takeUpMS)
    {
        (Parts, _coupled) = (parts, parts.Step);
        (TimeS, StepS, TakeUpMS) = (timeS, stepS, takeUpMS);
    }

    /// <summary>t at the end of the step, from the first pull on, s.</summary>
    public double TimeS { get; }

    /// <summary>dt, s.</summary>
    public double StepS { get; }

    /// <summary>Line taken up, or speed of backing away, m/s.</summary>
    public double TakeUpMS { get; }

    /// <summary>Centre of gravity of the lure, x, m.</summary>
    public double LureXM => Hull.Centre.X;

    /// <summary>Centre of gravity of the lure, y, m.</summary>
    public double LureYM => Hull.Centre.Y;

    /// <summary>Centre of gravity of the lure, z over the water, m.</summary>
    public double LureZM => Hull.Centre.Z;

    /// <summary>theta, axis of the lure over the horizontal, nose up positive, rad; that at rest for the planar hull.</summary>
    public double PitchRad => Hull.PitchRad;

    /// <summary>phi, turn about the axis, left side up positive, rad; that at rest for the planar hull.</summary>
    public double RollRad => Hull.RollRad;

    /// <summary>psi, nose from +x, counter-clockwise from above, not wrapped, rad; pi points at the rod.</summary>
    public double HeadingRad => Hull.HeadingRad;

    /// <summary>u, forward speed of the lure, m/s.</summary>
    public double SurgeMS => Hull.SurgeMS;

    /// <summary>v, sideways speed of the lure to its left, m/s.</summary>
    public double SwayMS => Hull.SwayMS;

    /// <summary>r, turning rate of the lure, rad/s.</summary>
    public double YawRateRadS => Hull.YawRateRadS;

    /// <summary>Speed of the lure over ground, m/s.</summary>
    public double SpeedMS => Math.Sqrt((SurgeMS * SurgeMS) + (SwayMS * SwayMS));

    /// <summary>Pull of the line at the lure's tie, N.</summary>
    public double NosePullN => _coupled.TieForce.Length;

    /// <summary>Pull of the line at the rod tip, N.</summary>
    public double TipPullN => _coupled.TipForce.Length;

    /// <summary>Unstretched line out, m.</summary>
    public double LineOutM => Parts.Mesh.LengthM;

    /// <summary>Unstretched line out minus straight distance from tip to tie, m.</summary>
    public double SlackM => Parts.SlackM;

    /// <summary>x of the N + 1 line points from the rod tip to the tie, m.</summary>
    public ReadOnlySpan<double> LineXM => _coupled.Now.X.AsSpan(0, Parts.Mesh.Segments + 1);

    /// <summary>y of the same points, m.</summary>
    public ReadOnlySpan<double> LineYM => _coupled.Now.Y.AsSpan(0, Parts.Mesh.Segments + 1);

    /// <summary>z of the same points, m; below 0 under water.</summary>
    public ReadOnlySpan<double> LineZM => _coupled.Now.Z.AsSpan(0, Parts.Mesh.Segments + 1);

    /// <summary>Tension of the N segments between them, N.</summary>
    public ReadOnlySpan<double> TensionN => _coupled.Pass.Solver.Tension.AsSpan(0, Parts.Mesh.Segments);

    /// <summary>The running parts.</summary>
    internal RetrieveParts Parts { get; }

    private HullPose Hull => _coupled.Lure.Pose;
}
