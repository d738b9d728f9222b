using System.Text;
using LureSim.Model.Bend;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Bend;

namespace LureSim.Reports.Bend;

/// <summary>A fitted bend test for the terminal.</summary>
public static class BendText
{
    private const string Caution =
        "Care: a bent rod holds energy and can break; eyes away from tip and line, no more than a third of its length down, never by a single guide, and in a shop only "
        + "after asking. This is a model; measure before you trust it.";

    // A largest drop below this share of the free length leaves the load for a third to be computed far beyond the readings.
    private const double Shallow = 0.22;

    /// <summary>Title, tables, sentences and caution, each line ended by a line feed.</summary>
    /// <param name="report">Fitted test.</param>
    /// <param name="shown">How quantities are told.</param>
    /// <param name="part">Where the part was written, or null.</param>
    public static string Build(BendReport report, Shown shown, string? part)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        var text = new StringBuilder();
        text.Append(report.File.Name).Append(", bend test\n\n").Append(AlignedTable.Text(Values(report.Fit, shown))).Append('\n');
        text.Append(ColumnTable.Text(["reading", "weight", "measured", "computed", "off"], [.. report.Fit.Rows.Select(r => Row(r, shown))])).Append('\n');
        foreach (string sentence in (string[])[Third(report, shown), .. Fit(report.Fit, shown), .. Open(report.Fit, shown), .. Notes(report, shown)])
        {
            text.AppendWrapped(sentence);
        }

        if (part is not null)
        {
            text.AppendWrapped($"To use it: --set rod={part}, or base = \"{part}\" in table [rod] of a scenario. Its ranges go along, so --doubt and comparisons draw from them, not from those of a class.");
        }

