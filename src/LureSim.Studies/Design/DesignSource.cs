using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Design;

/// <summary>The figures of <c>design</c>: how the lure floats and its walk margin.</summary>
public sealed class DesignSource() : FigureSource<DesignPoint>("design", Activities.Pool, ["fate"], DesignFigures.All)
{
    // What the film of the water does to a line, and a lure in the air, are nothing to a hull in the water.
    private static readonly KeySpec[] Unread = [WaterKeys.ContactHeight, .. FlightKeys.All];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Table is "lure" or "water" && !Unread.Contains(key);
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        DesignPoint point = DesignPoint.Whole(scenario.Setup!.Lure, WaterModel.Evaluate(scenario.Setup.Water), new MarginTask(), stop);
        return point.Trim is null ? FigureRow.Failed(point.Reason!) : Row([point.Word == FloatWord.Floats ? "floats" : "lies-over"], point);
    }
}
