using LureSim.Model.Bend;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Bend;

/// <summary>Values and readings of a bend test in words.</summary>
internal static class BendWording
{
    private const double Degree = Math.PI / 180.0, TenSeconds = 10.0;

    /// <summary>A fitted number, what it is.</summary>
    public static string Name(BendValue value) => value switch
    {
        BendValue.BendLoad => "weight that drops the tip by a third",
        BendValue.TipRadiusRatio => "thickness of the tip over that at the hand",
        BendValue.StiffnessExponent => "how fast stiffness falls with thickness",
        BendValue.Mass => "mass of the rod",
        BendValue.FreeMassShare => "share of the mass beyond the hand",
        _ => "how fast mass falls with thickness",
    };

    /// <summary>A fitted number and its band.</summary>
    public static (string Value, string Band) Of(BendValue value, BendEstimate e, Shown shown) => value switch
    {
        BendValue.BendLoad => (Read(ShownQuantity.Pull, shown, e.Value), Read(ShownQuantity.Pull, shown, e.Low, e.High)),
        BendValue.Mass => (Read(ShownQuantity.Mass, shown, e.Value), Read(ShownQuantity.Mass, shown, e.Low, e.High)),
        BendValue.FreeMassShare => ($"{Trade.Fixed(100.0 * e.Value, 0)} %", $"{Trade.Fixed(100.0 * e.Low, 0)} to {Trade.Fixed(100.0 * e.High, 0)} %"),
        _ => (Trade.Digits(e.Value), $"{Trade.Digits(e.Low)} to {Trade.Digits(e.High)}"),
    };

    /// <summary>The band alone, of an open number with one more reading.</summary>
    public static string Band(OpenValue open, Shown shown) => Of(open.Value, new(open.Low, open.Low, open.High, open.Low, open.High, 0.0), shown).Band;

    /// <summary>A further reading, as an order.</summary>
    public static string Order(OpenValue open, Shown shown) => open.Reading switch
    {
        ReadingKind.Angle => $"the angle of the last inches of the tip with {shown.Pull(open.LoadN)} on it",
        ReadingKind.MiddleDrop => $"the drop of a mark half way along the free length with {shown.Pull(open.LoadN)} at the tip (column middle)",
        ReadingKind.Balance => "the point on which the rod balances, from the butt end",
        ReadingKind.Mass => "the mass of the rod on a kitchen scale",
        ReadingKind.Bounce when open.LoadN > 0.0 => $"a count of bounces in 10 s with {shown.Pull(open.LoadN)} taped to the tip",
        _ => "a count of bounces of the bare rod in 10 s, from a film in slow motion",
    };

    /// <summary>A reading, what it is.</summary>
    public static string Name(ReadingKind kind) => kind switch
    {
        ReadingKind.Drop => "drop",
        ReadingKind.Angle => "tip angle",
        ReadingKind.MiddleDrop => "middle drop",
        ReadingKind.Bounce => "bounces in 10 s",
        ReadingKind.Balance => "balance point",
        _ => "mass",
    };

    /// <summary>The value of a reading.</summary>
    public static string Show(ReadingKind kind, double si, Shown shown) => kind switch
    {
        ReadingKind.Angle => $"{Trade.Fixed(si / Degree, 0)} deg",
        ReadingKind.Bounce => Trade.Fixed(TenSeconds * si, 1),
        ReadingKind.Mass => Read(ShownQuantity.Mass, shown, si),
        _ => Read(ShownQuantity.Size, shown, si),
    };

    /// <summary>A weight at the tip, or that there is none; weights are mostly whole grams.</summary>
    public static string Load(double loadN, Shown shown) =>
        loadN == 0.0 ? "none" : Read(ShownQuantity.Pull, shown, loadN).Replace(".0 ", " ", StringComparison.Ordinal);

    /// <summary>Values as tape and scale show them: three digits, one more than a text of computed things deserves.</summary>
    public static string Read(ShownQuantity quantity, Shown shown, params double[] si)
    {
        ShownUnit[] units = shown.Units(quantity, si.Max(Math.Abs));
        string[] texts = [.. units.Select(u => $"{string.Join(" to ", si.Select(v => Trade.Fixed(u.Of(v), u.Places(si.Max()))))} {u.Name}")];
        return texts.Length == 1 ? texts[0] : $"{texts[0]} ({texts[1]})";
    }

    /// <summary>An angle, deg.</summary>
    public static string Degrees(double rad) => Trade.Fixed(rad / Degree, 0);

    /// <summary>Likeliest class, then the others that it may be.</summary>
    public static string Classes(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "beyond all classes",
        1 => names[0],
        _ => $"{names[0]}, perhaps {string.Join(" or ", names.Skip(1))}",
    };
}
