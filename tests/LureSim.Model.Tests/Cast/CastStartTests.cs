using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Cast;

/// <summary>The moment before a cast: everything is in balance.</summary>
public sealed class CastStartTests
{
    // The hands hold the bent rod and the hanging lure, with 0.5 to 1 N m here: without them the butt of 0.2 kg m2 would turn at some 3 rad/s2 at once.
    // In a tenth of a millisecond their own drive of 40 N m rises by 3 (5e-5/0.06)^2 of it, 4e-4 rad/s2; the shape is solved to 1e-9 of its moment.
    [Fact]
    public void Nothing_moves_before_the_hands_do()
    {
        AirStep cast = new CastParts(CastCases.Default(ReelKind.Fixed).Setup, new CastTask()).Start(double.PositiveInfinity);
        cast.Step(1e-4);
        Assert.InRange(Math.Abs(cast.Rod.A[1]), 0.0, 0.01);
        Assert.InRange(Math.Abs(cast.Line.Az[0]), 0.0, 0.01);
        Assert.InRange(Math.Abs(cast.Line.Ax[0]), 0.0, 0.01);
        Assert.Equal(0.0177 * Physics.GravityMS2, cast.Line.TipTensionN, 1e-4);
        Assert.InRange(Math.Abs(cast.Rod.HandTorqueNm), 0.3, 3.0);
    }
}