        text.Append('\n');
        text.AppendWrapped(Caution);
        return text.ToString();
    }

    /// <summary>What cannot be right or was not said, a sentence each; also the warnings of the JSON.</summary>
    /// <param name="report">Fitted test.</param>
    /// <param name="shown">How quantities are told.</param>
    public static IEnumerable<string> Notes(BendReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        BendFit fit = report.Fit;
        if (fit.Odd is BendRow odd)
        {
            string where = odd.Kind is ReadingKind.Drop or ReadingKind.Angle or ReadingKind.MiddleDrop ? $"{report.File.RowPlaces[odd.Index]}: " : "";
            yield return $"Note: {where}the {BendWording.Name(odd.Kind)} of {BendWording.Show(odd.Kind, odd.Measured, shown)} does not fit the others, which make it "
                + $"{BendWording.Show(odd.Kind, odd.Expected, shown)}: read or typed wrong, or the rod slipped in its clamp. It is left in; mend the line or take it out.";
        }

        if (report.File.IsClampGuessed)
        {
            yield return $"Note: how much of the rod was held is missing (line \"clamped, 12 in\"); {shown.Size(fit.Test.ClampedM)} are taken, and every number hangs on it.";
        }

        foreach (BendValue value in Enum.GetValues<BendValue>().Where(v => fit[v].IsStrange))
        {
            yield return $"Note: {BendWording.Name(value)} comes out as {BendWording.Of(value, fit[value], shown).Value}, outside of what rods are thought to have: "
                + "a clamp that gives, a slope of the table or a weight that is not what it says would do that.";
        }

        string[] missing = [.. Missing(fit.Test)];
        if (missing.Length > 0)
        {
            yield return $"Not measured: {string.Join(", ", missing)}.";
        }
    }

    private static IEnumerable<string> Missing(BendTest test)
    {
        (bool Is, string Name)[] all =
        [
            (test.Rows.Any(r => r.TipAngleRad is not null), "tip angle"), (test.MassKg is not null, "mass"), (test.BalanceM is not null, "balance point"),
            (test.Bounces.Count > 0, "bounces"),
        ];
        return all.Where(a => !a.Is).Select(a => a.Name);
    }

    private static IEnumerable<TableRow> Values(BendFit fit, Shown shown)
    {
        yield return new("", "best", "in 80 of 100 such tests within");
        foreach (BendValue value in Enum.GetValues<BendValue>())
        {
            (string best, string band) = BendWording.Of(value, fit[value], shown);
            yield return new(BendWording.Name(value), best, fit[value].IsGuess ? $"{band}; still a guess" : band);
        }

        yield return new("swings by itself", $"{Trade.Digits(fit.FrequencyHz.Value)} in a second", $"{Trade.Digits(fit.FrequencyHz.Low)} to {Trade.Digits(fit.FrequencyHz.High)}");
        yield return new("hangs by its own weight", shown.Size(fit.SagM), "");
        if (fit.DampingRatio is double damping)
        {
            yield return new("damping where it is held", $"{Trade.Digits(100.0 * damping)} %", "a hand adds to it, so it does not go into the part");
        }
    }

    private static string[] Row(BendRow row, Shown shown)
    {
        string off = row.Kind is ReadingKind.Drop or ReadingKind.MiddleDrop ? $"{Trade.Fixed(1000.0 * (row.Measured - row.Computed), 0)} mm" : "";
        string weight = row.Kind is ReadingKind.Balance or ReadingKind.Mass ? "" : BendWording.Load(row.LoadN, shown);
        return [BendWording.Name(row.Kind), weight, BendWording.Show(row.Kind, row.Measured, shown), BendWording.Show(row.Kind, row.Computed, shown), off];
    }

    private static string Third(BendReport report, Shown shown)
    {
        BendFit fit = report.Fit;
        BendEstimate load = fit[BendValue.BendLoad], tip = fit.ActionRad;
        string far = fit.DropShareReached < Shallow
            ? $" The largest drop of the test is only {Trade.Fixed(100.0 * fit.DropShareReached, 0)} % of the free length, so this is computed beyond what was seen."
            : "";
        return $"Held level {BendWording.Read(ShownQuantity.Size, shown, fit.Test.ClampedM)} from the butt end, {BendWording.Of(BendValue.BendLoad, load, shown).Value} at the tip bring it down by a third of the "
            + $"{BendWording.Read(ShownQuantity.Distance, shown, fit.Test.FreeLengthM)} that are free; it then points {BendWording.Degrees(tip.Value)} deg ({BendWording.Degrees(tip.Low)} to {BendWording.Degrees(tip.High)}) below the level. "
            + $"By the classes of this program (common practice, no source) that is {BendWording.Classes(report.Powers)} in power and {BendWording.Classes(report.Actions)} in action.{far}";
    }

    private static IEnumerable<string> Fit(BendFit fit, Shown shown)
    {
        string scatter = fit.ErrorScale > 1.0
            ? $" That is {Trade.Digits(fit.ErrorScale)} times what such readings should scatter, so the bands are that much wider."
            : "";
        yield return $"The farthest drop lies {Trade.Fixed(1000.0 * fit.LargestMissM, 0)} mm off the fitted rod, all of them {Trade.Fixed(1000.0 * fit.RmsMissM, 0)} mm (root mean square).{scatter}";
        string from = fit.Test.IsFromLevel ? "the level of the clamp" : "where the bare tip hangs";
        yield return $"Drops count from {from}. Reading errors taken: drops {Trade.Fixed(1000.0 * fit.Test.Errors.DropM, 0)} mm, all weights together "
            + $"{Trade.Digits(100.0 * fit.Test.Errors.WeightShare)} %, angles {BendWording.Degrees(fit.Test.Errors.AngleRad)} deg, level {BendWording.Degrees(fit.Test.Errors.LevelRad)} deg.";
        foreach (BendRow bounce in fit.Rows.Where(r => r.Kind == ReadingKind.Bounce))
        {
            string weight = bounce.LoadN == 0.0 ? "bare" : $"with {shown.Pull(bounce.LoadN)} at the tip";
            yield return $"{Trade.Capital(weight)} it bounced {Trade.Digits(bounce.Measured)} times a second; the fitted rod does {Trade.Digits(bounce.Computed)}.";
        }
    }

    private static IEnumerable<string> Open(BendFit fit, Shown shown)
    {
        foreach (OpenValue open in fit.Open.Where(o => o.Reading is not null))
        {
            yield return $"Still a guess: {BendWording.Name(open.Value)}. What would tell most: {BendWording.Order(open, shown)}; the band would then be like {BendWording.Band(open, shown)}.";
        }

        string[] hopeless = [.. fit.Open.Where(o => o.Reading is null).Select(o => BendWording.Name(o.Value))];
        if (hopeless.Length > 0)
        {
            yield return $"Still a guess, and no further reading that this test knows would tell it: {string.Join("; ", hopeless)}.";
        }
    }
}
