// begin
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSimExamples;

internal static class Tackle
{
    // An invented lure of 90 mm and 10 g on 30-lb braid. What is left out has a default; many of those are guesses (docs/limits.md).
    public static Setup Walker()
    {
        LineSpec line = LineSizing.Resolve(LineMaterial.Braid, diameterM: null, number: null, labelN: 133.0, SurfaceFilm.Dry).Spec;
        var lure = new LureSpec(
            LureShape.Cigar, LengthM: 0.090, DiameterM: 0.0175, HeightM: 0.0175, MassKg: 0.010, TieXM: 0.045, TieZM: 0.0,
            Ballast: [new BallastSpec(MassKg: 0.0015, XM: -0.009, ZM: -0.005)],
            Hooks:
            [
                new HookSpec(MassKg: 0.0009, XM: 0.020, ZM: -0.008, DragAreaM2: 6e-5, SteelVolumeM3: 1.15e-7),
                new HookSpec(MassKg: 0.0009, XM: -0.043, ZM: 0.0, DragAreaM2: 6e-5, SteelVolumeM3: 1.15e-7),
            ]);
        var rod = new RodSpec(LengthM: 2.03, GripM: 0.33, ThirdLoadN: 3.0, MassKg: 0.06);
        return new Setup(
            "small walker", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), rod, new ReelSpec().With(line), line, Leader: null, lure);
    }
}
// end
