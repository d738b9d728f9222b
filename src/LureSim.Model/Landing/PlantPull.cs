using LureSim.Model.Assembly;
using LureSim.Model.Cover;

namespace LureSim.Model.Landing;

/// <summary>One way out of plants.</summary>
/// <param name="FishN">Pull at the fish, N.</param>
/// <param name="TipN">Pull at the rod tip for it, N: what the line loses to plants on its way is in it.</param>
public sealed record PlantWay(double FishN, double TipN);

/// <summary>Pulls that bring a fish out of plants.</summary>
/// <param name="LineLaidM">Line that lies on plants as it was cast, m.</param>
/// <param name="LineHeldM">Line that still touches them once the rod holds it up straight, m.</param>
/// <param name="Through">Dragged through them: their grip and the drag of water, line laid over them.</param>
/// <param name="Over">Slid over the top of them, fish and weed on the plants, line held up: mu W/(cos theta + mu sin theta).</param>
/// <param name="Out">Lifted out with the weed, line straight up and clear of plants.</param>
/// <param name="LineShare">Share of a pull at the tip that reaches the fish with the line laid over plants, at the pull of <see cref="Through"/>.</param>
public sealed record PlantPull(double LineLaidM, double LineHeldM, PlantWay Through, PlantWay Over, PlantWay Out, double LineShare)
{
    /// <summary>Of a set-up.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Where and how.</param>
    /// <param name="densityKgM3">Density of the water, kg/m3.</param>
    public static PlantPull Of(Setup setup, LandingTask task, double densityKgM3)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        CoverSpec cover = setup.Cover;
        double elevation = task.LineElevationRad(setup), mu = cover.LureFriction;
        double laid = Math.Min(cover.LineOverM, task.DistanceM), held = Math.Min(laid, cover.HeightM / Math.Sin(elevation));
        double weight = (setup.Fish.MassKg + cover.WeedKg) * Physics.GravityMS2;
        double through = cover.GripN + (0.5 * densityKgM3 * setup.Fish.DragAreaM2 * task.PlantSpeedMS * task.PlantSpeedMS);
        double over = mu * weight / (Math.Cos(elevation) + (mu * Math.Sin(elevation)));
        double throughTip = PlantLine.TipN(cover, laid, through);
        return new(
            laid, held, new(through, throughTip), new(over, PlantLine.TipN(cover, held, over)), new(weight, weight),
            throughTip > 0.0 ? through / throughTip : 1.0);
    }
}
