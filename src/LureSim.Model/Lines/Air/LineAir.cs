using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;

namespace LureSim.Model.Lines.Air;

/// <summary>Air forces on lure and line in a cast, as secant coefficients: force = -coefficient x velocity.</summary>
internal sealed class LineAir
{
    // Thread-drawing skin friction cf = 0.37 Re_d^-0.61 (from memory): force per length 1/2 rho pi d cf v^2.
    private const double FrictionLead = 0.37;
    private const double FrictionExponent = 0.61;

    // Tables, within 2e-4 of the laws: a flight asks for them at every node and step.
    private static readonly DragCurve Cylinder = DragCurve.FromLaw(CylinderDrag.Cd);
    private static readonly DragCurve Thread = DragCurve.FromLaw(re => FrictionLead * Math.Pow(re, -FrictionExponent));

    private readonly double _axial, _normal, _perNu;
    private readonly WindProfile _wind;

    public LineAir(AirSpec air, LineSpec line, double frictionFactor, double lureCdAM2)
    {
        AirState state = AirModel.Evaluate(air);
        _wind = new WindProfile(air);
        DensityKgM3 = state.DensityKgM3;
        _perNu = line.DiameterM / state.KinematicViscosityM2S;
        _axial = 0.5 * state.DensityKgM3 * Math.PI * line.DiameterM * frictionFactor;
        _normal = 0.5 * state.DensityKgM3 * line.DiameterM * line.NormalDragFactor;
        LureKgM = 0.5 * state.DensityKgM3 * lureCdAM2;
    }

    public double DensityKgM3 { get; }

    /// <summary>1/2 rho CdA of the lure, kg/m.</summary>
    public double LureKgM { get; }

    /// <summary>Drag of the lure that grows with its speed alone, kg/s. None at a lure's Reynolds number; for checks against closed forms.</summary>
    public double LureLinearKgS { get; init; }

    /// <summary>Secant of the lure's drag at a speed through the air, kg/s.</summary>
    public double Lure(double speedMS) => (LureKgM * speedMS) + LureLinearKgS;

    /// <summary>Wind along the cast at a height, m/s.</summary>
    public double Wind(double heightM) => _wind.IsCalm ? 0.0 : _wind.Speed(Math.Max(heightM, 0.0)) * _wind.DirectionX;

    /// <summary>Secant of skin friction per length at a speed along the line, kg/(m s).</summary>
    public double Along(double speedMS) => _axial * Thread.At(speedMS * _perNu) * speedMS;

    /// <summary>Secant of drag per length at a speed across the line, kg/(m s); Cd of the cylinder at its Reynolds number.</summary>
    public double Across(double speedMS)
    {
        double v = Math.Max(speedMS, 1e-3);
        return _normal * Cylinder.At(v * _perNu) * v;
    }
}
