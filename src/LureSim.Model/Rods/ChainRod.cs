using LureSim.Model.Hands;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Rods;

/// <summary>Hands and rod of a cast: <see cref="ChainMotion"/> in linearly implicit midpoint steps.</summary>
internal sealed class ChainRod
{
    private readonly ChainMotion _motion;
    private readonly HandDrive _turning, _pushing;

    public ChainRod(ChainMotion motion, HandDrive turning, HandDrive pushing)
    {
        _motion = motion;
        _turning = turning;
        _pushing = pushing;
        (Q, V, A) = (new double[motion.Size], new double[motion.Size], new double[motion.Size]);
    }

    /// <summary>Height of the turning point, m.</summary>
    public double HandHeightM => _motion.HandHeightM;

    /// <summary>Work booked so far.</summary>
    public RodWork Work;

    /// <summary>Torque of the hands in the last step, N m.</summary>
    public double HandTorqueNm { get; private set; }

    /// <summary>When the line is let go, as far as the hands know.</summary>
    public LetGo LetGo { get; set; } = LetGo.Never;

    /// <summary>Coordinates, speeds, accelerations of the last pass.</summary>
    public double[] Q { get; }

    public double[] V { get; }

    public double[] A { get; }

    /// <summary>The tip as the line meets it.</summary>
    public TipLink Link { get; } = new();

    /// <summary>Loads of hands at the midpoint of the last pass.</summary>
    public DriveLoad Turn, Push;

    /// <summary>Assembles and solves everything but the line's pull.</summary>
    public void Free(Midpoint step, double time)
    {
        SetMidpoint(step);
        Turn = _turning.About(time + step.Half, _motion.Place[1], _motion.Rate[1], LetGo);
        Push = _pushing.About(time + step.Half, _motion.Place[0], _motion.Rate[0], LetGo);
        _motion.Solve(step.Gains, Q, V, Push, Turn);
        (Link.X, Link.Z) = _motion.TipPlace();
        (Link.Vx, Link.Vz) = _motion.AtTip(V);
        (Link.FreeAx, Link.FreeAz) = _motion.AtTip(_motion.Free);
        (Link.LastAx, Link.LastAz) = _motion.AtTip(A);
        (Link.Gxx, Link.Gxz, Link.Gzz) = _motion.Yield();
    }

    /// <summary>Adds the line's pull on the tip, N, to the accelerations.</summary>
    public void Pull(double forceX, double forceZ) => _motion.Pull(forceX, forceZ, A);

    /// <summary>Ends the step and books its work.</summary>
    public void Advance(Midpoint step)
    {
        double h = step.Dt;
        SetMidpoint(step);
        for (int i = 0; i < Q.Length; i++)
        {
            Q[i] += step.Way(V[i], A[i]);
            V[i] += h * A[i];
        }

        double push = _motion.Rate[0], turn = _motion.Rate[1];
        HandTorqueNm = Turn.At(_motion.Place[1], turn);
        Work.HandsJ += h * ((HandTorqueNm * turn) + (Push.At(_motion.Place[0], push) * push));
        _motion.Book(ref Work, h);
    }

    /// <summary>Energy of motion of hands and rod, J.</summary>
    public double KineticJ() => _motion.KineticJ(Q, V);

    /// <summary>Energy of bending, J.</summary>
    public double SpringJ() => _motion.SpringJ(Q);

    /// <summary>Joints from the turning point to the tip, m.</summary>
    public (double X, double Z)[] Joints() => _motion.Joints(Q);

    /// <summary>Tip place and speed of the present state.</summary>
    public (double X, double Z, double Vx, double Vz) Tip() => _motion.Tip(Q, V);

    /// <summary>Copies the state of another one of the same rod.</summary>
    public void CopyFrom(ChainRod other)
    {
        other.Q.CopyTo(Q, 0);
        other.V.CopyTo(V, 0);
        other.A.CopyTo(A, 0);
        Work = other.Work;
        LetGo = other.LetGo;
        HandTorqueNm = other.HandTorqueNm;
    }

    private void SetMidpoint(Midpoint step)
    {
        for (int i = 0; i < Q.Length; i++)
        {
            _motion.Place[i] = step.PlaceOf(Q[i], V[i], A[i]);
            _motion.Rate[i] = step.RateOf(V[i], A[i]);
        }
    }
}
