using LureSim.Model.Assembly;
using LureSim.Model.Cast;

namespace LureSim.Model.Tests.Cast;

/// <summary>The search for the release goes on from copies; a copy must not remember what it was before.</summary>
public sealed class CopyTests
{
    [Fact]
    public void A_copy_in_flight_over_a_cast_that_was_further_goes_on_to_the_last_bit()
    {
        CastCase spec = CastCases.Default();
        var parts = new CastParts(spec.Setup, spec.Task);
        int release = new ReleaseSearch(parts).Best(8);
        AirStep cast = Fly(parts, release, 400), copy = Fly(parts, release, 900);
        Assert.InRange(copy.Line.Count, cast.Line.Count + 1, int.MaxValue);
        copy.CopyFrom(cast);
        for (int i = 0; i < 600; i++)
        {
            cast.Step(spec.Task.Solver.SwingStepS);
            copy.Step(spec.Task.Solver.SwingStepS);
        }

        Assert.InRange(cast.Line.Count, 5, int.MaxValue);
        Assert.Equal(cast.Line.X[..cast.Line.Count], copy.Line.X[..cast.Line.Count]);
        Assert.Equal(
            (cast.Line.Count, cast.TimeS, cast.Line.TipTensionN, cast.Line.Work, cast.Reel.PaidM, cast.Reel.LossJ, cast.Reel.LooseM),
            (copy.Line.Count, copy.TimeS, copy.Line.TipTensionN, copy.Line.Work, copy.Reel.PaidM, copy.Reel.LossJ, copy.Reel.LooseM));
    }

    private static AirStep Fly(CastParts parts, int release, int stepsAfter)
    {
        CastSolverSpec solver = parts.Task.Solver;
        AirStep cast = parts.Start(solver.NodeSpacingM);
        for (int i = 0; i < release + stepsAfter; i++)
        {
            if (i == release)
            {
                cast.Release();
            }

            cast.Step(solver.SwingStepS);
        }

        return cast;
    }
}
