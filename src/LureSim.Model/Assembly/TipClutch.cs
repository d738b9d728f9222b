using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Reels;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>
/// The clutch behind the rod of a retrieve. While nothing slips and the pull is one that it surely holds, a step costs a comparison. Line given enters the
/// first segment, whose waves feel it at once, and is then shared out over the main line in <see cref="EvenS"/>.
/// </summary>
/// <param name="clutch">Clutch.</param>
/// <param name="mesh">Line that grows.</param>
/// <param name="alongRodM">Line between spool and tip, m.</param>
internal sealed class TipClutch(DragClutch clutch, LineMesh mesh, double alongRodM)
{
    /// <summary>Time in which the first segment hands on what it is longer, s: as long as a twitch, so that it stays near its length (docs/reel.md).</summary>
    public const double EvenS = 0.2;

    private Bdf2 _step;
    private Vec3 _rod;
    private bool _asked;

    /// <summary>Line given since the start, m.</summary>
    public double GivenM => clutch.GivenM;

    /// <summary>Heat and motion in clutch, rings and spool, J.</summary>
    public double TakenJ => clutch.LossJ + clutch.KineticJ;

    /// <summary>Line given in the step that is tried, m.</summary>
    public double StepM => _asked ? clutch.StepM : 0.0;

    /// <summary>Begins a step.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="tip">Rigid rod tip at its end.</param>
    public void Begin(Bdf2 step, in TipFrame tip) => (_step, _rod, _asked) = (step, Vec3.Cross(tip.Stroke, tip.Side), false);

    /// <summary>The rod tip with the line that is given, for one pass.</summary>
    /// <param name="tip">Rod tip alone.</param>
    /// <param name="direction">Unit direction of the first segment, away from the tip.</param>
    public LineEnd Give(in LineEnd tip, Vec3 direction)
    {
        if (!clutch.Slips && !_asked)
        {
            return tip;
        }

        Ask(direction);
        return clutch.Give(tip, direction);
    }

    /// <summary>Ends a pass; true when it must be done again.</summary>
    /// <param name="tensionN">T of the first segment, N.</param>
    /// <param name="direction">Its unit direction, away from the tip.</param>
    public bool Finish(double tensionN, Vec3 direction)
    {
        if (!_asked && tensionN <= clutch.SureN)
        {
            return false;
        }

        Ask(direction);
        return clutch.Finish(tensionN);
    }

    /// <summary>Takes the step over: the first segment grows by what was given, and its end goes back from there to the rod tip.</summary>
    /// <param name="end">State at the end of the step.</param>
    /// <param name="direction">Unit direction of the first segment in the last pass.</param>
    public void Commit(LineState end, Vec3 direction)
    {
        if (!_asked)
        {
            return;
        }

        double given = clutch.StepM;
        clutch.Commit();
        end.X[0] -= given * direction.X;
        end.Y[0] -= given * direction.Y;
        end.Z[0] -= given * direction.Z;
        if (given != 0.0)
        {
            mesh.Give(given);
        }
    }

    private void Ask(Vec3 direction)
    {
        if (!_asked)
        {
            double turn = Math.Acos(Math.Clamp(Vec3.Dot(_rod, direction), -1.0, 1.0));
            clutch.Begin(_step, mesh.LengthM - mesh.LeaderLengthM + alongRodM, turn);
            _asked = true;
        }
    }
}
