namespace LureSim.Model.Lures;

/// <summary>Refuses lures that the hull models are not made for.</summary>
public static class LureSpecCheck
{
    /// <summary>Demands every number of a lure inside its range.</summary>
    /// <param name="lure">Lure.</param>
    /// <exception cref="ArgumentNullException">The lure or one of its lists is missing.</exception>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public static void Demand(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        Require.InRange(lure.LengthM, 0.02, 0.4);
        Require.InRange(lure.DiameterM, 0.002, lure.LengthM);
        Require.InRange(lure.HeightM, 0.002, lure.LengthM);
        Require.InRange(lure.MassKg, 1e-4, 2.0);
        Require.InRange(lure.TieXM, -0.6 * lure.LengthM, 0.6 * lure.LengthM);
        Require.InRange(lure.TieZM, -lure.HeightM, lure.HeightM);
        Require.InRange(lure.AddedMassFactor, 0.0, 1.5);
        Require.InRange(lure.CrossFlowCd, 0.0, 5.0);
        Require.InRange(lure.AxialDragFactor, 0.0, 10.0);
        Require.InRange(lure.FormDragCd, 0.0, 2.0);
        Require.InRange(lure.SternShedding, 0.0, 3.0);
        Require.InRange(lure.SternPlace, 0.1, 0.49);
        DemandWeights(lure);
        if (lure.Shape == LureShape.Stations)
        {
            DemandStations(lure.Stations ?? throw new ArgumentException("shape 'stations' needs a list of stations."));
        }
    }

    /// <summary>Demands at least two stations with rising x and half-axes of zero or more.</summary>
    /// <param name="stations">Stations from tail to nose.</param>
    internal static void DemandStations(IReadOnlyList<HullStation> stations)
    {
        if (stations.Count < 2)
        {
            throw new ArgumentException($"a hull needs at least 2 stations, not {stations.Count}.");
        }

        double last = double.NegativeInfinity;
        foreach (HullStation s in stations)
        {
            if (!(s.XM > last) || !double.IsFinite(s.XM))
            {
                throw new ArgumentException("station positions must be finite and rise from tail to nose.");
            }

            last = s.XM;
            Require.InRange(s.HalfBreadthM, 0.0, 1e3);
            Require.InRange(s.HalfHeightM, 0.0, 1e3);
            Require.InRange(s.CentreZM, -1e3, 1e3);
        }
    }

    private static void DemandWeights(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure.Ballast);
        ArgumentNullException.ThrowIfNull(lure.Hooks);
        double ballast = 0.0;
        foreach (BallastSpec b in lure.Ballast)
        {
            ballast += Require.InRange(b.MassKg, 0.0, lure.MassKg);
            Require.InRange(b.XM, -0.6 * lure.LengthM, 0.6 * lure.LengthM);
            Require.InRange(b.ZM, -lure.HeightM, lure.HeightM);
        }

        Require.InRange(ballast, 0.0, lure.MassKg);
        foreach (HookSpec h in lure.Hooks)
        {
            Require.InRange(h.MassKg, 0.0, 0.2);
            Require.InRange(h.XM, -0.7 * lure.LengthM, 0.7 * lure.LengthM);
            Require.InRange(h.ZM, -2.0 * lure.HeightM, 2.0 * lure.HeightM);

            // A hook of 0.01 m2 with as much feather; 0.2 kg of 100 kg/m3.
            Require.InRange(h.DragAreaM2, 0.0, 0.02);
            if (h.DragAreaAlongM2 is double along)
            {
                Require.InRange(along, 0.0, 0.02, nameof(h.DragAreaAlongM2));
            }

            Require.InRange(h.SteelVolumeM3, 0.0, 2e-3);
        }
    }
}
