using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Rods;

/// <summary>Energy account of a rod whose tip a known force pulls, beside the work that the rod books itself.</summary>
internal sealed class RodBooks(ChainRodEnd rod)
{
    private readonly double _heldAtStart = rod.KineticJ + rod.SpringJ;
    private Vec3 _tip = rod.TipNow, _force;
    private double _lineJ;

    /// <summary>What hands and rod have gained without anybody's work, J.</summary>
    public double OpenJ => rod.KineticJ + rod.SpringJ - _heldAtStart + rod.Work.RaisedJ + rod.Work.AirJ + rod.Work.DampingJ - _lineJ - rod.Work.HandsJ;

    /// <summary>Books the work of the line in a step that has just been taken over.</summary>
    /// <param name="force">Force on the tip in it, N.</param>
    public void Book(Vec3 force)
    {
        _lineJ += 0.5 * Vec3.Dot(force + _force, rod.TipNow - _tip);
        (_tip, _force) = (rod.TipNow, force);
    }
}
