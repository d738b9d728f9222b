using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Strike;
using LureSim.Studies.Cover;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Tests.Support;

/// <summary>Three covers by hand: one of each verdict, with every kind of change somewhere.</summary>
internal static class MadeUpCover
{
    /// <summary>The report.</summary>
    public static CoverReport Report() => new("Made up", 222.0, [Works(), When(), Not()]);

    /// <summary>Where nothing that was tried helps, and no drag sets the hook.</summary>
    public static CoverReport Hopeless()
    {
        CoverCase mat = Not();
        return Report() with { Cases = [Works(), When() with { Helps = [] }, mat with { Helps = [], Window = MadeUpStrike.TooWeak().Window }] };
    }

    private static CoverCase Works() => new(Trial(CoverKind.Open, StrikeStyle.Snap, 26.0, []), MadeUpStrike.Report().Window, []);

    private static CoverCase When()
    {
        CoverCheck sets = Of(CoverCriterion.Sets, Exact(18.0), new(24.0, 20.0, 30.0)), holds = Of(CoverCriterion.Holds, new(54.0, 30.0, 90.0), Exact(40.0), WeakPlace.HookHold);
        CoverCheck drawn = Of(CoverCriterion.Drawn, Exact(20.0), new(12.0, 4.0, 31.0)), tight = Of(CoverCriterion.Tight, Exact(2.1), new(2.5, 1.2, 4.0));
        CoverTrial own = Trial(CoverKind.Sparse, StrikeStyle.Sweep, 18.0, [sets, holds, drawn, tight]), after = Trial(CoverKind.Sparse, StrikeStyle.Sweep, 26.0, [holds, drawn, tight]);
        CoverCheck passes = after[CoverCriterion.Sets];
        return new(own, MadeUpStrike.Empty().Window,
        [
            new(new(ChangeKind.Drag, 26.0), after, [(sets, passes)]), new(new(ChangeKind.Style, Style: StrikeStyle.Haul), after, [(sets, passes)]),
            new(new(ChangeKind.Nearer, 7.5), after, [(sets, passes)]), new(new(ChangeKind.Line, 289.0), after, [(sets, passes)]),
        ]);
    }

    private static CoverCase Not()
    {
        CoverCheck lure = new(CoverCriterion.Lure, CoverState.Fails, default, default), drawn = Of(CoverCriterion.Drawn, Exact(20.0), new(52.0, 25.0, 90.0));
        CoverCheck boat = Of(CoverCriterion.Boat, new(38.0, 22.0, 50.0), Exact(55.0), WeakPlace.Rod), weaker = Of(CoverCriterion.Boat, new(60.0, 56.0, 90.0), Exact(55.0), WeakPlace.Leader);
        CoverTrial own = Trial(CoverKind.Mat, StrikeStyle.Haul, 26.0, [lure, drawn, boat]), weedless = Trial(CoverKind.Mat, StrikeStyle.Haul, 26.0, [drawn, boat]);
        CoverTrial heavier = Trial(CoverKind.Mat, StrikeStyle.Haul, 26.0, [lure, drawn, weaker]);
        return new(own, MadeUpStrike.Strong().Window,
        [
            new(new(ChangeKind.Weedless), weedless, [(lure, weedless[CoverCriterion.Lure])]), new(new(ChangeKind.Rod, 9.0), heavier, [(boat, weaker)]),
            new(new(ChangeKind.Ease, 14.0), heavier, [(boat, weaker)]), new(new(ChangeKind.Wire, 1.1), heavier, [(boat, weaker)]),
        ]);
    }

    private static CoverTrial Trial(CoverKind kind, StrikeStyle style, double peakN, CoverCheck[] others)
    {
        StrikeResult strike = MadeUpStrike.Result(style, peakN);
        strike = strike with { Setup = strike.Setup with { Cover = CoverSpec.Of(kind) } };
        CoverCheck[] passing =
        [
            new(CoverCriterion.Lure, CoverState.Passes, default, default), Of(CoverCriterion.Sets, Exact(peakN), new(12.0, 6.0, 18.0)),
            Of(CoverCriterion.Holds, new(54.0, 40.0, 90.0), Exact(27.0), WeakPlace.Rod), Of(CoverCriterion.Boat, new(60.0, 50.0, 90.0), Exact(48.0), WeakPlace.Knot),
            Of(CoverCriterion.Drawn, Exact(50.0), new(12.0, 4.0, 31.0)), Of(CoverCriterion.Tight, Exact(2.1), Exact(1.5)),
        ];
        return new(new(strike.Setup, strike.Task, strike.Setup.Reel.DragN), strike, LandingOfStrike.Run(strike.Setup, strike.Task).Demand(),
            [.. passing.Select(p => others.FirstOrDefault(o => o.Criterion == p.Criterion) ?? p)])
        { BoatFactor = 1.55 };
    }

    private static CoverCheck Of(CoverCriterion criterion, Ranged have, Ranged need, WeakPlace? place = null) => CoverCheck.Of(criterion, have, need, place);

    private static Ranged Exact(double value) => new(value, value, value);
}
