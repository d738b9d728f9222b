using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Reports.Cast;
using LureSim.Reports.Doubt;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Cli.Sweeps;

/// <summary>The figures of <c>cast</c>.</summary>
public sealed class CastFigures : IFigureSource
{
    private static readonly string[] OtherTables = ["water", "leader", "retrieve", "solver"];

    private static readonly KeySpec[] Unread =
    [
        AnglerKeys.PullTime, AnglerKeys.ReturnTime, AnglerKeys.SustainedTorque, RodKeys.Damping, ReelKeys.Drag, LineKeys.Set.TangentialDrag,
        LureKeys.AddedMassFactor, LureKeys.CrossFlowCd, LureKeys.AxialDragFactor, LureKeys.FormDrag, LureKeys.SternShedding, LureKeys.SternPlace, LureKeys.HookAlong,
    ];

    // These say something about the band of a single cast, or about a line that would break; they move no lure.
    private static readonly KeySpec[] Remarks = [HandsKeys.ReleaseError, HandsKeys.Scatter, LineKeys.Set.Strength];

    private static readonly KeySpec[] OfFixedSpools = [CastKeys.PickUp, CastKeys.RestTension, CastKeys.RingFriction];

    private static readonly KeySpec[] OfRevolvingSpools = [.. SpoolKeys.All, CastKeys.Thumb, CastKeys.ThumbDelay, CastKeys.ThumbFull];

    /// <inheritdoc/>
    public string Name => "cast";

    /// <inheritdoc/>
    public Activities Asks => Activities.Cast;

    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } = ["remarks"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Numbers { get; } = [.. CastOutputs.All.Select(k => k.Key)];

    /// <inheritdoc/>
    public IReadOnlyList<HeadlineFigure> Headlines { get; } =
        [new("distance_m", "distance", "m", 1.0), new("launch_speed_m_s", "launch speed", "m/s", 1.0)];

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        KeySpec[] otherReel = scenario.Setup!.Reel.Kind == ReelKind.Fixed ? OfRevolvingSpools : OfFixedSpools;
        return (key.ReadBy & Asks) != 0 && !OtherTables.Contains(key.Table) && !Unread.Contains(key) && !Remarks.Contains(key) && !otherReel.Contains(key);
    }

    /// <inheritdoc/>
    public FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        CastResult cast = CastRunner.Run(scenario.Setup!, scenario.Cast!, new(null, stop)).Demand();
        IReadOnlyList<string> names = CastOutputs.Names(cast.Remarks);
        return new(null, [names.Count == 0 ? "none" : string.Join(' ', names)], [.. CastOutputs.All.Select(k => k.Value(cast))]);
    }
}
