using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Studies.Cast;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Cover;

/// <summary>The changes that are tried in every cover, one at a time: a fixed list, cheapest first.</summary>
internal static class CoverChanges
{
    private const double WireRatio = 1.1, NearerShare = 0.5;

    // Labels that lines are sold with, lb (common practice, no source).
    private static readonly double[] LabelsLb = [4, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 65, 80, 100, 120, 150];

    /// <summary>All that make sense for a set-up.</summary>
    /// <param name="own">As it is.</param>
    /// <param name="labelN">Label of its line, N.</param>
    /// <param name="window">Its drag window.</param>
    /// <param name="easedN">Drag at the boat at which nothing gives, N.</param>
    public static IReadOnlyList<(CoverChange Change, CoverTry Try)> Of(CoverTry own, double labelN, DragWindow window, double easedN) =>
        [.. Drags(own, window, easedN), .. Ways(own), .. Lines(own, labelN), .. Rods(own), .. Hooks(own)];

    private static IEnumerable<(CoverChange, CoverTry)> Drags(CoverTry own, DragWindow window, double easedN)
    {
        double drag = own.Setup.Reel.DragN;
        if (window.Advice.DragN is double advised && advised != drag)
        {
            yield return (new(ChangeKind.Drag, advised), WithDrag(own, advised));
        }

        if (window.LockedN > drag && window.LockedN != window.Advice.DragN)
        {
            yield return (new(ChangeKind.Shut, window.LockedN), WithDrag(own, window.LockedN));
        }

        if (easedN < drag)
        {
            yield return (new(ChangeKind.Ease, easedN), own with { BoatDragN = easedN });
        }
    }

    private static IEnumerable<(CoverChange, CoverTry)> Ways(CoverTry own)
    {
        foreach (StrikeStyle style in Enum.GetValues<StrikeStyle>().Where(s => s != own.Task.Stroke.Style))
        {
            yield return (new(ChangeKind.Style, Style: style), own with { Task = PersonStroke.With(own.Task, style) });
        }

        double nearer = NearerShare * own.Task.DistanceM;
        if (nearer >= Parameter.Of<StrikeTask>(nameof(StrikeTask.DistanceM)).Low)
        {
            yield return (new(ChangeKind.Nearer, nearer), own with { Task = own.Task with { DistanceM = nearer } });
        }
    }

    private static IEnumerable<(CoverChange, CoverTry)> Lines(CoverTry own, double labelN)
    {
        LineSpec line = own.Setup.Line;
        double heavier = labelN / LineLabels.NewtonPerLb * 1.01;
        foreach (double label in LabelsLb.Where(l => l > heavier).Take(2).Select(l => l * LineLabels.NewtonPerLb))
        {
            if (WithLine(own, line.Material, label) is CoverTry with)
            {
                yield return (new(ChangeKind.Line, label, Material: line.Material), with);
            }
        }

        if (line.Material != LineMaterial.Braid && WithLine(own, LineMaterial.Braid, labelN) is CoverTry braid)
        {
            yield return (new(ChangeKind.Braid, labelN), braid);
        }
    }

    private static IEnumerable<(CoverChange, CoverTry)> Rods(CoverTry own)
    {
        if (RodClass.Beside(own.Setup.Rod.ThirdLoadN, 1) is double load)
        {
            yield return (new(ChangeKind.Rod, load), own with { Setup = own.Setup with { Rod = RodClass.WithLoad(own.Setup.Rod, load) } });
        }
    }

    // Flesh holds and resists in proportion to the wire, its bend bears with the cube of it (HookWire).
    private static IEnumerable<(CoverChange, CoverTry)> Hooks(CoverTry own)
    {
        HookHold hook = own.Setup.Hook;
        CoverTry With(HookHold other) => own with { Setup = own.Setup with { Hook = other } };
        yield return (new(ChangeKind.Wire, WireRatio), With(hook with { SetN = hook.SetN * WireRatio, HoldN = hook.HoldN * WireRatio, WireN = hook.WireN * Math.Pow(WireRatio, 3.0) }));
        if (hook.Kind == HookKind.ThreePoint)
        {
            yield return (new(ChangeKind.Weedless), With(hook with { Kind = HookKind.TwoPoint, Points = (int)HookHold.UsualPoints(HookKind.TwoPoint).Value }));
        }
    }

    private static CoverTry WithDrag(CoverTry own, double dragN) => own with { Setup = own.Setup with { Reel = own.Setup.Reel with { DragN = dragN } }, BoatDragN = dragN };

    // Null where no line of the material is made so thick.
    private static CoverTry? WithLine(CoverTry own, LineMaterial material, double labelN)
    {
        try
        {
            LineSpec line = LineSizing.Resolve(material, null, null, labelN, own.Setup.Line.Film).Spec;
            return own with { Setup = own.Setup with { Line = line, Reel = own.Setup.Reel.With(line) } };
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
