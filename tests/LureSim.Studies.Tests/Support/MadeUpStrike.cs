using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Strike;

namespace LureSim.Studies.Tests.Support;

/// <summary>Strikes without physics: the pull on hook and line is a function of the drag.</summary>
internal static class MadeUpStrike
{
    /// <summary>Strikes whose largest pull is a function of the drag; one that is not finite cannot be finished.</summary>
    /// <param name="pullN">Pull over drag, N.</param>
    public static Func<Setup, StrikeTask, Outcome<StrikeResult>> Of(Func<double, double> pullN) => (setup, task) =>
    {
        double pull = pullN(setup.Reel.DragN);
        return double.IsFinite(pull) ? new(Result(setup, task, pull)) : new(null, new("made up", 0.1));
    };

    private static StrikeResult Result(Setup setup, StrikeTask task, double pullN) => new()
    {
        Setup = setup,
        Task = task,
        Summary = new()
        {
            HookForcePeakN = pullN,
            PeakTimeS = 0.2,
            HookForceStaticN = pullN,
            ImpulseNs = 5.0,
            ForcePerPointN = pullN / setup.Hook.Points,
            TimeToTightS = 0.1,
            TimeToForceS = pullN >= setup.Hook.SettingN ? 0.15 : null,
            SetTimeS = 0.1,
            LineStretchM = 0.1,
            DragSlipM = 0.0,
            DragSlipEndM = 0.0,
            TipTravelM = 0.5,
            RodTurnRad = 1.0,
            TipForcePeakN = pullN,
            ReelForcePeakN = pullN,
            HandTorquePeakNm = 20.0,
            RodUse = 0.1,
            LostToPlantsN = 0.0,
            FishSpeedMS = 1.0,
            FishWayM = 0.1,
            SlackAfterShare = 0.0,
            Limit = StrikeLimit.Hands,
            Margins = WeakPlaces.Margins(setup, task, new(pullN, pullN, 0.1)),
        },
        Series = new([]),
        Moments = [],
        Counters = new(1, 0, 1, 0, 0.1),
    };
}
