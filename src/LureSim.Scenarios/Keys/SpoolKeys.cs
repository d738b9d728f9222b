using LureSim.Model;
using LureSim.Model.Reels;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys of table <c>[reel]</c> of a spool that turns, in a cast or under a drag that slips, and of its brakes, which only a cast reads.</summary>
public static class SpoolKeys
{
    private const Activities Turning = Activities.Cast | Activities.Retrieve | Activities.Strike | Activities.Crawl;

    /// <summary>Inertia of the spool.</summary>
    public static readonly KeySpec SpoolInertia = new("reel.spool_inertia", QuantityKind.Inertia, "g cm2", "Bare revolving spool, its line not counted.")
    {
        Words = "inertia of the bare spool",
        Default = "8e-7 kg m2",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.InertiaKgM2)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.InertiaKgM2, Turning),
    };

    /// <summary>Line on the spool.</summary>
    public static readonly KeySpec LineOnSpool = new("reel.line_on_spool", QuantityKind.Length, "m", "Line on a revolving spool at the start of a cast; without it 75 m, or what fits.")
    {
        Words = "line on the spool",
        HasNoDefault = true,
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.LineM)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.LineM, Turning),
    };

    /// <summary>Width of the wound line.</summary>
    public static readonly KeySpec SpoolWidth = new("reel.spool_width", QuantityKind.Length, "mm", "Width of the wound line on a revolving spool.")
    {
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.WidthM)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.WidthM, Turning),
    };

    /// <summary>Packing.</summary>
    public static readonly KeySpec SpoolPacking = new("reel.spool_packing", QuantityKind.Ratio, "", "Share of line in the wound volume.")
    {
        Words = "packing of the line on the spool",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.Packing)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.Packing, Turning),
    };

    /// <summary>Law of the brake.</summary>
    public static readonly KeySpec Brake = new("reel.brake", QuantityKind.Choice, "", "How the torque of the spool's brake grows with speed: in proportion, with its square, with its cube up to a knee, or not at all.")
    {
        Default = "quadratic",
        Choices =
        [
            new("linear", (int)BrakeLaw.Linear), new("quadratic", (int)BrakeLaw.Quadratic), new("cubic", (int)BrakeLaw.Cubic), new("constant", (int)BrakeLaw.Constant),
        ],
        Lens = Lens.OfSetup(s => (int)s.Reel.Spool.Brake, Activities.Cast),
    };

    /// <summary>Strength of the brake.</summary>
    public static readonly KeySpec BrakeStrength = new(
        "reel.brake_strength", QuantityKind.Ratio, "",
        "Brake torque at the launch over the one with which spool and lure slow together; without it 1, a brake set for the lure, or 0 beside a brake given in numbers.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.BrakeStrength)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.BrakeStrength, Activities.Cast),
    };

    /// <summary>Magnetic brake.</summary>
    public static readonly KeySpec MagneticBrake = new(
        "reel.magnetic_brake", QuantityKind.TorquePerSpeed, "uN m s", "Torque over spool speed of a linear brake that is known in numbers; of interest 0 to 2 uN m s.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.MagneticNms)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.MagneticNms, Activities.Cast),
    };

    /// <summary>Centrifugal brake.</summary>
    public static readonly KeySpec CentrifugalBrake = new(
        "reel.centrifugal_brake", QuantityKind.TorquePerSpeedSquared, "nN m s2", "Torque over the square of the spool speed of a quadratic brake that is known in numbers.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.CentrifugalNms2)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.CentrifugalNms2, Activities.Cast),
    };

    /// <summary>Spool friction.</summary>
    public static readonly KeySpec SpoolFriction = new(
        "reel.spool_friction", QuantityKind.Torque, "mN m", "Friction of bearings, cap and line on a revolving spool.")
    {
        Words = "friction of the spool bearings",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.FrictionNm)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.FrictionNm, Activities.Cast),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        SpoolInertia, LineOnSpool, SpoolWidth, SpoolPacking, Brake, BrakeStrength, MagneticBrake, CentrifugalBrake, SpoolFriction,
    ];
}
