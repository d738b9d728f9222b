using LureSim.Numerics;

namespace LureSim.Model.Hands;

/// <summary>
/// The wrist turns the straight rod about the hand, in the plane of the rod and of the pull away from the lure. The resting
/// tip is over the origin; the stroke is the arc that the rigid tip travels.
/// </summary>
internal sealed class WristSwing : ITipDrive
{
    private readonly Twitch _twitch;
    private readonly double _stroke;
    private readonly double _length;
    private readonly Vec3 _along;
    private readonly Vec3 _pull;
    private readonly Vec3 _side;

    /// <summary>Prepares the swing.</summary>
    /// <param name="angler">Hand height, rod bearing and elevation.</param>
    /// <param name="freeLengthM">Length from hand to tip, m.</param>
    /// <param name="strokeM">B, rigid tip travel, m.</param>
    /// <param name="twitch">Stroke over time.</param>
    public WristSwing(AnglerSpec angler, double freeLengthM, double strokeM, Twitch twitch)
    {
        ArgumentNullException.ThrowIfNull(angler);
        ArgumentNullException.ThrowIfNull(twitch);
        _twitch = twitch;
        (_stroke, _length) = (strokeM, freeLengthM);
        double flat = Math.Cos(angler.RodElevationRad);
        _along = new Vec3(
            flat * Math.Cos(angler.RodBearingRad), flat * Math.Sin(angler.RodBearingRad), Math.Sin(angler.RodElevationRad));
        var away = new Vec3(-1.0, 0.0, 0.0);
        Vec3 across = away - (Vec3.Dot(away, _along) * _along);

        // A rod pointed straight at the lure has no pull direction of its own; the wrist then lifts it.
        _pull = across.Length > 1e-6 ? across.Unit() : new Vec3(0.0, 0.0, 1.0);
        _side = Vec3.Cross(_along, _pull);
        TipHeightM = angler.HandHeightM + (freeLengthM * _along.Z);
        Hand = new Vec3(0.0, 0.0, TipHeightM) - (freeLengthM * _along);
    }

    /// <summary>Height of the resting tip, m.</summary>
    public double TipHeightM { get; }

    /// <summary>The hand, m.</summary>
    public Vec3 Hand { get; }

    /// <summary>Direction of the straight rod at rest.</summary>
    public Vec3 Along => _along;

    /// <summary>Direction of the pull at rest, square to the rod.</summary>
    public Vec3 Pull => _pull;

    /// <summary>Share of the stroke that draws straight away from the lure: cosine between pull and line, 0 to 1.</summary>
    public double PullShare => -_pull.X;

    /// <summary>Rod angle from rest and its rate, rad and rad/s.</summary>
    /// <param name="timeS">t, s.</param>
    public (double Angle, double Rate) Angle(double timeS)
    {
        (double s, double rate) = _twitch.At(timeS);
        return (_stroke * s / _length, _stroke * rate / _length);
    }

    /// <inheritdoc/>
    public TipFrame At(double timeS)
    {
        (double angle, double rate) = Angle(timeS);
        (double s, double c) = Math.SinCos(angle);
        Vec3 rod = (c * _along) + (s * _pull);
        Vec3 normal = (c * _pull) - (s * _along);
        return new TipFrame(Hand + (_length * rod), (_length * rate) * normal, normal, -rate * rod, _side, _length * rate);
    }
}
