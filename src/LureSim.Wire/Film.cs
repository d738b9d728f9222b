using System.Text.Json;
using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>
/// A retrieve thinned for playing. Channels every 10 ms: a pull lasts 60 to 180 ms, and its edge is the fastest that is shown. The pull at the nose every
/// 5 ms, as it is recorded: a jerk lasts about as long, and its peak is told in words. The line every 20 ms, because its points are two thirds of the size
/// and the eye follows a line less closely than the lure. Angles rad, lengths m; axes of the world: x from the resting rod tip toward the cast, y to the angler's left, z up from the water.
/// </summary>
/// <param name="StepS">From frame to frame, s; a channel may have a step of its own.</param>
/// <param name="Channels">Quantities.</param>
/// <param name="Line">The line, or null where no points were kept.</param>
public sealed record Film(double StepS, IReadOnlyList<FilmTrack> Channels, FilmLine? Line)
{
    /// <summary>Longest film, s: a page must stay small; a longer run is shown from its start.</summary>
    public const double LongestS = 20.0;

    private const double ChannelStepS = 0.01, PullStepS = 0.005, LineStepS = 0.02;

    private const string Pull = "nose_pull";

    private static readonly (string Name, string Channel, double Scale, double Shift)[] Tracks =
    [
        ("tip_x", "tip_x_m", 1.0, 0.0), ("tip_y", "tip_y_m", 1.0, 0.0), ("tip_z", "tip_z_m", 1.0, 0.0),
        ("lure_x", "lure_x_m", 1.0, 0.0), ("lure_y", "lure_y_m", 1.0, 0.0), ("lure_z", "lure_z_m", 1.0, 0.0),
        ("heading", "heading_deg", Math.PI / 180.0, Math.PI), ("pitch", "pitch_deg", Math.PI / 180.0, 0.0), ("roll", "roll_deg", Math.PI / 180.0, 0.0),
        ("nose_x", "nose_x_m", 1.0, 0.0), ("nose_y", "nose_y_m", 1.0, 0.0), ("nose_z", "nose_z_m", 1.0, 0.0), ("tie_z", "nose_height_m", 1.0, 0.0),
        ("hand", "rigid_stroke_m", 1.0, 0.0), ("slack", "slack_m", 1.0, 0.0), (Pull, "nose_tension_N", 1.0, 0.0),
        ("wet_line", "wetted_line_m", 1.0, 0.0), ("take_up", "take_up_m_s", 1.0, 0.0),
    ];

    /// <summary>Frames.</summary>
    public int Count => Channels[0].Grains.Length;

    /// <summary>The names of the channels, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Tracks.Select(t => t.Name)];

    /// <summary>The series behind each channel.</summary>
    internal static IEnumerable<(string Name, string Channel)> Sources => Tracks.Select(t => (t.Name, t.Channel));

    /// <summary>Thins a retrieve, whole or as far as it came.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="line">What kept the points of its line, or null.</param>
    public static Film Of(RetrieveResult result, LineKeeper? line = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        double spacingS = result.Task.Solver.OutputStepS;
        int every = Every(ChannelStepS, spacingS), rows = Whole(Math.Min(result.Series.Count, Rows(spacingS)), every);
        return new(every * spacingS, [.. Tracks.Select(t => FilmTrack.Of(t.Name, Values(result.Series, t, rows), spacingS, Own(t.Name)))], Thin(line, rows));

        // A frame of the others is a whole number of its own.
        int Own(string name) => name == Pull ? Divisor(every, Every(PullStepS, spacingS)) : every;
    }

    /// <summary>Writes it as a value.</summary>
    /// <param name="json">Writer.</param>
    public void WriteTo(Utf8JsonWriter json)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject();
        json.WriteNumber("step_s", StepS);
        json.WriteNumber("count", Count);
        json.WriteStartObject("channels");
        foreach (FilmTrack track in Channels)
        {
            track.WriteTo(json, StepS);
        }

        json.WriteEndObject();
        Line?.WriteTo(json);
        json.WriteEndObject();
    }

    private static FilmLine? Thin(LineKeeper? line, int rows)
    {
        if (line is null || line.Rows.Count == 0)
        {
            return null;
        }

        int every = Every(LineStepS, line.SpacingS);
        return FilmLine.Of([.. line.Rows.Take(Whole(Math.Min(line.Rows.Count, rows), every))], line.SpacingS, every);
    }

    private static int Every(double wantedS, double spacingS) => Math.Max(1, (int)Math.Round(wantedS / spacingS));

    // The largest divisor of a frame that is no longer than wanted.
    private static int Divisor(int frame, int wanted)
    {
        int own = Math.Min(frame, wanted);
        while (frame % own != 0)
        {
            own--;
        }

        return own;
    }

    private static int Rows(double spacingS) => (int)Math.Round(LongestS / spacingS) + 1;

    // The first row and as many whole frames as there are.
    private static int Whole(int rows, int every) => ((rows - 1) / every * every) + 1;

    private static double[] Values(Series series, (string Name, string Channel, double Scale, double Shift) track, int rows)
    {
        ReadOnlySpan<double> all = series[track.Channel];
        double[] values = new double[rows];
        for (int i = 0; i < rows; i++)
        {
            values[i] = (track.Scale * all[i]) + track.Shift;
        }

        if (track.Name == "roll")
        {
            Unwrap(values);
        }

        return values;
    }

    // A lure that turns over goes on turning; half a turn back in one frame would be seen.
    internal static void Unwrap(double[] angles)
    {
        for (int i = 1; i < angles.Length; i++)
        {
            angles[i] -= 2.0 * Math.PI * Math.Round((angles[i] - angles[i - 1]) / (2.0 * Math.PI));
        }
    }
}
