using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Trim;

/// <summary>The figures of <c>trim</c>.</summary>
public sealed class TrimSource() : FigureSource<TrimResult>("trim", Activities.Rest, ["attitude"], TrimFigures.All)
{
    // Drag and added mass move nothing at rest, and what a lure does in the air neither.
    private static readonly KeySpec[] Unread =
    [
        WaterKeys.ContactHeight, LureKeys.AddedMassFactor, LureKeys.CrossFlowCd, LureKeys.AxialDragFactor, LureKeys.FormDrag, LureKeys.SternShedding,
        LureKeys.SternPlace, LureKeys.NoseDamping, LureKeys.RollDamping, LureKeys.FrictionSpeed, LureKeys.HookDrag, LureKeys.HookAlong, .. FlightKeys.All,
    ];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Table is "lure" or "water" && !Unread.Contains(key);
    }

    /// <summary>Floats the lure of a scenario.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="stop">Stops the search.</param>
    public static TrimResult AtRest(ScenarioResult scenario, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Trimming.Run(scenario.Setup!.Lure, WaterModel.Evaluate(scenario.Setup.Water), stop);
    }

    /// <summary>How it lies, in a word.</summary>
    /// <param name="trim">Lure at rest.</param>
    public static string Attitude(TrimResult trim)
    {
        ArgumentNullException.ThrowIfNull(trim);
        const double flat = 3.0, slanted = 12.0, steep = 60.0;
        double deg = trim.Rest.TrimRad * 180.0 / Math.PI;
        return !trim.IsUpright ? "lies-over"
            : Math.Abs(deg) <= flat ? "flat"
            : deg < 0.0 ? "nose-down"
            : deg <= slanted ? "slightly-tail-down"
            : deg <= steep ? "slanted" : "upright";
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        TrimResult trim = AtRest(scenario, stop);
        return Row([Attitude(trim)], trim);
    }
}
