using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Strike;

/// <summary>The short tables of a strike.</summary>
internal static class StrikeTable
{
    private const double Degree = Math.PI / 180.0, NothingM = 5e-4;

    /// <summary>The figures as aligned plain text.</summary>
    /// <param name="strike">Strike.</param>
    /// <param name="shown">Units.</param>
    public static string Text(StrikeResult strike, Shown shown) => AlignedTable.Text([.. Rows(strike, shown)]);

    /// <summary>The figures.</summary>
    /// <param name="strike">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<TableRow> Rows(StrikeResult strike, Shown shown)
    {
        StrikeSummary s = strike.Summary;
        return
        [
            shown.Row("pull on the hook, largest", ShownQuantity.Pull, s.HookForcePeakN),
            shown.Row("held by the hands alone", ShownQuantity.Pull, s.HookForceStaticN),
            .. strike.Setup.Hook.Points > 1 ? [shown.Row("pull on each point", ShownQuantity.Pull, s.ForcePerPointN)] : Array.Empty<TableRow>(),
            shown.Row("impulse", ShownQuantity.Impulse, s.ImpulseNs),
            new("line tight after", Time(s.TimeToTightS), ""),
            new("points set after", s.TimeToForceS is null ? "not set" : Time(s.TimeToForceS), s.Sets ? $"kept up for {Trade.Fixed(s.SetTimeS, 2)} s" : $"due: {shown.Pull(strike.Setup.Hook.SettingN)}"),
            new("largest pull after", Time(s.PeakTimeS), ""),
            Way("line stretched", s.LineStretchM, shown),
            Way("drag slipped", s.DragSlipM, shown),
            shown.Row("rod tip moved", ShownQuantity.Distance, s.TipTravelM),
            new("rod turned", $"{Trade.Fixed(s.RodTurnRad / Degree, 0)} deg", ""),
            shown.Row("weight on the hands, peak", ShownQuantity.Torque, s.HandTorquePeakNm),
            shown.Row("pull at the reel, peak", ShownQuantity.Pull, s.ReelForcePeakN),
        ];
    }

    /// <summary>What can give, weakest first.</summary>
    /// <param name="summary">Figures.</param>
    /// <param name="shown">Units.</param>
    public static string Margins(StrikeSummary summary, Shown shown)
    {
        ShownUnit[] units = shown.Units(ShownQuantity.Pull, summary.Margins.Max(m => m.StrengthN));
        string Cell(double n) => Shown.Joined(units, u => u.Text(n));
        return ColumnTable.Text(
            ["what can give", "load", "it bears", "times"],
            [.. summary.Margins.Select(m => new[] { StrikeNames.Of(m.Place), Cell(m.LoadN), Cell(m.StrengthN), double.IsFinite(m.Ratio) ? Trade.Digits(m.Ratio) : "-" })]);
    }

    private static TableRow Way(string name, double m, Shown shown) => m < NothingM ? new(name, "nothing", "") : shown.Row(name, ShownQuantity.Size, m);

    private static string Time(double? s) => s is double value ? $"{Trade.Fixed(value, 2)} s" : "never";
}
