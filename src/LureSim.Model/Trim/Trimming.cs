using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Trim;

/// <summary>Floats a lure and measures it at rest. Hydrostatics only: <see cref="FloatSolver"/>, checks H1 to H6.</summary>
public static class Trimming
{
    private const int ProfilePoints = 61, Halvings = 40;

    // Nobody pulls a floating lure down with more than ten times its weight.
    private const double MostWeights = 10.0;

    /// <summary>Floats the lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="stop">Stops the search.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static TrimResult Run(LureSpec lure, WaterState water, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        FloatingLure f = FloatingLure.Float(lure, water);
        FloatReport report = FloatSolver.Report(f);
        HullProfile profile = Profile(f);
        return new TrimResult(
            lure, report, FloatSolver.Righting(lure, water), profile,
            Math.Max(0.0, -profile.BellyZM.Min()), profile.BackZM[ProfilePoints / 2], DippingLoad(lure, water, report, stop), TieStiffness(f));
    }

    /// <summary>How the lure lies, and nothing else: for searches, many times faster than <see cref="Run"/>.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static FloatReport Rest(LureSpec lure, WaterState water)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        return FloatSolver.Solve(lure, water);
    }

    // Heave and trim in series, as the nose bob of the walk has them.
    private static double TieStiffness(FloatingLure f)
    {
        double arm = f.AheadM(f.Spec.TieXM, f.Spec.TieZM) - f.FlotationXM;
        return 1.0 / ((1.0 / f.HeaveStiffnessNM) + (arm * arm / f.TrimStiffnessNMRad));
    }

    /// <summary>The pull as a weight without volume at the tie, halved until the nose lies at the water.</summary>
    private static double? DippingLoad(LureSpec lure, WaterState water, FloatReport report, CancellationToken stop)
    {
        if (report.NoseHeightM <= 0.0)
        {
            return null;
        }

        double low = 0.0, high = MostWeights * report.MassKg;
        bool under = false;
        for (int i = 0; i < Halvings; i++)
        {
            stop.ThrowIfCancellationRequested();
            double load = 0.5 * (low + high);
            bool here = NoseUnder(lure, water, load);
            under |= here;
            (low, high) = here ? (low, load) : (load, high);
        }

        return under ? Physics.GravityMS2 * high : null;
    }

    // A lure that the load sinks, or turns out of every attitude, has its nose under as well.
    private static bool NoseUnder(LureSpec lure, WaterState water, double loadKg)
    {
        LureSpec loaded = lure with { Hooks = [.. lure.Hooks, new HookSpec(Math.Min(loadKg, 0.2), lure.TieXM, lure.TieZM, 0.0, 0.0)] };
        try
        {
            return FloatSolver.Solve(loaded, water).NoseHeightM <= 0.0;
        }
        catch (Exception e) when (e is ArgumentException or ModelException)
        {
            return true;
        }
    }

    private static HullProfile Profile(FloatingLure f)
    {
        var back = new (double X, double Z)[ProfilePoints];
        var belly = new (double X, double Z)[ProfilePoints];
        for (int i = 0; i < ProfilePoints; i++)
        {
            double x = -0.5 * f.Hull.LengthM * Math.Cos(Math.PI * i / (ProfilePoints - 1));
            HullSection s = f.Hull.SectionAt(x);
            back[i] = Seen(f, x, s.CentreZM + s.HalfHeightM);
            belly[i] = Seen(f, x, s.CentreZM - s.HalfHeightM);
        }

        return new HullProfile(
            [.. back.Select(p => p.X)], [.. back.Select(p => p.Z)], [.. belly.Select(p => p.X)], [.. belly.Select(p => p.Z)],
            [
                Mark(f, "centre of gravity", f.Mass.Centre.X, f.Mass.Centre.Z),
                Mark(f, "centre of buoyancy", f.State.Immersion.Centre.X, f.State.Immersion.Centre.Z),
                Mark(f, "line tie", f.Spec.TieXM, f.Spec.TieZM),
                .. f.Spec.Ballast.Select(b => Mark(f, "ballast", b.XM, b.ZM)),
                .. f.Spec.Hooks.Select(h => Mark(f, "hook", h.XM, h.ZM)),
            ]);
    }

    private static HullMark Mark(FloatingLure f, string name, double x, double z)
    {
        (double seenX, double seenZ) = Seen(f, x, z);
        return new HullMark(name, seenX, seenZ);
    }

    // Seen square from the side; a lure that lies over shows its back.
    private static (double X, double Z) Seen(FloatingLure f, double x, double z)
    {
        var point = new Vec3(x, 0.0, z);
        return (Vec3.Dot(f.State.Attitude.Forward, point), f.State.Attitude.HeightOf(point));
    }
}
