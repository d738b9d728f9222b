using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Air;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Validation.CastChecks;

/// <summary>A lure on its line with the rod tip at rest: the cast's own step without its swing.</summary>
internal static class Bench
{
    public const double Gravity = 9.80665;

    /// <summary>A stiff line of almost no mass and almost no diameter.</summary>
    public static readonly LineSpec Nothing = new(
        LineMaterial.Braid, 1e-6, 1e-12, 970.0, 20000.0, 0.001, 0.0, SurfaceFilm.Wetted, 1e3);

    /// <summary>Throws a lure from a still tip at (0, height).</summary>
    public static Throw Launch(LineSpec line, ReelFeed reel, double lureKg, double cdA, double frictionFactor, double gravity, double spacing, double height, double linearKgS = 0.0) =>
        new(line, reel, lureKg, cdA, frictionFactor, gravity, spacing, height, linearKgS);

    /// <summary>A reel that gives line without any resistance.</summary>
    public static ReelFeed Free(double lureKg) => new FixedSpool(new FixedSpoolSpec(0.0, 0.0, 1.0), 0.0, 1e-9 * lureKg, 0.02);

    internal sealed class Throw
    {
        private readonly AirStep _cast;
        private readonly TipLink _tip;

        public Throw(LineSpec line, ReelFeed reel, double lureKg, double cdA, double frictionFactor, double gravity, double spacing, double height, double linearKgS)
        {
            var air = new LineAir(new AirSpec(15.0, 0.0), line, frictionFactor, cdA) { LureLinearKgS = linearKgS };
            Line = new AirLine(line, air, new CastLineMass(lureKg, line.LinearDensityKgM), 0.0, gravity, spacing);
            Reel = reel;
            Reel.Locked = false;
            _tip = new TipLink { Z = height };
            _cast = AirStep.AtRest(_tip, Line, Reel);
            AirDensity = air.DensityKgM3;
        }

        public AirLine Line { get; }

        public ReelFeed Reel { get; }

        public double AirDensity { get; }

        public double Time => _cast.TimeS;

        public double Speed => Math.Sqrt((Line.Vx[0] * Line.Vx[0]) + (Line.Vz[0] * Line.Vz[0]));

        public double Distance => Math.Sqrt(Math.Pow(Line.X[0] - _tip.X, 2) + Math.Pow(Line.Z[0] - _tip.Z, 2));

        /// <summary>Places the lure at a distance from the tip in a direction, with a speed in another.</summary>
        public Throw Start(double distance, double placeAngle, double speed, double speedAngle)
        {
            Line.X[0] = _tip.X + (distance * Math.Cos(placeAngle));
            Line.Z[0] = _tip.Z + (distance * Math.Sin(placeAngle));
            Line.Vx[0] = speed * Math.Cos(speedAngle);
            Line.Vz[0] = speed * Math.Sin(speedAngle);
            Line.RestM[0] = distance;
            return this;
        }

        public void Run(double h, double until)
        {
            int steps = (int)Math.Round(until / h);
            for (int i = 0; i < steps; i++)
            {
                _cast.Step(h);
            }
        }

        /// <summary>Flies until the lure is below the water; returns (x, time, apex).</summary>
        public (double X, double Time, double Apex) Splash(double h)
        {
            double x = Line.X[0], z = Line.Z[0], apex = 0.0;
            do
            {
                (x, z) = (Line.X[0], Line.Z[0]);
                apex = Math.Max(apex, z);
                _cast.Step(h);
            }
            while (Line.Z[0] > 0.0);
            double share = z / (z - Line.Z[0]);
            return (x + (share * (Line.X[0] - x)), _cast.TimeS - ((1.0 - share) * h), apex);
        }
    }
}
