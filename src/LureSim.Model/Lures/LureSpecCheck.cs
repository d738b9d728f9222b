namespace LureSim.Model.Lures;

/// <summary>Refuses lures that the hull models are not made for.</summary>
internal static class LureSpecCheck
{
    /// <summary>Demands every number of a lure inside its range.</summary>
    /// <param name="lure">Lure.</param>
    /// <exception cref="ArgumentNullException">The lure or one of its lists is missing.</exception>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public static void Demand(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        Parameter.Demand(lure);
        Require.InRange(lure.DiameterM, 0.0, lure.LengthM);
        Require.InRange(lure.HeightM, 0.0, lure.LengthM);
        Require.InRange(lure.TieXM, -0.6 * lure.LengthM, 0.6 * lure.LengthM);
        Require.InRange(lure.TieZM, -lure.HeightM, lure.HeightM);
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
            Require.InRange(h.XM, -0.7 * lure.LengthM, 0.7 * lure.LengthM);
            Require.InRange(h.ZM, -2.0 * lure.HeightM, 2.0 * lure.HeightM);
        }
    }
}
