using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Starting;

/// <summary>A hook, or a skirt, of a lure that is being written.</summary>
/// <param name="Type">Word for its points; empty for a skirt.</param>
/// <param name="Points">Points.</param>
/// <param name="Size">Size; empty for a skirt.</param>
/// <param name="XM">From the middle toward the nose, m.</param>
/// <param name="ZM">Above the axis, m.</param>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="DragAreaM2">Drag area of a skirt, m2.</param>
/// <param name="DensityText">Density of a skirt, as the part has it.</param>
internal sealed record HookDraft(string Type, double Points, string Size, double XM, double ZM, double MassKg, double DragAreaM2, string DensityText)
{
    /// <summary>True for a hook of a listed size.</summary>
    public bool IsHook => Size.Length > 0;
}

/// <summary>A lure that is being written: a part, scaled.</summary>
/// <param name="Part">Part.</param>
/// <param name="Scale">Its lengths over those of the part.</param>
/// <param name="Shape">Shape.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="DiameterM">Breadth, m.</param>
/// <param name="HeightM">Height, m; NaN for a round body.</param>
/// <param name="MassKg">Mass with hooks, kg.</param>
/// <param name="TieXM">Line tie, m.</param>
/// <param name="TieZM">Line tie, m.</param>
/// <param name="Ballast">The weight in the body.</param>
/// <param name="Hooks">Hooks and skirts.</param>
internal sealed record LureDraft(
    Part Part, double Scale, string Shape, double LengthM, double DiameterM, double HeightM, double MassKg, double TieXM, double TieZM, BallastSpec Ballast,
    IReadOnlyList<HookDraft> Hooks)
{
    /// <summary>The part as it is.</summary>
    public static LureDraft Of(Part part)
    {
        ScenarioValues v = PartLibrary.Values(part);
        ScenarioValues ballast = v.Items(LureKeys.Ballast).Single().Values;
        return new(
            part, 1.0, v.Text(LureKeys.Shape), v.Number(LureKeys.Length), v.Number(LureKeys.Diameter), v.Has(LureKeys.Height) ? v.Number(LureKeys.Height) : double.NaN,
            v.Number(LureKeys.MassWithHooks), v.Number(LureKeys.TieX), v.Number(LureKeys.TieZ),
            new(ballast.Number(LureItemKeys.BallastMass), ballast.Number(LureItemKeys.BallastX), ballast.Number(LureItemKeys.BallastZ)),
            [.. v.Items(LureKeys.Hooks).Select(h => Hook(h.Values))]);
    }

    /// <summary>
    /// The same lure of another size: a body of the same proportions, its weights in their places. Where only the mass is known, lengths go with
    /// its cube root; where only the length is, the mass goes with its cube; where both are, each is as it was said.
    /// </summary>
    /// <param name="massKg">Mass with hooks, or null.</param>
    /// <param name="lengthM">Length, or null.</param>
    public LureDraft Sized(double? massKg, double? lengthM)
    {
        double s = lengthM is double length ? length / LengthM : massKg is double known ? Math.Cbrt(known / MassKg) : 1.0;
        double mass = massKg ?? (MassKg * s * s * s), heavier = mass / MassKg;
        return this with
        {
            Scale = s,
            LengthM = s * LengthM,
            DiameterM = s * DiameterM,
            HeightM = s * HeightM,
            MassKg = mass,
            TieXM = s * TieXM,
            TieZM = s * TieZM,
            Ballast = new(heavier * Ballast.MassKg, s * Ballast.XM, s * Ballast.ZM),
            Hooks = [.. Hooks.Select(h => h with
            {
                XM = s * h.XM,
                ZM = s * h.ZM,
                Size = h.IsHook ? UsualHooks.Size(h.Points, mass) : "",
                MassKg = h.IsHook ? h.MassKg : heavier * h.MassKg,
                DragAreaM2 = s * s * h.DragAreaM2,
            })],
        };
    }

    /// <summary>The same with hooks that were said.</summary>
    /// <param name="size">Size, or null.</param>
    /// <param name="type">Word for the points, or null.</param>
    public LureDraft WithHooks(string? size, string? type) => this with
    {
        Hooks = [.. Hooks.Select(h => h.IsHook ? h with { Size = size ?? h.Size, Type = type ?? h.Type } : h)],
    };

    private static HookDraft Hook(ScenarioValues v) => new(
        v.Has(LureItemKeys.HookSize) ? v.Text(LureItemKeys.HookType) : "", v.Number(LureItemKeys.HookType), v.Has(LureItemKeys.HookSize) ? v.Text(LureItemKeys.HookSize) : "",
        v.Number(LureItemKeys.HookX), v.Number(LureItemKeys.HookZ), v.Number(LureItemKeys.HookMass), v.Number(LureItemKeys.HookDragArea), v.Text(LureItemKeys.HookDensity));
}
