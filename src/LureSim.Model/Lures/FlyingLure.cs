namespace LureSim.Model.Lures;

/// <summary>Drag area of a lure in flight, mixed from flying straight and tumbling.</summary>
public static class FlyingLure
{
    // 4/(3 pi): mean of |sin|^3 and of |cos|^3 over a turn in one plane, cross-flow principle.
    private const double TurnMean = 4.0 / (3.0 * Math.PI);

    // Cd of a long round body across the flow, Re 1e3 to 2e5: 0.9 to 1.2 (Hoerner, Fluid-Dynamic Drag, ch. III, from memory). It acts only
    // as a product with the side factor, whose range holds its doubt.
    private const double CrossFlowCd = 1.1;

    /// <summary>
    /// CdA = (1-x) (Cd_a A_front + hooks) + x (0.42 x 1.1 f A_side + 0.42 Cd_a A_front + hooks), m2; Hoerner's cross-flow
    /// principle (Fluid-Dynamic Drag, ch. III).
    /// </summary>
    /// <param name="lure">The lure.</param>
    /// <exception cref="ArgumentException">A number is not finite or is negative.</exception>
    public static double AreaM2(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        LureFlightSpec flight = lure.Flight;
        if (flight.KnownCdAM2 is double known)
        {
            return known;
        }

        HullForm hull = HullShape.Create(lure);
        double largest = 0.0, outline = 0.0;
        for (int i = 0; i < HullForm.Panels; i++)
        {
            HullPanel panel = hull.Panel(i, HullForm.Panels);
            largest = Math.Max(largest, panel.Section.AreaM2);
            outline += (panel.Section.HalfBreadthM + panel.Section.HalfHeightM) * panel.WidthM;
        }

        // It turns about its own axis too: the side area is the mean of top and side view.
        double front = flight.FrontCd * largest;
        double side = CrossFlowCd * flight.SideFactor * outline;
        double hooks = lure.Hooks.Sum(hook => hook.DragAreaM2), x = flight.TumblingShare;
        return ((1.0 - x) * front) + (x * TurnMean * (side + front)) + hooks;
    }

    /// <summary>Mass in the air, hooks included, kg.</summary>
    /// <param name="lure">The lure.</param>
    public static double MassKg(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        return lure.MassKg + lure.Hooks.Sum(hook => hook.MassKg);
    }
}
