namespace LureSim.Scenarios.Outlines;

/// <summary>A point of a drawing, in its units, y down.</summary>
internal readonly record struct Spot(double X, double Y)
{
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(double f, Spot a) => new(f * a.X, f * a.Y);

    /// <summary>Distance from the origin.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));
}

/// <summary>A cubic Bezier curve; a straight line is one whose inner points lie on its thirds.</summary>
internal readonly record struct Curve(Spot A, Spot B, Spot C, Spot D)
{
    /// <summary>A straight line.</summary>
    public static Curve Line(Spot from, Spot to) => new(from, from + (1.0 / 3.0 * (to - from)), from + (2.0 / 3.0 * (to - from)), to);

    /// <summary>A quadratic curve, exactly.</summary>
    public static Curve Quadratic(Spot from, Spot bend, Spot to) => new(from, from + (2.0 / 3.0 * (bend - from)), to + (2.0 / 3.0 * (bend - to)), to);

    /// <summary>The point at t, 0 to 1.</summary>
    public Spot At(double t)
    {
        double u = 1.0 - t;
        return (u * u * u * A) + (3.0 * u * u * t * B) + (3.0 * u * t * t * C) + (t * t * t * D);
    }

    /// <summary>
    /// Chords that stay within a distance of the curve: it bends by at most 6 times its largest second difference, and a chord of step h is off by at most
    /// h2/8 of that.
    /// </summary>
    public int Chords(double tolerance)
    {
        double bend = Math.Max((A - (2.0 * B) + C).Length, (B - (2.0 * C) + D).Length);
        return (int)Math.Clamp(Math.Ceiling(Math.Sqrt(0.75 * bend / tolerance)), 1.0, 1000.0);
    }
}
