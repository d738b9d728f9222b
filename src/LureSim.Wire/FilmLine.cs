using System.Text.Json;

namespace LureSim.Wire;

/// <summary>The line of a film: points from the rod tip to the lure's tie, always the same points of the line, at equal times.</summary>
/// <param name="StepS">From frame to frame, s.</param>
/// <param name="Points">Points of a frame.</param>
/// <param name="Offset">x, y and z of step 0, m.</param>
/// <param name="Unit">Size of a step, m.</param>
/// <param name="Error">Largest distance of a point from where the solver had it, over the film, m.</param>
/// <param name="Grains">Frame by frame, point by point, x y z.</param>
public sealed record FilmLine(double StepS, int Points, IReadOnlyList<double> Offset, double Unit, double Error, ReadOnlyMemory<short> Grains)
{
    /// <summary>Frames.</summary>
    public int Count => Grains.Length / (3 * Points);

    /// <summary>A coordinate, m.</summary>
    /// <param name="frame">Frame, from 0.</param>
    /// <param name="point">Point, from 0 at the rod tip.</param>
    /// <param name="axis">0, 1, 2: x, y, z.</param>
    public double At(int frame, int point, int axis) => Offset[axis] + (Unit * Grains.Span[(((frame * Points) + point) * 3) + axis]);

    /// <summary>Thins rows of coordinates.</summary>
    /// <param name="rows">Rows at equal times, each point by point x y z; a whole number of frames and one more.</param>
    /// <param name="spacingS">From row to row, s.</param>
    /// <param name="every">Rows from frame to frame.</param>
    internal static FilmLine Of(IReadOnlyList<double[]> rows, double spacingS, int every)
    {
        (double[] offset, double unit) = Range(rows, every);
        int width = rows[0].Length;
        var grains = new short[(((rows.Count - 1) / every) + 1) * width];
        for (int i = 0; i < grains.Length; i++)
        {
            grains[i] = Grain.Step(rows[i / width * every][i % width], offset[i % 3], unit);
        }

        var line = new FilmLine(every * spacingS, width / 3, offset, unit, 0.0, grains);
        return line with { Error = line.Largest(rows, every) };
    }

    /// <summary>Writes it.</summary>
    /// <param name="json">Writer.</param>
    internal void WriteTo(Utf8JsonWriter json)
    {
        json.WriteStartObject("line");
        json.WriteNumber("step_s", StepS);
        json.WriteNumber("points", Points);
        json.WriteNumber("count", Count);
        json.WriteStartArray("offset");
        foreach (double o in Offset)
        {
            json.WriteNumberValue(o);
        }

        json.WriteEndArray();
        json.WriteNumber("unit", Unit);
        json.WriteNumber("error", Error);
        json.WriteString("i16", Grain.Text(Grains.Span));
        json.WriteEndObject();
    }

    private static (double[] Offset, double Unit) Range(IReadOnlyList<double[]> rows, int every)
    {
        double[] low = [.. Enumerable.Repeat(double.PositiveInfinity, 3)], high = [.. Enumerable.Repeat(double.NegativeInfinity, 3)];
        for (int r = 0; r < rows.Count; r += every)
        {
            for (int i = 0; i < rows[r].Length; i++)
            {
                (low[i % 3], high[i % 3]) = (Math.Min(low[i % 3], rows[r][i]), Math.Max(high[i % 3], rows[r][i]));
            }
        }

        double reach = Math.Max(high[0] - low[0], Math.Max(high[1] - low[1], high[2] - low[2]));
        return ([0.5 * (low[0] + high[0]), 0.5 * (low[1] + high[1]), 0.5 * (low[2] + high[2])], Grain.Unit(0.5 * reach));
    }

    private double Largest(IReadOnlyList<double[]> rows, int every)
    {
        double worst = 0.0;
        for (int r = 0; r < rows.Count; r++)
        {
            int f = Math.Min(r / every, Math.Max(0, Count - 2));
            double share = (double)(r - (f * every)) / every;
            for (int p = 0; p < Points; p++)
            {
                double square = 0.0;
                for (int axis = 0; axis < 3; axis++)
                {
                    double shown = At(f, p, axis) + (share > 0.0 ? share * (At(f + 1, p, axis) - At(f, p, axis)) : 0.0);
                    double off = shown - rows[r][(3 * p) + axis];
                    square += off * off;
                }

                worst = Math.Max(worst, square);
            }
        }

        return Math.Sqrt(worst);
    }
}
