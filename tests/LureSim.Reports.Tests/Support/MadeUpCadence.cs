using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Reports.Tests.Support;

/// <summary>Rhythm studies on made-up answers: no physics, only something to print.</summary>
internal static class MadeUpCadence
{
    public static readonly SustainedTorque Guess = new(3, 2, 5);

    /// <summary>Towed below the window, still above it.</summary>
    public static CadenceResult Window(double from, double to, SustainedTorque? torque = null) =>
        CadenceStudy.Run(Spec, new CadencePlan(), torque ?? Guess, s => Answer(s, s.Retrieve.CadencePerS < from ? WalkPattern.Tracking
            : s.Retrieve.CadencePerS < to ? WalkPattern.Alternating : WalkPattern.Still));

    /// <summary>Two windows; in the upper one only four of six starts walk.</summary>
    public static CadenceResult TwoWindows() => CadenceStudy.Run(Spec, new CadencePlan(LockShare: 0.6), Guess, s =>
        Answer(s, s.Retrieve.CadencePerS is > 0.8 and < 1.5 || (s.Retrieve.CadencePerS is > 2.5 and < 3.2 && s.Retrieve.StartHeadingRad < 0.9)
            ? WalkPattern.Alternating : WalkPattern.OneSided));

    /// <summary>Half of the starts walk at any rhythm.</summary>
    public static CadenceResult Luck() => CadenceStudy.Run(Spec, new CadencePlan(), Guess, s =>
        Answer(s, s.Retrieve.StartHeadingRad < 0 ? WalkPattern.Alternating : WalkPattern.Irregular));

    public static CadenceResult HalfFailed() => CadenceStudy.Run(Spec, new CadencePlan(), Guess, s =>
        s.Retrieve.CadencePerS > 2 ? StationaryOutcome.Failed("the line went stiff") : Answer(s, WalkPattern.Skipping));

    private static RunSpec Spec => MadeUpRetrieve.Result(1).Spec;

    private static StationaryOutcome Answer(RunSpec s, WalkPattern pattern)
    {
        double f = s.Retrieve.CadencePerS, luck = 0.002 * s.Retrieve.StartHeadingRad;
        return new(pattern, (0.08 / f) + luck, 150 + (20 * f), 0.98 - (0.01 * f), 0.25, 1.3, 0.03, 0.3 * f * f, 0.14, 0.001);
    }
}
