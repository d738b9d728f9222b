using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures;

/// <summary>
/// The lure at the far end of the line. A step is: <see cref="Guess"/>, then in every pass <see cref="Begin"/> (how the tie would move without
/// tension, and how it yields) and <see cref="Finish"/> (with the tension); the state before stays untouched until <see cref="Commit"/>.
/// </summary>
internal interface ILineEnd
{
    /// <summary>State taken over last.</summary>
    public HullPose Pose { get; }

    /// <summary>Position of the line tie as the running step sees it, m.</summary>
    public Vec3 Tie { get; }

    /// <summary>Unit vector from tail to nose as the running step sees it.</summary>
    public Vec3 Axis { get; }

    /// <summary>False as soon as any number of the step is not finite.</summary>
    public bool IsFinite { get; }

    /// <summary>Kinetic and potential energy of the state taken over last, J.</summary>
    public double HeldJ { get; }

    /// <summary>Starts a step from the states at n and n-1.</summary>
    /// <param name="step">Step coefficients.</param>
    public void Guess(Bdf2 step);

    /// <summary>Tension-free motion and yield of the tie at the guess of this pass.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="tieForce">Forces at the tie besides tension: weight and buoyancy of the half segment, leader bending, N.</param>
    /// <param name="knotMomentNm">Moment of a fixed knot, world axes, N m.</param>
    public LineEnd Begin(Bdf2 step, Vec3 tieForce, Vec3 knotMomentNm);

    /// <summary>Adds the tension; the state is the guess of the next pass and, after the last, the end of the step.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the tie, world axes, N.</param>
    public void Finish(Bdf2 step, Vec3 force);

    /// <summary>Takes the step over.</summary>
    public void Commit();

    /// <summary>Power of everything but tension on the lure at the end of the running step, with the coefficients of that step, W: weight at
    /// the tie in, drag and damping out.</summary>
    /// <param name="tieWeightN">Weight and buoyancy of the half segment at the tie, upward, N.</param>
    public double PowerW(double tieWeightN);

    /// <summary>Power that the state taken over last puts into the water, W.</summary>
    public double StirW { get; }
}
