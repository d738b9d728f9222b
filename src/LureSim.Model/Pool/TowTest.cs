using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Model.Pool;

/// <summary>
/// The lure on a line without mass whose other end moves straight at a fixed speed and height. It starts from rest with the line straight and the
/// heading a little off it; the hand takes a second to reach its speed.
/// </summary>
internal sealed class TowTest
{
    // Below these an eye from above calls it straight, or steady.
    private const double StraightDeg = 3.0, SteadyDeg = 8.0, SettledDeg = 1.0;

    // A tow whose angle keeps within RestDeg over RestLooks looks, RestS apart, has come to rest.
    private const double RestS = 0.25, RestDeg = 0.005;
    private const int RestLooks = 6;

    private const double Degree = Math.PI / 180.0, RampS = 1.0, WholeShare = 0.998;

    // Roll of an axis steeper than 60 deg means little; rolled over is more than 100 deg from rest.
    private const double LeastTilt = 0.5, OverCosine = -0.17;

    private readonly FreeHull _hull;
    private readonly PoolTask _task;
    private readonly double _speed, _dt, _restNose;
    private readonly FreeSwim _swim;
    private readonly Vec3 _restUp;
    private bool _under, _over;
    private double[]? _seen;
    private int _looks;
    private double _lowest = double.MaxValue, _highest = double.MinValue;

    private TowTest(FreeHull hull, PoolTask task, double speed, CancellationToken stop)
    {
        (_hull, _task, _speed, _dt) = (hull, task, speed, 2.0 * task.StepS);
        FreeMotionState start = hull.AtRest(0.0, 0.0, task.TowHeadingRad);
        (_restNose, _restUp) = (start.Place(hull.Nose).Z, start.Frame.Up);
        _swim = new FreeSwim(hull, start, task.TowHeadingRad, _dt, stop);
    }

    /// <summary>Tows at one speed.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Line and way.</param>
    /// <param name="speed">Speed of the hand, m/s.</param>
    /// <param name="stop">Stops it.</param>
    /// <param name="endsAtRest">True: it ends where the angle has come to rest, and its end is what was seen then.</param>
    public static TowRow Run(FreeHull hull, PoolTask task, double speed, CancellationToken stop, bool endsAtRest = false) => new TowTest(hull, task, speed, stop).Run(endsAtRest);

    private TowRow Run(bool endsAtRest)
    {
        double tie = _swim.Pose.Tie.Z, height = Math.Max(_task.HandHeightM, tie);

        // A nose that lies deeper than the line allows starts right under the hand, with the line a little stretched.
        double ahead = Math.Sqrt(Math.Max(0.0, (_task.TowLineM * _task.TowLineM) - ((height - tie) * (height - tie))));
        double ramp = Math.Min(RampS, _task.TowDistanceM / _speed), seconds = (_task.TowDistanceM / _speed) + (0.5 * ramp);
        int steps = (int)Math.Ceiling(seconds / _dt), from = steps - (int)(PoolTask.CountedShare * _task.TowDistanceM / _speed / _dt);
        int middle = (from + steps) / 2, rest = Math.Max(1, (int)(RestS / _dt));
        var sums = new Sums[2];
        for (int i = 1; i <= steps; i++)
        {
            double t = i * _dt, ramped = Math.Min(t, ramp);
            double way = _speed * ((0.5 * ramped * ramped / ramp) + Math.Max(0.0, t - ramp));
            var hand = new Vec3(ahead + way, 0.0, height);
            double pull = _swim.Step(_task.TowLine, hand, new Vec3(_speed * ramped / ramp, 0.0, 0.0));
            NoteFate();
            if (endsAtRest && i <= from && t > ramp && i % rest == 0 && IsAtRest(Sheer(hand)))
            {
                sums[0].Add(Sheer(hand), _swim.Pose, pull);
                sums[1] = sums[0];
                Extremes(Sheer(hand));
                break;
            }

            if (i > from)
            {
                sums[i > middle ? 1 : 0].Add(Sheer(hand), _swim.Pose, pull);
                Extremes(Sheer(hand));
            }
        }

        return Row(sums[0], sums[1]);
    }

    // Six looks in a row that differ by less than a two-hundredth of a degree in angle, pitch and roll: a swing, however slow, does not look so.
    private bool IsAtRest(double sheer)
    {
        double[] now = [sheer, _swim.Pose.PitchRad, _swim.Pose.RollRad];
        bool same = _seen is not null && now.Zip(_seen, (a, b) => Math.Abs(a - b)).Max() < RestDeg * Degree;
        (_seen, _looks) = same ? (_seen, _looks + 1) : (now, 0);
        return _looks >= RestLooks;
    }

    // Axis against line seen from above, nose to the left positive, rad.
    private double Sheer(Vec3 hand)
    {
        Vec3 line = hand - _swim.Pose.Tie;
        return Math.IEEERemainder(_swim.Pose.HeadingRad - Math.Atan2(line.Y, line.X), 2.0 * Math.PI);
    }

    private void Extremes(double sheer) => (_lowest, _highest) = (Math.Min(_lowest, sheer), Math.Max(_highest, sheer));

    private void NoteFate()
    {
        Vec3 up = _swim.Up;
        double tilt = Tilt(up), rest = Tilt(_restUp);
        _under |= _swim.Pose.WetShare > WholeShare;
        _over |= Math.Min(tilt, rest) > LeastTilt && (up.Y * _restUp.Y) + (up.Z * _restUp.Z) < OverCosine * tilt * rest;
    }

    private static double Tilt(Vec3 up) => Math.Sqrt((up.Y * up.Y) + (up.Z * up.Z));

    private TowRow Row(Sums early, Sums late)
    {
        Sums all = early + late;
        double sheer = all.Size / all.Count / Degree, side = all.Side / all.Count / Degree, swing = (_highest - _lowest) / Degree, nose = all.Nose / all.Count;
        TowCourse course = _over ? TowCourse.RollsOver
            : _under ? TowCourse.Dives
            : nose < 0.0 && _restNose > 0.0 ? TowCourse.NoseUnder
            : swing > SteadyDeg ? TowCourse.Fishtails
            : Math.Abs(side) > StraightDeg ? TowCourse.Sheers : TowCourse.Straight;
        bool settled = Math.Abs((late.Size / late.Count) - (early.Size / early.Count)) < SettledDeg * Degree;
        return new TowRow(
            _speed, course, sheer, side, swing, all.Offset / all.Count, all.Trim / all.Count / Degree, all.Roll / all.Count / Degree, nose, all.Pull / all.Count, settled);
    }

    private record struct Sums(int Count, double Size, double Side, double Offset, double Trim, double Roll, double Nose, double Pull)
    {
        public void Add(double sheer, in HullPose pose, double pull)
        {
            Count++;
            Size += Math.Abs(sheer);
            Side += sheer;
            Offset += pose.Tie.Y;
            Trim += pose.PitchRad;
            Roll += pose.RollRad;
            Nose += pose.Nose.Z;
            Pull += pull;
        }

        public static Sums operator +(Sums a, Sums b) => new(
            a.Count + b.Count, a.Size + b.Size, a.Side + b.Side, a.Offset + b.Offset, a.Trim + b.Trim, a.Roll + b.Roll, a.Nose + b.Nose, a.Pull + b.Pull);
    }
}
