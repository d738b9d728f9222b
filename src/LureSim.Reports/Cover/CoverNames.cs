using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cover;

namespace LureSim.Reports.Cover;

/// <summary>What things of a cover are called, by people and in files.</summary>
internal static class CoverNames
{
    /// <summary>A cover.</summary>
    /// <param name="kind">Cover.</param>
    public static string Of(CoverKind kind) => kind switch
    {
        CoverKind.Open => "open edge",
        CoverKind.Sparse => "sparse plants",
        _ => "thick mat",
    };

    /// <summary>A verdict.</summary>
    /// <param name="verdict">Verdict.</param>
    public static string Of(CoverVerdict verdict) => verdict switch
    {
        CoverVerdict.Works => "works",
        CoverVerdict.WorksWhen => "works when",
        _ => "does not work",
    };

    /// <summary>A change, as something to do.</summary>
    /// <param name="change">Change.</param>
    /// <param name="shown">Units.</param>
    public static string Of(CoverChange change, Shown shown) => change.Kind switch
    {
        ChangeKind.Drag => $"set the drag to {shown.Pull(change.Si)}",
        ChangeKind.Shut => $"shut the drag ({shown.Pull(change.Si)})",
        ChangeKind.Ease => $"ease the drag to {shown.Pull(change.Si)} at the boat",
        ChangeKind.Style => change.Style switch
        {
            StrikeStyle.Snap => "strike with a snap of the wrists",
            StrikeStyle.Haul => "strike with arms and back",
            _ => "strike with a sweep to the side on a tight line",
        },
        ChangeKind.Nearer => $"strike from half as far, {shown.Distance(change.Si)}",
        ChangeKind.Line => $"take {shown.Pull(change.Si)} {Of(change.Material)}",
        ChangeKind.Braid => $"take braid of the same label, {shown.Pull(change.Si)}",
        ChangeKind.Rod => "take a rod of the next heavier power",
        ChangeKind.Wire => "take the same hook in wire a tenth thicker",
        _ => "take a weedless lure: a double of the same wire against the body",
    };

    private static string Of(LineMaterial material) => material switch
    {
        LineMaterial.Braid => "braid",
        LineMaterial.Nylon => "nylon",
        _ => "fluorocarbon",
    };

    /// <summary>A cover as files name it.</summary>
    /// <param name="kind">Cover.</param>
    public static string Key(CoverKind kind) => kind switch
    {
        CoverKind.Open => "open",
        CoverKind.Sparse => "sparse",
        _ => "mat",
    };

    /// <summary>A verdict as files name it.</summary>
    /// <param name="verdict">Verdict.</param>
    public static string Key(CoverVerdict verdict) => Of(verdict).Replace(' ', '-');

    /// <summary>A state as files name it.</summary>
    /// <param name="state">State.</param>
    public static string Key(CoverState state) => state switch
    {
        CoverState.Passes => "passes",
        CoverState.May => "may",
        _ => "fails",
    };

    /// <summary>A criterion as files name it.</summary>
    /// <param name="criterion">Criterion.</param>
    public static string Key(CoverCriterion criterion) => criterion switch
    {
        CoverCriterion.Lure => "lure",
        CoverCriterion.Sets => "sets",
        CoverCriterion.Holds => "holds",
        CoverCriterion.Boat => "boat",
        CoverCriterion.Drawn => "drawn",
        _ => "tight",
    };

    /// <summary>A change as files name it.</summary>
    /// <param name="kind">Kind of change.</param>
    public static string Key(ChangeKind kind) => kind switch
    {
        ChangeKind.Drag => "drag",
        ChangeKind.Shut => "drag-shut",
        ChangeKind.Ease => "ease-at-boat",
        ChangeKind.Style => "style",
        ChangeKind.Nearer => "nearer",
        ChangeKind.Line => "line",
        ChangeKind.Braid => "braid",
        ChangeKind.Rod => "rod",
        ChangeKind.Wire => "wire",
        _ => "double",
    };

    /// <summary>Place as files name it.</summary>
    /// <param name="place">Place.</param>
    public static string Key(WeakPlace place) => StrikeFigures.Name(place);
}
