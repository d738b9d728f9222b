using LureSim.Model.Rods;

namespace LureSim.Model.Landing;

/// <summary>A rod held still at its butt with a pull at its tip; its own weight acts.</summary>
/// <remarks>
/// What it bears is known from one load alone, the power load times a factor hung at 45 deg: under no other one may its butt be loaded with more torque,
/// or its outer fibres anywhere be stretched more, than under that.
/// </remarks>
internal sealed class HeldRod
{
    private readonly RodChain _chain;
    private readonly RodStrain _strain;

    /// <summary>Of a rod.</summary>
    /// <param name="rod">Rod.</param>
    /// <param name="rodFactor">Load that it bears at 45 deg over its power load.</param>
    public HeldRod(RodSpec rod, double rodFactor)
    {
        var taper = RodTaper.FromSpec(rod);
        _chain = RodChain.Build(taper, rod.Links);
        _strain = new RodStrain(taper, _chain);
        RodShape borne = RodHold.Borne(_chain, rodFactor * rod.ThirdLoadN);
        (BorneTorqueNm, BorneStrain) = (borne.ButtMomentNm, _strain.Largest(borne));
    }

    /// <summary>Strain of the outer fibres that it bears; as good as the diameter at the hand.</summary>
    public double BorneStrain { get; }

    /// <summary>Torque at the butt that it bears, N m.</summary>
    public double BorneTorqueNm { get; }

    /// <summary>Shape with a weight hung at the tip.</summary>
    /// <param name="angleRad">Butt over the level, rad.</param>
    /// <param name="loadN">Weight, N.</param>
    public RodShape Hung(double angleRad, double loadN) => Solve(angleRad, 0.0, -loadN);

    /// <summary>Shape with a level pull at the tip, the rod turned up from it.</summary>
    /// <param name="angleRad">Butt over the line of the pull, rad; 0 points along it.</param>
    /// <param name="loadN">Pull, N.</param>
    public RodShape Drawn(double angleRad, double loadN) => Solve(angleRad, loadN, 0.0);

    /// <summary>Load of the rod over what it bears.</summary>
    /// <param name="shape">Shape of this rod.</param>
    public double Use(RodShape shape) => Math.Max(shape.ButtMomentNm / BorneTorqueNm, _strain.Largest(shape) / BorneStrain);

    private RodShape Solve(double angle, double x, double y) => RodStatics.Solve(_chain, angle, x, y, Physics.GravityMS2);
}
