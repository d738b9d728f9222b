using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Studies.Across;
using LureSim.Studies.Cadence;
using LureSim.Studies.Maps;
using LureSim.Studies.Runs;

namespace LureSim.Reports.Tests.Support;

/// <summary>Rhythm studies on made-up answers: no physics, only something to print.</summary>
internal static class MadeUpCadence
{
    public static readonly SustainedTorque Guess = new(3, 2, 5);

    /// <summary>Towed below the window, still above it.</summary>
    public static CadenceResult Window(double from, double to, SustainedTorque? torque = null) =>
        CadenceStudy.Run(Made.Setup, Made.Task, new CadencePlan(), torque ?? Guess, (_, s) => Answer(s, s.CadencePerS < from ? WalkPattern.Tracking
            : s.CadencePerS < to ? WalkPattern.Alternating : WalkPattern.Still)).Demand();

    /// <summary>Two windows; in the upper one only four of six starts walk.</summary>
    public static CadenceResult TwoWindows() => CadenceStudy.Run(Made.Setup, Made.Task, new CadencePlan(LockShare: 0.6), Guess, (_, s) =>
        Answer(s, s.CadencePerS is > 0.8 and < 1.5 || (s.CadencePerS is > 2.5 and < 3.2 && s.StartHeadingRad < 0.9)
            ? WalkPattern.Alternating : WalkPattern.OneSided)).Demand();

    /// <summary>Half of the starts walk at any rhythm.</summary>
    public static CadenceResult Luck() => CadenceStudy.Run(Made.Setup, Made.Task, new CadencePlan(), Guess, (_, s) =>
        Answer(s, s.StartHeadingRad < 0 ? WalkPattern.Alternating : WalkPattern.Irregular)).Demand();

    public static CadenceResult HalfFailed() => CadenceStudy.Run(Made.Setup, Made.Task, new CadencePlan(), Guess, (_, s) =>
        s.CadencePerS > 2 ? StationaryOutcome.Failed("the line went stiff") : Answer(s, WalkPattern.Skipping)).Demand();

    /// <summary>Three windows over a key of numbers (or words), the third set-up failed; twice over when a second key varies.</summary>
    public static AcrossResult Across(bool numbers, bool twoKeys)
    {
        AcrossKey[] keys = [new("line.diameter", numbers ? "line.diameter, mm" : "line", numbers ? "mm" : "", numbers), new("leader.material", "leader.material", "", false)];
        var cases = new List<AcrossCase>();
        for (int i = 0; i < 4; i++)
        {
            foreach (string leader in twoKeys ? ["nylon", "none"] : new[] { "nylon" })
            {
                double from = 0.5 + (0.2 * i) + (leader == "none" ? 0.1 : 0.0);
                AcrossValue[] values = [new($"0.{2 + i} mm", numbers ? 0.2 + (0.1 * i) : double.NaN), new(leader, double.NaN)];
                AcrossValue[] own = twoKeys ? values : values[..1];
                cases.Add(i == 2 ? new AcrossCase(own, null, "the lure sinks") : new AcrossCase(own, Window(from, 4.5 - from), null));
            }
        }

        return new("Made-up set-ups", twoKeys ? keys : keys[..1], cases);
    }

    /// <summary>A map whose walking part is a band from low left to high right, with a corner that makes no sense.</summary>
    public static MapResult Map()
    {
        var plan = new MapPlan(6, 4, 2);
        MapGrid grid = MapStudy.Run(
            plan,
            (x, y) => x > 0.8 && y > 0.8 ? null : (Made.Setup, Made.Task with { CadencePerS = 1 + (2 * x), StrokeM = 0.1 + (0.2 * y) }),
            (_, s) =>
            {
                double ratio = s.CadencePerS / (10 * s.StrokeM);
                return Answer(s, ratio < 0.7 ? WalkPattern.OneSided : ratio > 1.6 ? WalkPattern.Still : WalkPattern.Alternating);
            });
        ValueList<double> Axis(int count, double from, double to) => [.. Enumerable.Range(0, count).Select(i => from + (i * (to - from) / (count - 1)))];
        return new("Made-up map", new("retrieve.cadence", "rhythm, twitches per second", "/s", true), new("retrieve.stroke", "retrieve.stroke, cm", "cm", true),
            Axis(grid.Patterns.GetLength(0), 1, 3), Axis(grid.Patterns.GetLength(1), 10, 30), grid, plan);
    }

    private static RetrieveResult Made => MadeUpRetrieve.Result(1);

    private static StationaryOutcome Answer(RetrieveTask s, WalkPattern pattern)
    {
        double f = s.CadencePerS, luck = 0.002 * s.StartHeadingRad;
        return new(MadeUpRetrieve.Summary(pattern) with
        {
            GlideWidthM = (0.08 / f) + luck,
            HeadingSwingDeg = 150 + (20 * f),
            Regularity = 0.98 - (0.01 * f),
            AdvancePerTwitchM = 0.25,
            PullReach = 1.3,
            PullImpulseNs = 0.03,
            WristTorqueRmsNm = 0.3 * f * f,
            NoseDownLoadN = 0.001,
            NoseDipM = 0.002,
            SlackShare = 0.6,
            LoadedTipTravelM = 0.3,
        });
    }
}
