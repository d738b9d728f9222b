using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys of table <c>[reel]</c> that only a cast reads: a revolving spool and its brakes.</summary>
public static class SpoolKeys
{
    /// <summary>Inertia of the spool.</summary>
    public static readonly KeySpec SpoolInertia = new("reel.spool_inertia", QuantityKind.Inertia, "g cm2", "Bare revolving spool, its line not counted.")
    {
        Default = "8e-7 kg m2",
        Low = 1e-7,
        High = 1e-4,
        GuessLow = 4e-7,
        GuessHigh = 1.5e-6,
        FromCast = s => s.Cast.Spool.InertiaKgM2,
    };

    /// <summary>Line on the spool.</summary>
    public static readonly KeySpec LineOnSpool = new("reel.line_on_spool", QuantityKind.Length, "m", "Line on a revolving spool at the start of a cast; without it 75 m, or what fits.")
    {
        Low = 1,
        High = 1000,
        FromCast = s => s.Cast.Spool.LineM,
    };

    /// <summary>Width of the wound line.</summary>
    public static readonly KeySpec SpoolWidth = new("reel.spool_width", QuantityKind.Length, "mm", "Width of the wound line on a revolving spool.")
    {
        Default = "0.022 m",
        Low = 0.005,
        High = 0.06,
        FromCast = s => s.Cast.Spool.WidthM,
    };

    /// <summary>Packing.</summary>
    public static readonly KeySpec SpoolPacking = new("reel.spool_packing", QuantityKind.Ratio, "", "Share of line in the wound volume.")
    {
        Default = "0.75",
        Low = 0.4,
        High = 1,
        GuessLow = 0.6,
        GuessHigh = 0.9,
        FromCast = s => s.Cast.Spool.Packing,
    };

    /// <summary>Magnetic brake.</summary>
    public static readonly KeySpec MagneticBrake = new(
        "reel.magnetic_brake", QuantityKind.TorquePerSpeed, "uN m s", "Brake torque over spool speed; of interest 0 to 2 uN m s.")
    {
        Default = "5e-7 N m s",
        Low = 0,
        High = 1e-4,
        FromCast = s => s.Cast.Spool.MagneticNms,
    };

    /// <summary>Centrifugal brake.</summary>
    public static readonly KeySpec CentrifugalBrake = new(
        "reel.centrifugal_brake", QuantityKind.TorquePerSpeedSquared, "nN m s2", "Brake torque over the square of the spool speed.")
    {
        Default = "0 N m s2",
        Low = 0,
        High = 1e-6,
        FromCast = s => s.Cast.Spool.CentrifugalNms2,
    };

    /// <summary>Spool friction.</summary>
    public static readonly KeySpec SpoolFriction = new(
        "reel.spool_friction", QuantityKind.Torque, "mN m", "Friction of bearings, cap and line on a revolving spool.")
    {
        Default = "0.0004 N m",
        Low = 0,
        High = 0.05,
        GuessLow = 2e-4,
        GuessHigh = 1e-3,
        FromCast = s => s.Cast.Spool.FrictionNm,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        SpoolInertia, LineOnSpool, SpoolWidth, SpoolPacking, MagneticBrake, CentrifugalBrake, SpoolFriction,
    ];
}
