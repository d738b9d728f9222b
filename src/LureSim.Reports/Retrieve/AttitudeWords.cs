using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>Pitch, roll and dip of the nose over a stretch of a run, and the words for them.</summary>
/// <param name="LowPitchDeg">Lowest pitch, nose up positive, deg.</param>
/// <param name="HighPitchDeg">Highest pitch, deg.</param>
/// <param name="WidestRollDeg">Largest size of the roll, deg.</param>
/// <param name="DipM">Rest height of the nose (start of the run) less its lowest height, m.</param>
/// <param name="UnderShare">Share of the time with the nose under water, 0 to 1.</param>
internal readonly record struct AttitudeWords(double LowPitchDeg, double HighPitchDeg, double WidestRollDeg, double DipM, double UnderShare)
{
    // Half a millimetre: less than the picture shows.
    private const double HardlyM = 5e-4;

    /// <summary>"the nose dips 19 mm".</summary>
    /// <param name="shown">Units.</param>
    public string Dip(Shown shown) => DipM < HardlyM ? "the nose hardly dips" : $"the nose dips {shown.Size(DipM)}";

    /// <summary>Title of the strobe.</summary>
    /// <param name="shown">Units.</param>
    public string Title(Shown shown) => $"{Trade.Capital(Dip(shown))}, the hull {(Math.Round(WidestRollDeg) == 0.0 ? "does not roll" : $"rolls up to {Degrees(WidestRollDeg)}")}";

    /// <summary>Title of the picture over time.</summary>
    /// <param name="shown">Units.</param>
    public string OverTime(Shown shown) => $"{Trade.Capital(Pitches)}, {Rolls}, {Dip(shown)}";

    /// <summary>"pitch -9° to 16°".</summary>
    public string Pitches => Degrees(LowPitchDeg) == Degrees(HighPitchDeg) ? $"pitch {Degrees(LowPitchDeg)}" : $"pitch {Degrees(LowPitchDeg)} to {Degrees(HighPitchDeg)}";

    /// <summary>"roll up to 52°".</summary>
    public string Rolls => Math.Round(WidestRollDeg) == 0.0 ? "no roll" : $"roll up to {Degrees(WidestRollDeg)}";

    /// <summary>"the nose is under water 22 % of the time".</summary>
    public string Under => UnderShare == 0.0 ? "the nose stays out of the water"
        : UnderShare == 1.0 ? "the nose stays under water" : $"the nose is under water {Trade.Fixed(100.0 * UnderShare, 0)} % of the time";

    /// <summary>Reads a stretch of a run.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="from">First sample.</param>
    /// <param name="to">After the last sample.</param>
    public static AttitudeWords Of(RetrieveResult result, int from, int to)
    {
        ReadOnlySpan<double> pitch = result.Series["pitch_deg"], roll = result.Series["roll_deg"], nose = result.Series["nose_z_m"];
        (double low, double high, double widest, double lowest, int under) = (double.MaxValue, double.MinValue, 0.0, double.MaxValue, 0);
        for (int i = from; i < to; i++)
        {
            (low, high) = (Math.Min(low, pitch[i]), Math.Max(high, pitch[i]));
            widest = Math.Max(widest, Math.Abs(roll[i]));
            lowest = Math.Min(lowest, nose[i]);
            under += nose[i] < 0.0 ? 1 : 0;
        }

        return new AttitudeWords(low, high, widest, nose[0] - lowest, (double)under / (to - from));
    }

    /// <summary>A whole number of degrees.</summary>
    /// <param name="deg">Angle, deg.</param>
    public static string Degrees(double deg) => Trade.Fixed(deg, 0) + "°";

    /// <summary>"pitch 12° down".</summary>
    /// <param name="deg">Pitch, nose up positive, deg.</param>
    public static string Pitch(double deg) => "pitch " + Signed(deg, "up", "down");

    /// <summary>"roll 52°, left up".</summary>
    /// <param name="deg">Roll, left side up positive, deg.</param>
    public static string Roll(double deg) => "roll " + Signed(deg, "left up", "right up");

    /// <summary>"nose 19 mm under".</summary>
    /// <param name="noseZM">Nose over the water, m.</param>
    /// <param name="shown">Units.</param>
    public static string Nose(double noseZM, Shown shown) => Math.Abs(noseZM) < HardlyM ? "nose at the water"
        : $"nose {shown.Size(Math.Abs(noseZM))} {(noseZM < 0.0 ? "under" : "over")}";

    private static string Signed(double deg, string positive, string negative) =>
        Math.Round(deg) == 0.0 ? "0°" : $"{Degrees(Math.Abs(deg))} {(deg > 0.0 ? positive : negative)}";
}
