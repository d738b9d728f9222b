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
    internal static FilmLine Of(double[][] rows, double spacingS, int every)
    {
        (double[] offset, double unit) = Range(rows, every);
        int width = rows[0].Length, at = 0;
        var grains = new short[(((rows.Length - 1) / every) + 1) * width];
        for (int r = 0; r < rows.Length; r += every)
        {
            double[] row = rows[r];
            for (int i = 0; i < width; i++)
            {
                grains[at++] = Grain.Step(row[i], offset[i % 3], unit);
            }
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

    // Plain loops over arrays: in a browser this runs through an interpreter, and a slider waits for it.
    private static (double[] Offset, double Unit) Range(double[][] rows, int every)
    {
        double[] offset = new double[3];
        double reach = 0.0;
        for (int axis = 0; axis < 3; axis++)
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            for (int r = 0; r < rows.Length; r += every)
            {
                double[] row = rows[r];
                for (int i = axis; i < row.Length; i += 3)
                {
                    low = row[i] < low ? row[i] : low;
                    high = row[i] > high ? row[i] : high;
                }
            }

            offset[axis] = 0.5 * (low + high);
            reach = Math.Max(reach, high - low);
        }

        return (offset, Grain.Unit(0.5 * reach));
    }

    private double Largest(double[][] rows, int every)
    {
        short[] grains = Grains.ToArray();
        double[] offset = [.. Offset];
        int width = 3 * Points, last = Math.Max(0, Count - 2);
        double unit = Unit, worst = 0.0;
        for (int r = 0; r < rows.Length; r++)
        {
            double[] row = rows[r];
            int frame = Math.Min(r / every, last), from = frame * width, to = Count > 1 ? from + width : from;
            double share = (double)(r - (frame * every)) / every;
            for (int i = 0; i < width; i += 3)
            {
                double x = Off(i, 0), y = Off(i, 1), z = Off(i, 2), square = (x * x) + (y * y) + (z * z);
                worst = square > worst ? square : worst;
            }

            double Off(int i, int axis)
            {
                int k = i + axis;
                double a = grains[from + k], b = grains[to + k];
                return offset[axis] + (unit * (a + (share * (b - a)))) - row[k];
            }
        }

        return Math.Sqrt(worst);
    }
}
