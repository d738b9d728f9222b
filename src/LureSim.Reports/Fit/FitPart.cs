using System.Globalization;
using System.Text;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Fit;

namespace LureSim.Reports.Fit;

/// <summary>What measurements tell, ranges with it: of a lure as a part for table <c>[lure]</c>, of a hand as one for <c>[retrieve]</c>.</summary>
internal static class FitPart
{
    /// <summary>Name of the file: letters, digits, dots and hyphens of the measurements' own file.</summary>
    /// <param name="file">File of the measurements.</param>
    /// <param name="hand">True for stroke and slack, false for the lure.</param>
    public static string FileName(string file, bool hand = false)
    {
        string stem = Path.GetFileNameWithoutExtension(file);
        return $"{(hand ? "hand" : "lure")}-{string.Concat(stem.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-'))}.toml";
    }

    /// <summary>The part: the lure of the scenario is not in it, only what was told.</summary>
    /// <param name="report">Fit.</param>
    public static string Text(FitReport report)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# {PlainText.Escape(report.File.Title)}: what measurements tell of a lure, a part for table [lure].\n");
        text.Append("# Use: --set lure=FILE beside the scenario that holds the lure, or base = \"FILE\" in its table [lure].\n");
        text.Append(CultureInfo.InvariantCulture, $"# {report.Rows.Count} readings; what they do not tell is left to its guess.\n");
        if (report.File.MassKg is double mass)
        {
            text.Append(CultureInfo.InvariantCulture, $"mass_with_hooks = \"{Si(mass, QuantityKind.Mass)}\"\n");
        }

        FitEstimate[] told = Values(text, report, false);
        Ballast(text, report);
        Rest(text, report, told);
        return text.ToString();
    }

    /// <summary>Stroke and slack; null where neither was told.</summary>
    /// <param name="report">Fit.</param>
    public static string? Hand(FitReport report)
    {
        if (!report.Values.Any(v => v.Unknown.IsOfHand && v.IsTold))
        {
            return null;
        }

        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# {PlainText.Escape(report.File.Title)}: what walks tell of the hand, a part for table [retrieve].\n");
        text.Append("# Use: --set retrieve=FILE beside the scenario, or base = \"FILE\" in its table [retrieve]. For the rod, line and lure of this fit.\n");
        Rest(text, report, Values(text, report, true));
        return text.ToString();
    }

    private static FitEstimate[] Values(StringBuilder text, FitReport report, bool hand)
    {
        foreach (FitEstimate value in report.Values.Where(v => v.Unknown.IsOfHand == hand && !v.IsTold))
        {
            text.Append(CultureInfo.InvariantCulture, $"# {value.Unknown.Name}: not told; the guess stays\n");
        }

        FitEstimate[] told = [.. report.Values.Where(v => v.Unknown.IsOfHand == hand && v.IsTold && v.Unknown.Key is not null)];
        foreach (FitEstimate value in told)
        {
            string si = Si(value.Value, value.Unknown.Kind);
            text.Append(CultureInfo.InvariantCulture, $"{value.Unknown.Key!.Key.Name} = {(value.Unknown.Kind == QuantityKind.Ratio ? si : $"\"{si}\"")}\n");
        }

        return told;
    }

    private static void Rest(StringBuilder text, FitReport report, FitEstimate[] told)
    {
        foreach (FitPair pair in report.Pairs.Where(p => told.Any(t => t.Unknown == p.One) && told.Any(t => t.Unknown == p.Other)))
        {
            text.Append(CultureInfo.InvariantCulture, $"# {pair.One.Name} and {pair.Other.Name} are told together (correlation {pair.Correlation:F2}); drawn each by itself they scatter more than the data allow.\n");
        }

        if (told.Length > 0)
        {
            text.Append("\n# Drawn from evenly they scatter as much as the fit is in doubt (1.73 standard deviations to each side).\n[ranges]\n");
        }

        foreach (FitEstimate value in told)
        {
            (double low, double high) = value.Even;
            text.Append(CultureInfo.InvariantCulture, $"{value.Unknown.Key!.Key.Name} = \"{Si(low, value.Unknown.Kind)} to {Si(high, value.Unknown.Kind)}\"\n");
        }
    }

    // The whole list, since a part replaces it.
    private static void Ballast(StringBuilder text, FitReport report)
    {
        (double along, double up) = (report.Shift(FitReport.BallastAlong), report.Shift(FitReport.BallastUp));
        if (along == 0.0 && up == 0.0)
        {
            return;
        }

        text.Append(CultureInfo.InvariantCulture, $"# Ballast as in the scenario, moved by {1000.0 * along:F1} mm toward the nose and {1000.0 * up:F1} mm up.\nballast = [\n");
        foreach (BallastSpec b in report.Scenario.Setup!.Lure.Ballast)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {{ mass = \"{Si(b.MassKg, QuantityKind.Mass)}\", x = \"{Si(b.XM + along, QuantityKind.Length)}\", z = \"{Si(b.ZM + up, QuantityKind.Length)}\" }},\n");
        }

        text.Append("]\n");
    }

    // Five digits are more than any of it deserves.
    private static string Si(double si, QuantityKind kind) =>
        Quantity.Format(double.Parse(si.ToString("G5", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), kind);
}
