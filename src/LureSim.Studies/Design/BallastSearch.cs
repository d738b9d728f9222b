using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;

namespace LureSim.Studies.Design;

/// <summary>Where a weight of a given mass balances a lure at a trim.</summary>
internal sealed class BallastSearch(BallastSlot slot, WaterState water, double trimRad, List<DeadEnd> dead, CancellationToken stop)
{
    private const int Steps = 12;

    /// <summary>Whether the arm changes its sign along the body.</summary>
    public bool CanBalance(double massKg) => BallastRoom.Along(slot, massKg) is (double tail, double nose) && Arm(massKg, tail) * Arm(massKg, nose) <= 0.0;

    /// <summary>Every place of such a weight.</summary>
    /// <param name="massKg">Mass, kg.</param>
    /// <param name="tells">Whether a dead end is told.</param>
    public IReadOnlyList<BallastPlace> At(double massKg, bool tells)
    {
        if (BallastRoom.Along(slot, massKg) is not (double tail, double nose))
        {
            Tell(new(DeadEndKind.NoRoom, massKg), tells);
            return [];
        }

        var places = new List<BallastPlace>();
        double left = tail, leftArm = Arm(massKg, left);
        int roots = 0;
        for (int i = 1; i <= Steps; i++)
        {
            double right = tail + ((nose - tail) * i / Steps), rightArm = Arm(massKg, right);
            if (leftArm * rightArm <= 0.0 && leftArm != rightArm && BallastSolver.Root(x => Arm(massKg, x), left, right) is double root)
            {
                roots++;
                Add(places, massKg, root, tells);
            }

            (left, leftArm) = (right, rightArm);
        }

        if (roots == 0)
        {
            Tell(Outside(massKg, tail, nose), tells);
        }

        return places;
    }

    private double Arm(double massKg, double x)
    {
        stop.ThrowIfCancellationRequested();
        return HeldTrim.Of(slot.With(massKg, x), water, trimRad).ArmM;
    }

    private void Add(List<BallastPlace> places, double massKg, double x, bool tells)
    {
        LureSpec lure = slot.With(massKg, x);
        var point = DesignPoint.Of(lure, water);
        if (point.Trim is not TrimPoint trim)
        {
            return;
        }

        BallastSpec weight = slot.At(massKg, x);
        if (point.Word == FloatWord.LiesOver)
        {
            Tell(new(DeadEndKind.LiesOver, massKg, HeldTrim.Of(lure, water, trimRad).GmTransverseM), tells);
        }
        else if (Math.Abs(trim.Rest.TrimRad - trimRad) > BallastSolver.NearRad)
        {
            Tell(new(DeadEndKind.OtherAngle, massKg, trim.Rest.TrimRad), tells);
        }
        else
        {
            places.Add(new(weight, lure.MassKg - massKg, point, BallastRoom.SpareM(HullShape.Create(lure).SectionAt(x), weight)));
        }
    }

    // The arm is a straight line over the place where the height is kept, and nearly so on the belly.
    private DeadEnd Outside(double massKg, double tail, double nose)
    {
        double a = Arm(massKg, tail), b = Arm(massKg, nose), needed = tail - (a * (nose - tail) / (b - a));
        return new(DeadEndKind.OutOfBody, massKg, needed, needed < tail ? tail : nose);
    }

    private void Tell(DeadEnd end, bool tells)
    {
        if (tells && dead.All(d => d.Kind != end.Kind))
        {
            dead.Add(end);
        }
    }
}
