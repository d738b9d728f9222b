using System.Globalization;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>Floats a lure and reports how it lies.</summary>
internal static class FloatSolver
{
    /// <summary>Trim beyond which the planar walk is outside its validity, rad (12 deg: sin and tan differ by 2 %).</summary>
    public const double PlanarTrimLimitRad = 12.0 * Math.PI / 180.0;

    private const int DraftStations = 21;
    private const int HeelSteps = 18;

    /// <summary>Solves for balance of weight and buoyancy in heave, trim and heel.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static FloatReport Solve(LureSpec lure, WaterState water) => Report(FloatingLure.Float(lure, water));

    /// <summary>Heels the floating lure over, step by step.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static RightingCurve Righting(LureSpec lure, WaterState water)
    {
        double[] heel = HeelGrid();
        return new RightingCurve(heel, RightingArms(FloatingLure.Float(lure, water), heel));
    }

    /// <summary>The report of a lure that floats already.</summary>
    internal static FloatReport Report(FloatingLure f)
    {
        Attitude a = f.State.Attitude;
        Immersion i = f.State.Immersion;
        double[] stations = Stations(f.Hull.LengthM);
        return new FloatReport(
            a.TrimRad,
            a.HeelRad,
            a.HeightOf(new Vec3(f.Spec.TieXM, 0.0, f.Spec.TieZM)),
            a.HeightOf(new Vec3(0.5 * f.Hull.LengthM, 0.0, 0.0)),
            stations,
            Array.ConvertAll(stations, f.DraftM),
            f.Mass.MassKg,
            i.VolumeM3,
            f.Hull.VolumeM3(),
            f.Mass.Centre.X,
            f.Mass.Centre.Z,
            i.Centre.X,
            i.Centre.Z,
            f.GmM(i.BmTransM),
            f.GmM(i.BmLongM),
            i.WaterplaneAreaM2,
            f.FlotationXM,
            f.HeaveStiffnessNM,
            f.TrimStiffnessNMRad,
            WaveRegime.MinimumPhaseSpeedMS(f.Water),
            WaveRegime.SpeedMS(0.5, f.Hull.LengthM),
            Notes(f));
    }

    private static double[] Stations(double lengthM)
    {
        var x = new double[DraftStations];
        for (int i = 0; i < x.Length; i++)
        {
            x[i] = lengthM * (((i + 0.5) / DraftStations) - 0.5);
        }

        return x;
    }

    private static double[] HeelGrid()
    {
        var heel = new double[HeelSteps + 1];
        for (int i = 0; i < heel.Length; i++)
        {
            heel[i] = Math.PI * i / HeelSteps;
        }

        return heel;
    }

    private static double[] RightingArms(FloatingLure f, double[] heel)
    {
        FloatingBody body = f.Body();
        double trim = f.State.Attitude.TrimRad;
        return Array.ConvertAll(heel, phi => FloatBalance.RightingArmM(body, FloatBalance.Heave(body, trim, phi)));
    }

    private static List<string> Notes(FloatingLure f)
    {
        var notes = new List<string>();
        Attitude a = f.State.Attitude;
        if (Math.Abs(a.TrimRad) > PlanarTrimLimitRad)
        {
            notes.Add($"it floats {Degrees(a.TrimRad)} deg off level: the planar hull does not hold beyond 12 deg, the hull in six degrees of freedom does.");
        }

        if (a.HeelRad != 0.0)
        {
            notes.Add($"unstable upright; it lies over at {Degrees(a.HeelRad)} deg of heel.");
        }

        if (f.State.StableTrims > 1)
        {
            notes.Add("it can float at more than one trim; the one of least energy is taken.");
        }

        return notes;
    }

    private static string Degrees(double rad) => (rad * 180.0 / Math.PI).ToString("F1", CultureInfo.InvariantCulture);
}
