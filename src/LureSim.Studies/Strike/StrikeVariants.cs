using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Model.Rods;
using LureSim.Model.Strike;
using LureSim.Studies.Across;
using LureSim.Studies.Cast;

namespace LureSim.Studies.Strike;

/// <summary>Lines of the same label and rods beside the own one.</summary>
internal static class StrikeVariants
{
    private const double SixInchesM = 6.0 * 0.0254;

    /// <summary>Settings of the numbers for many strikes at once: peaks are within 0.2 % of those of half the step (docs/strike.md).</summary>
    /// <param name="task">Strike.</param>
    public static StrikeTask Coarse(StrikeTask task) => task with
    {
        DurationS = Math.Min(task.DurationS, Math.Max(task.Stroke.HoldS, Parameter.Of<StrikeTask>(nameof(StrikeTask.DurationS)).Low)),
        Solver = task.Solver with { StepS = Math.Max(task.Solver.StepS, 1e-3) },
    };

    /// <summary>The own line, then braid, dry and soaked nylon and fluorocarbon of its label; one like the own is left out. A spool holds as much of
    /// each as people wind on.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="labelN">Label, N.</param>
    public static IReadOnlyList<(CurveLine Kind, Setup Setup)> Lines(Setup setup, double labelN)
    {
        LineSpec own = setup.Line;
        (CurveLine Kind, LineMaterial Material, SurfaceFilm Film)[] all =
        [
            (CurveLine.Braid, LineMaterial.Braid, own.Film), (CurveLine.Nylon, LineMaterial.Nylon, SurfaceFilm.Dry),
            (CurveLine.SoakedNylon, LineMaterial.Nylon, SurfaceFilm.Wetted), (CurveLine.Fluorocarbon, LineMaterial.Fluorocarbon, own.Film),
        ];
        return
        [
            (CurveLine.Own, setup),
            .. all.Where(l => l.Material != own.Material || l.Film != own.Film).Select(l => (l.Kind, Setup: With(setup, labelN, l.Material, l.Film))).Where(l => l.Setup is not null).Select(l => (l.Kind, l.Setup!)),
        ];
    }

    /// <summary>Rods one power lighter and heavier, and six inches longer; those that there are.</summary>
    /// <param name="rod">The own rod.</param>
    public static IEnumerable<(CurveRod Kind, RodSpec Rod)> Rods(RodSpec rod)
    {
        foreach ((CurveRod kind, int step) in ((CurveRod, int)[])[(CurveRod.Lighter, -1), (CurveRod.Heavier, 1)])
        {
            if (RodClass.Beside(rod.ThirdLoadN, step) is double load)
            {
                yield return (kind, RodClass.WithLoad(rod, load));
            }
        }

        if (rod.LengthM + SixInchesM <= Parameter.Of<RodSpec>(nameof(RodSpec.LengthM)).High)
        {
            yield return (CurveRod.Longer, RodLadder.WithLength(rod, rod.LengthM + SixInchesM));
        }
    }

    // Null where no line of the material is made so thin or so thick.
    private static Setup? With(Setup setup, double labelN, LineMaterial material, SurfaceFilm film)
    {
        try
        {
            LineSpec line = LineSizing.Resolve(material, null, null, labelN, film).Spec;
            return setup with { Line = line, Reel = setup.Reel.With(line) };
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
