using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Sayings;

/// <summary>What would count as true.</summary>
public enum ClaimKind
{
    /// <summary>The second side has more.</summary>
    Higher,

    /// <summary>The second side has less.</summary>
    Lower,

    /// <summary>It grows along the list.</summary>
    Rises,

    /// <summary>It shrinks along the list.</summary>
    Falls,

    /// <summary>All sides have the same, as far as anybody would notice.</summary>
    NoDifference,

    /// <summary>Every side has at least so much.</summary>
    AtLeast,

    /// <summary>Every side has at most so much.</summary>
    AtMost,
}

/// <summary>The declared claim of a test; docs/sayings.md defines every kind.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Text">As written.</param>
/// <param name="Limit">Limit of <see cref="ClaimKind.AtLeast"/> and <see cref="ClaimKind.AtMost"/>, in the figure's own unit; else NaN.</param>
/// <param name="NoticeShare">Least difference that is noticed, as a share of the first side's value; NaN where it is given as a value.</param>
/// <param name="NoticeValue">The same as a value in the figure's own unit; NaN where it is a share.</param>
/// <param name="IsNoticeGiven">False where the default stands.</param>
public sealed record Claim(ClaimKind Kind, SaidText Text, double Limit, double NoticeShare, double NoticeValue, bool IsNoticeGiven)
{
    /// <summary>Least share that is taken to be noticed where a file says nothing: the upper end of what eyes tell apart of a length (docs/compare.md).</summary>
    public const double UsualNotice = 0.10;

    /// <summary>Words of a claim with two sides, or one in a list.</summary>
    internal static readonly (string Words, ClaimKind Kind)[] Plain =
    [
        ("more is higher", ClaimKind.Higher), ("more is lower", ClaimKind.Lower), ("rises", ClaimKind.Rises), ("falls", ClaimKind.Falls), ("no difference", ClaimKind.NoDifference),
    ];

    /// <summary>Beginnings of a claim with a limit.</summary>
    internal static readonly (string Words, ClaimKind Kind)[] Limits = [("at least ", ClaimKind.AtLeast), ("at most ", ClaimKind.AtMost)];

    /// <summary>Whether the claim sets a limit instead of comparing.</summary>
    public bool IsLimit => Kind is ClaimKind.AtLeast or ClaimKind.AtMost;

    /// <summary>Least difference that is noticed beside a value, in the figure's own unit.</summary>
    /// <param name="first">Value of the first side.</param>
    public double Notice(double first) => double.IsNaN(NoticeShare) ? NoticeValue : NoticeShare * Math.Abs(first);
}

/// <summary>How a figure's number is written in a claim: its key says its unit.</summary>
internal static class FigureKind
{
    private const double RadPerDeg = Math.PI / 180.0;

    // The longest ending that fits counts; figures in other units take plain numbers in that unit.
    private static readonly (string End, QuantityKind Kind, double Si)[] Ends =
    [
        ("_per_s", QuantityKind.Frequency, 1.0), ("_Hz", QuantityKind.Frequency, 1.0), ("_m_s", QuantityKind.Speed, 1.0), ("_rad_s", QuantityKind.AngularSpeed, 1.0), ("_m", QuantityKind.Length, 1.0),
        ("_N", QuantityKind.Force, 1.0), ("_Nm", QuantityKind.Torque, 1.0), ("_kg", QuantityKind.Mass, 1.0), ("_deg", QuantityKind.Angle, RadPerDeg), ("_s", QuantityKind.Time, 1.0),
    ];

    private static readonly string[] Units = ["_per_m", "_m3", "_m4", "_Ns", "_J", "_W", "_rpm", "_m_N", "_N_m", "_Pa", "_kg_m3", "_kg_m2"];

    /// <summary>Kind of the quantity and one of the figure's unit in SI.</summary>
    /// <param name="figure">Key of the figure.</param>
    public static (QuantityKind Kind, double Si) Of(string figure)
    {
        int other = Units.Where(u => figure.EndsWith(u, StringComparison.Ordinal)).Select(u => u.Length).DefaultIfEmpty(0).Max();
        return Ends.Where(e => figure.EndsWith(e.End, StringComparison.Ordinal) && e.End.Length > other).OrderByDescending(e => e.End.Length)
            .Select(e => (e.Kind, e.Si)).DefaultIfEmpty((QuantityKind.Ratio, 1.0)).First();
    }

    /// <summary>Whether a figure counts a share, of which a difference is told in points.</summary>
    /// <param name="figure">Key of the figure.</param>
    public static bool IsShare(string figure) => figure.EndsWith("_share", StringComparison.Ordinal);
}
