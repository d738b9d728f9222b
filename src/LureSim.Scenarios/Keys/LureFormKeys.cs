using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys of table <c>[lure]</c> that change a named shape, and the drawing that stands for one.</summary>
public static class LureFormKeys
{
    /// <summary>Bluntness of the nose.</summary>
    public static readonly KeySpec NoseBluntness = new(
        "lure.nose_bluntness", QuantityKind.Ratio, "", "How blunt the nose is: 2 an ellipse, less is finer, more is blunter; without it, the shape's own.")
    {
        Parameter = Parameter.Of<LureFormSpec>(nameof(LureFormSpec.NoseBluntness)),
        Lens = Lens.OfSetup(s => Of(s.Lure, f => f.NoseBluntness)),
    };

    /// <summary>Bluntness of the tail.</summary>
    public static readonly KeySpec TailBluntness = new(
        "lure.tail_bluntness", QuantityKind.Ratio, "", "How blunt the tail is; without it, the shape's own.")
    {
        Parameter = Parameter.Of<LureFormSpec>(nameof(LureFormSpec.TailBluntness)),
        Lens = Lens.OfSetup(s => Of(s.Lure, f => f.TailBluntness)),
    };

    /// <summary>Thickest place.</summary>
    public static readonly KeySpec Thickest = new(
        "lure.thickest", QuantityKind.Ratio, "", "Where the body is thickest, as a share of its length behind the nose; without it, the shape's own.")
    {
        Parameter = Parameter.Of<LureFormSpec>(nameof(LureFormSpec.ThickestPlace)),
        Lens = Lens.OfSetup(s => Of(s.Lure, f => f.ThickestPlace)),
    };

    /// <summary>Flat belly.</summary>
    public static readonly KeySpec BellyFlat = new(
        "lure.belly_flat", QuantityKind.Ratio, "", "How straight the belly line is: 0 back and belly alike, 1 a straight belly; without it, the shape's own.")
    {
        Parameter = Parameter.Of<LureFormSpec>(nameof(LureFormSpec.BellyFlatness)),
        Lens = Lens.OfSetup(s => Of(s.Lure, f => f.BellyFlatness)),
    };

    /// <summary>Outline.</summary>
    public static readonly KeySpec Outline = new(
        "lure.outline", QuantityKind.Text, "", "Drawing (SVG) of the body, for shape \"outline\": a shape with id \"side\", nose to the right, and \"top\" if it is not round.")
    {
        IsDrawing = true,
        Group = LureKeys.SectionGroup,
    };

    /// <summary>Rows that change a named shape.</summary>
    public static readonly KeySpec[] OfShape = [NoseBluntness, TailBluntness, Thickest, BellyFlat];

    private static double Of(LureSpec lure, Func<LureFormSpec, double?> member) => lure.Shape == LureShape.Stations
        ? double.NaN
        : member(lure.Form) ?? member(HullShape.Usual(lure.Shape)) ?? double.NaN;
}
