using System.Text.Json;

namespace LureSim.Wire;

/// <summary>One quantity of a film, at equal times. Between its frames it runs straight.</summary>
/// <param name="Name">Name.</param>
/// <param name="StepS">From frame to frame, s.</param>
/// <param name="Offset">Value of step 0, in the quantity's unit.</param>
/// <param name="Unit">Size of a step.</param>
/// <param name="Error">Largest difference from the solver's own series over the film, in the quantity's unit.</param>
/// <param name="Grains">One per frame.</param>
public sealed record FilmTrack(string Name, double StepS, double Offset, double Unit, double Error, ReadOnlyMemory<short> Grains)
{
    /// <summary>Value at a frame.</summary>
    /// <param name="frame">Frame, from 0.</param>
    public double At(int frame) => Offset + (Unit * Grains.Span[frame]);

    /// <summary>Thins a series.</summary>
    /// <param name="name">Name.</param>
    /// <param name="rows">Values at equal times; a whole number of frames and one more.</param>
    /// <param name="spacingS">From row to row, s.</param>
    /// <param name="every">Rows from frame to frame.</param>
    internal static FilmTrack Of(string name, ReadOnlySpan<double> rows, double spacingS, int every)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int i = 0; i < rows.Length; i += every)
        {
            (low, high) = (Math.Min(low, rows[i]), Math.Max(high, rows[i]));
        }

        double offset = 0.5 * (low + high), unit = Grain.Unit(0.5 * (high - low));
        var grains = new short[((rows.Length - 1) / every) + 1];
        for (int f = 0; f < grains.Length; f++)
        {
            grains[f] = Grain.Step(rows[f * every], offset, unit);
        }

        var track = new FilmTrack(name, every * spacingS, offset, unit, 0.0, grains);
        return track with { Error = track.Largest(rows, every) };
    }

    /// <summary>Writes it under its name.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="filmStepS">Step of the film, s; another one is written with the channel.</param>
    internal void WriteTo(Utf8JsonWriter json, double filmStepS)
    {
        json.WriteStartObject(Name);
        if (StepS != filmStepS)
        {
            json.WriteNumber("step_s", StepS);
        }

        json.WriteNumber("offset", Offset);
        json.WriteNumber("unit", Unit);
        json.WriteNumber("error", Error);
        json.WriteString("i16", Grain.Text(Grains.Span));
        json.WriteEndObject();
    }

    private double Largest(ReadOnlySpan<double> rows, int every)
    {
        ReadOnlySpan<short> grains = Grains.Span;
        double offset = Offset, unit = Unit, worst = 0.0;
        for (int i = 0; i < rows.Length; i++)
        {
            int frame = i / every, over = i - (frame * every);
            double a = grains[frame], b = over > 0 ? grains[frame + 1] : a;
            double off = Math.Abs(offset + (unit * (a + ((b - a) * over / every))) - rows[i]);
            worst = off > worst ? off : worst;
        }

        return worst;
    }
}
