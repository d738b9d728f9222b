using LureSim.Model.Lures;

namespace LureSim.Scenarios.Keys;

/// <summary>A hook of a lure that was given by its size.</summary>
/// <param name="Index">Its place in the lure's list.</param>
/// <param name="Row">Its size: place in the table of sizes, small to large.</param>
/// <param name="Points">Points of the hook: 1, 2 or 3.</param>
public sealed record SizedHook(int Index, int Row, double Points);

/// <summary>The hooks of a scenario by size, and the same lure with other sizes. Masses and drag areas are those of the table of guesses.</summary>
public sealed class HookSizes
{
    private readonly double _drag, _along;

    private HookSizes(IReadOnlyList<SizedHook> hooks, double drag, double along) => (Hooks, _drag, _along) = (hooks, drag, along);

    /// <summary>No hook given by its size.</summary>
    public static HookSizes None { get; } = new([], 0.0, 0.0);

    /// <summary>How many sizes there are.</summary>
    public static int Count => HookTable.Choices.Length;

    /// <summary>Hooks given by size, in the order of the lure's list; those given by mass and skirts are not among them.</summary>
    public IReadOnlyList<SizedHook> Hooks { get; }

    /// <summary>Name of a size, for example <c>no. 4</c>.</summary>
    /// <param name="row">Place in the table.</param>
    public static string Name(int row) => HookTable.Choices[row].Name;

    /// <summary>The sizes of a scenario.</summary>
    /// <param name="scenario">Scenario.</param>
    public static HookSizes Of(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var hooks = new List<SizedHook>();
        int index = 0;
        foreach ((ScenarioValues item, _) in scenario.Values.Items(LureKeys.Hooks))
        {
            double row = item.Number(LureItemKeys.HookSize), points = item.Number(LureItemKeys.HookType);
            if (!double.IsNaN(row + points))
            {
                hooks.Add(new(index, (int)row, points));
            }

            index++;
        }

        return new(hooks, scenario.Values.Number(LureKeys.HookDrag), scenario.Values.Number(LureKeys.HookAlong));
    }

    /// <summary>A lure of the same hooks with other sizes: mass and steel in proportion to the table's, drag by the difference of the table's, so that a feather stays.</summary>
    /// <param name="lure">Lure with the hooks of the scenario.</param>
    /// <param name="row">Size wanted of each hook that has one.</param>
    /// <param name="keepsTotal">True: the body makes up for the mass of the hooks.</param>
    public LureSpec With(LureSpec lure, Func<SizedHook, int> row, bool keepsTotal = false)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(row);
        HookSpec[] hooks = [.. lure.Hooks];
        foreach (SizedHook sized in Hooks)
        {
            hooks[sized.Index] = Resized(hooks[sized.Index], sized, Math.Clamp(row(sized), 0, Count - 1));
        }

        double more = hooks.Sum(h => h.MassKg) - lure.Hooks.Sum(h => h.MassKg);
        return lure with { Hooks = [.. hooks], MassKg = keepsTotal ? lure.MassKg - more : lure.MassKg };
    }

    private HookSpec Resized(HookSpec hook, SizedHook from, int row)
    {
        if (row == from.Row)
        {
            return hook;
        }

        double ratio = HookTable.MassKg(row, from.Points) / HookTable.MassKg(from.Row, from.Points);
        double more = _drag * (HookTable.DragAreaM2(row, from.Points) - HookTable.DragAreaM2(from.Row, from.Points));
        return hook with
        {
            MassKg = ratio * hook.MassKg,
            SteelVolumeM3 = ratio * hook.SteelVolumeM3,
            DragAreaM2 = Math.Max(0.0, hook.DragAreaM2 + more),
            DragAreaAlongM2 = hook.DragAreaAlongM2 is double along ? Math.Max(0.0, along + (_along * more)) : null,
        };
    }
}
