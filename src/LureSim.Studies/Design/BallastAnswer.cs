using LureSim.Model.Lures;

namespace LureSim.Studies.Design;

/// <summary>Why a wish cannot be had.</summary>
public enum DeadEndKind
{
    /// <summary>The weight would have to lie out of the body: <see cref="DeadEnd.XM"/> against <see cref="DeadEnd.LimitM"/>.</summary>
    OutOfBody,

    /// <summary>The mass sets the freeboard: <see cref="DeadEnd.XM"/> is what it comes to, <see cref="DeadEnd.LimitM"/> what was wanted, <see cref="DeadEnd.MassKg"/> the mass with hooks that would have it.</summary>
    FreeboardSetByMass,

    /// <summary>Body and hooks are too heavy already by <see cref="DeadEnd.MassKg"/>.</summary>
    TooHeavy,

    /// <summary>With such a freeboard or mass it would sink: <see cref="DeadEnd.MassKg"/> against what the hull can displace, kg in <see cref="DeadEnd.LimitM"/>.</summary>
    Sinks,

    /// <summary>It would balance there but lies over; GM is <see cref="DeadEnd.XM"/>.</summary>
    LiesOver,

    /// <summary>It would balance there but floats more calmly at another angle: <see cref="DeadEnd.XM"/>, rad.</summary>
    OtherAngle,

    /// <summary>No ball of that mass has room in the hull: <see cref="DeadEnd.MassKg"/>.</summary>
    NoRoom,
}

/// <summary>One dead end.</summary>
/// <param name="Kind">Which; it says what the numbers are.</param>
/// <param name="MassKg">Mass, kg: of the weight unless the kind says otherwise.</param>
/// <param name="XM">What would be needed or was found.</param>
/// <param name="LimitM">What there is or was wanted.</param>
public sealed record DeadEnd(DeadEndKind Kind, double MassKg, double XM = double.NaN, double LimitM = double.NaN);

/// <summary>One way to have the wish.</summary>
/// <param name="Weight">Weight: mass and place.</param>
/// <param name="BodyKg">Mass of the body without this weight and without hooks, kg.</param>
/// <param name="Point">The lure with it, floated again.</param>
/// <param name="SpareM">Room between a ball of lead and the outline, m; negative: so much of it sticks out.</param>
public sealed record BallastPlace(BallastSpec Weight, double BodyKg, DesignPoint Point, double SpareM);

/// <summary>Where to put how much weight.</summary>
/// <param name="Wish">What was wanted.</param>
/// <param name="Before">The lure as it is.</param>
/// <param name="Own">Its weight as it is; no mass where it has none.</param>
/// <param name="Places">Every way found, lightest weight first.</param>
/// <param name="Chosen">The way taken: of those whose ball has room (or sticks out no more than now) the one that changes the mass least, else the one that sticks out least; null where there is none.</param>
/// <param name="LeastKg">Least mass of the weight with which the angle can be had, kg; null where none can, or only one mass was asked for.</param>
/// <param name="DeadEnds">What stands in the way of the wish, or of its ways that were tried and are none.</param>
public sealed record BallastAnswer(
    DesignWish Wish, DesignPoint Before, BallastSpec Own, IReadOnlyList<BallastPlace> Places, BallastPlace? Chosen, double? LeastKg, IReadOnlyList<DeadEnd> DeadEnds)
{
    /// <summary>True when the chosen way has all that was wanted.</summary>
    public bool IsMet => Chosen is not null && DeadEnds.All(d => d.Kind != DeadEndKind.FreeboardSetByMass);
}
