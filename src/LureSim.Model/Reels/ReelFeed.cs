namespace LureSim.Model.Reels;

/// <summary>
/// What lets line out behind the rod: a coordinate P (line paid out, m) with its speed u and, in a step, one inverse mass.
/// </summary>
internal abstract class ReelFeed
{
    /// <summary>P, line paid out beyond the overhang, m.</summary>
    public double PaidM;

    /// <summary>P at which the line ends, m.</summary>
    public double LineM { get; protected init; } = double.PositiveInfinity;

    /// <summary>u, speed at which line is given, m/s.</summary>
    public double SpeedMS;

    /// <summary>u' of the last pass, m/s2.</summary>
    public double Accel;

    /// <summary>True while thumb or finger holds the line.</summary>
    public bool Locked = true;

    /// <summary>u' without tension, m/s2, and u' per tension, 1/kg, after <see cref="Free"/>.</summary>
    public double FreeAccel, InverseMass;

    /// <summary>Sum of the work that the reel took from the line and kept as heat, J.</summary>
    public double LossJ;

    /// <summary>Sum of the energy of motion that left the reel with the line, J.</summary>
    public double GivenJ;

    /// <summary>Energy of motion in the reel now, J.</summary>
    public abstract double KineticJ { get; }

    /// <summary>Turning speed of the spool, rad/s; 0 for a spool that stands still.</summary>
    public virtual double SpinRadS => 0.0;

    /// <summary>Length of one loop on the spool, m.</summary>
    public abstract double LoopM { get; }

    /// <summary>Lets line go.</summary>
    /// <param name="launchMS">Speed of the lure at that moment, m/s.</param>
    public virtual void LetGo(double launchMS) => Locked = false;

    /// <summary>Linearises about the midpoint of the step.</summary>
    public void Free(double h)
    {
        (FreeAccel, InverseMass) = Locked ? (0.0, 0.0) : Linearise(h);
    }

    /// <summary>Line that lies loose on the reel, m.</summary>
    public virtual double LooseM => 0.0;

    /// <summary>Ends the step with the tension at the tip, N.</summary>
    public void Advance(double h, double tensionN)
    {
        if (Locked)
        {
            return;
        }

        double before = SpeedMS;
        SpeedMS = Math.Max(0.0, SpeedMS + (h * Accel));
        PaidM += 0.5 * h * (before + SpeedMS);
        Settle(h, tensionN, before);
        if (PaidM >= LineM)
        {
            // The knot on the spool holds; what still turns is lost in it.
            LossJ += KineticJ;
            (SpeedMS, Accel, Locked) = (0.0, 0.0, true);
        }
    }

    /// <summary>Copies the state of another reel of the same kind.</summary>
    public virtual void CopyFrom(ReelFeed other)
    {
        (PaidM, SpeedMS, Accel, Locked) = (other.PaidM, other.SpeedMS, other.Accel, other.Locked);
        (LossJ, GivenJ) = (other.LossJ, other.GivenJ);
    }

    /// <summary>Free acceleration and inverse mass with friction's slope on the mass side.</summary>
    protected abstract (double Free, double Inverse) Linearise(double h);

    /// <summary>Follows heat and other slow states after a step.</summary>
    protected abstract void Settle(double h, double tensionN, double before);
}
