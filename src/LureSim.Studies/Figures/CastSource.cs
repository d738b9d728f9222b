using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Figures;

/// <summary>The figures of <c>cast</c>.</summary>
public sealed class CastSource() : FigureSource<CastResult>("cast", Activities.Cast, ["remarks"], CastFigures.All)
{
    private static readonly string[] OtherTables = ["water", "leader", "retrieve", "solver"];

    private static readonly KeySpec[] Unread =
    [
        AnglerKeys.RodElevation, AnglerKeys.RodBearing, AnglerKeys.PullTime, AnglerKeys.ReturnTime, AnglerKeys.ReturnShare, AnglerKeys.SustainedTorque, RodKeys.Damping, ReelKeys.Drag, ReelKeys.Ratio, LineKeys.Set.TangentialDrag,
        LureFormKeys.BellyFlat, LureBuildKeys.Build, LureKeys.Tie, LureKeys.TieX, LureKeys.TieZ, LureKeys.AddedMassFactor, LureKeys.CrossFlowCd, LureKeys.AxialDragFactor, LureKeys.FormDrag, LureKeys.SternShedding, LureKeys.SternPlace, LureKeys.HookAlong,
    ];

    // These say something about the band of a single cast, or about a line that would break; they move no lure.
    private static readonly KeySpec[] Remarks = [HandsKeys.ReleaseError, HandsKeys.Scatter, LineKeys.Set.Strength];

    private static readonly KeySpec[] OfFixedSpools = [CastKeys.PickUp, CastKeys.RestTension, CastKeys.RingFriction];

    private static readonly KeySpec[] OfRevolvingSpools = [ReelKeys.SpoolDiameter, ReelKeys.TakeUp, .. SpoolKeys.All, CastKeys.RingDrag, CastKeys.Thumb, CastKeys.ThumbFriction, CastKeys.ThumbDelay, CastKeys.ThumbFull];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        KeySpec[] otherReel = scenario.Setup!.Reel.Kind == ReelKind.Fixed ? OfRevolvingSpools : OfFixedSpools;
        return (key.ReadBy & Asks) != 0 && !OtherTables.Contains(key.Table) && !Unread.Contains(key) && !otherReel.Contains(key);
    }

    /// <inheritdoc/>
    public override bool Draws(KeySpec key, ScenarioResult scenario) => !Remarks.Contains(key) && Reads(key, scenario);

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        CastResult cast = CastRunner.Run(scenario.Setup!, scenario.Cast!, new(null, stop)).Demand();
        IReadOnlyList<string> names = CastFigures.Names(cast.Remarks);
        return Row([names.Count == 0 ? "none" : string.Join(' ', names)], cast);
    }
}
