using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>A run of a film as a test: points and headings that were seen, and a first idea of how it was let go.</summary>
internal static class TrackReader
{
    // The first idea comes from this share of the pictures, at least four.
    private const double EarlyShare = 0.15;

    private static readonly (FitWord X, FitWord Y, double Ahead)[] Points = [(FitWord.NoseX, FitWord.NoseY, 1.0), (FitWord.TailX, FitWord.TailY, -1.0), (FitWord.MiddleX, FitWord.MiddleY, 0.0)];

    /// <summary>The test; null where fewer than three pictures show the lure.</summary>
    /// <param name="block">Test.</param>
    /// <param name="rows">Pictures of a run.</param>
    /// <param name="stepS">Time step, s.</param>
    public static TrackRun? Read(FitBlock block, IReadOnlyList<FitRow> rows, double stepS)
    {
        FitRow[] seen = [.. rows.Where(r => Points.Any(p => r.Of(p.X) is not null) || r.Of(FitWord.Heading) is not null)];
        if (seen.Length < 3)
        {
            return null;
        }

        double first = seen[0].Of(FitWord.Time)!.Value, place = block.Of(FitWord.PlaceError) ?? FitTests.PlaceErrorM, angle = block.Of(FitWord.AngleError) ?? FitTests.AngleErrorRad;
        var marks = new List<TrackMark>();
        var readings = new List<FitReading>();
        foreach (FitRow row in seen)
        {
            double t = row.Of(FitWord.Time)!.Value - first;
            void Add(double ahead, bool isY, FitQuantity quantity, double value, double sigma)
            {
                marks.Add(new(t, ahead, isY));
                readings.Add(new(FitKind.Track, quantity, row.Place, block.HooksOn, t, value, sigma));
            }

            foreach ((FitWord x, FitWord y, double ahead) in Points)
            {
                if (row.Of(x) is double px && row.Of(y) is double py)
                {
                    Add(ahead, false, FitQuantity.Place, px, place);
                    Add(ahead, true, FitQuantity.Place, py, place);
                }
            }

            if (row.Of(FitWord.Heading) is double heading)
            {
                Add(double.NaN, false, FitQuantity.Heading, heading, angle);
            }
        }

        (double speed, double drift) = Early(seen);
        return new(block.HooksOn, [.. marks], stepS)
        {
            Readings = readings,
            Own = [FitTests.Speed(speed), .. FitTests.Turning],
            OwnStart = [0.0, Math.Clamp(FitTests.Turning[0].ZOf(drift), -2.0, 2.0), 0.0],
        };
    }

    // Speed and drift from the first pictures, roughly: the search mends them.
    private static (double SpeedMS, double DriftRad) Early(FitRow[] seen)
    {
        var places = new List<(double T, double X, double Y, double Heading)>();
        foreach (FitRow row in seen)
        {
            double t = row.Of(FitWord.Time)!.Value;
            if (row.Of(FitWord.NoseX) is double nx && row.Of(FitWord.TailX) is double tx)
            {
                double ny = row.Of(FitWord.NoseY)!.Value, ty = row.Of(FitWord.TailY)!.Value;
                places.Add((t, 0.5 * (nx + tx), 0.5 * (ny + ty), Math.Atan2(ny - ty, nx - tx)));
            }
            else if (row.Of(FitWord.MiddleX) is double mx)
            {
                places.Add((t, mx, row.Of(FitWord.MiddleY)!.Value, row.Of(FitWord.Heading) ?? double.NaN));
            }
        }

        int last = Math.Min(places.Count - 1, Math.Max(3, (int)(EarlyShare * places.Count)));
        if (last < 1)
        {
            return (0.3, 0.0);
        }

        (double t0, double x0, double y0, double heading) = places[0];
        (double t1, double x1, double y1, double later) = places[last];
        double axis = double.IsNaN(heading) || double.IsNaN(later) ? double.NaN : heading + (0.5 * Math.IEEERemainder(later - heading, 2.0 * Math.PI));
        double drift = double.IsNaN(axis) ? 0.0 : Math.IEEERemainder(axis - Math.Atan2(y1 - y0, x1 - x0), 2.0 * Math.PI);
        return (Math.Sqrt(((x1 - x0) * (x1 - x0)) + ((y1 - y0) * (y1 - y0))) / (t1 - t0), drift);
    }
}
