using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.CadenceChecks;

/// <summary>The reason for the least width of a walk: what turning alone can shift.</summary>
public sealed class TurnOnTheSpotTests
{
    // A side pull P at the tie, a ahead of G: m22 v + m23 r = P, m23 v + m33 r = a P. The point with v + r x = 0 stays where it is; from
    // square on one side to square on the other G moves by twice its distance to that point.
    [Fact]
    public void Turning_about_the_centre_of_percussion_stays_under_the_least_width_of_a_walk()
    {
        foreach (string file in Shipped.Files)
        {
            Setup spec = Shipped.Read(file).Setup;
            WalkHull h = WalkHullBuilder.Build(spec.Lure, WaterModel.Evaluate(spec.Water));
            double behind = (h.M33 - (h.M23 * h.TieArmM)) / ((h.M22 * h.TieArmM) - h.M23);
            Assert.InRange(behind / h.LengthM, 0.05, 0.16);
            Assert.True(2.0 * behind < 0.65 * PatternFinder.LeastWidthOverLength * h.LengthM, $"{file}: {2.0 * behind} m");
        }
    }
}
