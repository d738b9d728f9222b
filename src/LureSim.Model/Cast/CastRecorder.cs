using LureSim.Model.Assembly;
using LureSim.Model.Lines.Air;
using LureSim.Model.Rods;

namespace LureSim.Model.Cast;

/// <summary>Watches a cast: highest values at every step, series and poses at intervals.</summary>
internal sealed class CastRecorder(RodChain chain, double everyS)
{
    private const double PoseEveryS = 0.02;
    private const double PosesAfterReleaseS = 0.1;
    private const double FlightPoseEveryS = 0.1;
    private const double LaunchWindowS = 0.1;

    private readonly List<double>[] _columns = [.. Enumerable.Range(0, 13).Select(_ => new List<double>(1024))];
    private readonly List<CastPose> _poses = [], _flight = [];
    private double _next, _nextPose, _nextFlight;

    public double PeakBend { get; private set; }

    public double PeakBendJ { get; private set; }

    public double PeakTorque { get; private set; }

    public double PeakTension { get; private set; }

    public double PeakSpin { get; private set; }

    public double PeakLoops { get; private set; }

    public double Apex { get; private set; }

    public double LaunchSpeed { get; private set; }

    public double LaunchAngle { get; private set; }

    /// <summary>Looks at the cast after a step.</summary>
    /// <param name="cast">The cast.</param>
    /// <param name="releasedS">Time of release, s; NaN before it.</param>
    public void Look(AirStep cast, double releasedS)
    {
        AirLine line = cast.Line;
        double speed = Math.Sqrt((line.Vx[0] * line.Vx[0]) + (line.Vz[0] * line.Vz[0]));
        Apex = Math.Max(Apex, line.Z[0]);
        PeakTension = Math.Max(PeakTension, line.TipTensionN);
        if (double.IsNaN(releasedS))
        {
            PeakTorque = Math.Max(PeakTorque, Math.Abs(cast.Rod.HandTorqueNm));
        }
        else
        {
            PeakSpin = Math.Max(PeakSpin, cast.Reel.SpinRadS);
            PeakLoops = Math.Max(PeakLoops, cast.Reel.LooseM / cast.Reel.LoopM);
            if (speed > LaunchSpeed && cast.TimeS <= releasedS + LaunchWindowS)
            {
                (LaunchSpeed, LaunchAngle) = (speed, Math.Atan2(line.Vz[0], line.Vx[0]));
            }
        }

        if (!cast.RodAtRest)
        {
            Bend(cast.Rod);
        }

        Record(cast, speed, releasedS);
    }

    public CastSeries Series() => new(
        Column(0), Column(1), Column(2), Column(3), Column(4), Column(5), Column(6), Column(7), Column(8), Column(9), Column(10), Column(11),
        Column(12), [.. _poses], [.. _flight]);

    /// <summary>Keeps the last moment, whatever the intervals say.</summary>
    public void End(AirStep cast) => _flight.Add(Pose(cast));

    private ValueList<double> Column(int i) => ValueList.Own(_columns[i].ToArray());

    private void Bend(ChainRod rod)
    {
        (double x, double z, _, _) = rod.Tip();
        (double sin, double cos) = Math.SinCos(rod.Q[1]);
        double dx = x - rod.Q[0] - (chain.FreeLengthM * sin), dz = z - rod.HandHeightM - (chain.FreeLengthM * cos);
        PeakBend = Math.Max(PeakBend, Math.Sqrt((dx * dx) + (dz * dz)) / chain.FreeLengthM);
        PeakBendJ = Math.Max(PeakBendJ, rod.SpringJ());
    }

    private void Record(AirStep cast, double speed, double releasedS)
    {
        if (cast.TimeS >= _nextPose && !(cast.TimeS > releasedS + PosesAfterReleaseS))
        {
            _nextPose += PoseEveryS;
            _poses.Add(Pose(cast));
        }

        if (cast.TimeS >= Math.Max(releasedS, _nextFlight))
        {
            _nextFlight = cast.TimeS + FlightPoseEveryS;
            _flight.Add(Pose(cast));
        }

        if (cast.TimeS < _next)
        {
            return;
        }

        _next += everyS;
        AirLine line = cast.Line;
        (double x, double z, double vx, double vz) = cast.Tip();
        double dx = line.X[0] - x, dz = line.Z[0] - z, distance = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dz * dz)));
        double rate = (((line.Vx[0] - vx) * dx) + ((line.Vz[0] - vz) * dz)) / distance;
        double[] row =
        [
            cast.TimeS, cast.Rod.Q[1], cast.RodAtRest ? 0.0 : cast.Rod.HandTorqueNm, Math.Sqrt((vx * vx) + (vz * vz)), line.X[0], line.Z[0],
            speed, rate, cast.Reel.SpeedMS, line.TipTensionN, cast.Reel.LooseM, cast.Reel.LoopM, cast.Reel.SpinRadS,
        ];
        for (int i = 0; i < row.Length; i++)
        {
            _columns[i].Add(row[i]);
        }
    }

    private CastPose Pose(AirStep cast)
    {
        int links = chain.LengthM.Length, count = links + 1 + cast.Line.Count;
        double[] x = new double[count], z = new double[count];
        (double X, double Z)[] joints = cast.Rod.Joints();
        for (int i = 0; i <= links; i++)
        {
            (x[i], z[i]) = joints[i];
        }

        for (int p = 0; p < cast.Line.Count; p++)
        {
            (x[count - 1 - p], z[count - 1 - p]) = (cast.Line.X[p], cast.Line.Z[p]);
        }

        return new CastPose(cast.TimeS, ValueList.Own(x), ValueList.Own(z), links);
    }
}
