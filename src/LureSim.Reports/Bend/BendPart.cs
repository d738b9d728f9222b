using System.Globalization;
using System.Text;
using LureSim.Model.Bend;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Bend;

namespace LureSim.Reports.Bend;

/// <summary>The fitted rod as a part for table <c>[rod]</c>, its ranges with it.</summary>
internal static class BendPart
{
    private static readonly (BendValue Value, KeySpec Key)[] Keys =
    [
        (BendValue.BendLoad, RodKeys.BendLoad), (BendValue.TipRadiusRatio, RodKeys.TipRadiusRatio), (BendValue.StiffnessExponent, RodKeys.StiffnessExponent),
        (BendValue.Mass, RodKeys.Mass), (BendValue.FreeMassShare, RodKeys.FreeMassShare), (BendValue.MassExponent, RodKeys.MassExponent),
    ];

    /// <summary>Name of the file: letters, digits, dots and hyphens of the test's own file.</summary>
    /// <param name="file">File of the test.</param>
    public static string FileName(string file)
    {
        string stem = Path.GetFileNameWithoutExtension(file);
        return $"rod-{string.Concat(stem.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-'))}.toml";
    }

    /// <summary>The part.</summary>
    /// <param name="report">Fitted test.</param>
    public static string Text(BendReport report)
    {
        BendFit fit = report.Fit;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# {PlainText.Escape(report.File.Name)}: a rod fitted to a bend test, a part for table [rod].\n");
        text.Append("# Use: --set rod=FILE, or base = \"FILE\" in table [rod] of a scenario.\n# Measured:\n");
        foreach (BendRow row in fit.Rows)
        {
            string weight = row.Kind is ReadingKind.Balance or ReadingKind.Mass ? "" : row.LoadN == 0.0 ? " without a weight" : $" with {BendWording.Load(row.LoadN, Shown.Both)} at the tip";
            text.Append(CultureInfo.InvariantCulture, $"#   {BendWording.Name(row.Kind)} {BendWording.Show(row.Kind, row.Measured, Shown.Both)}{weight}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"length = \"{Si(fit.Test.LengthM, QuantityKind.Length)}\"\n");
        text.Append(report.File.IsClampGuessed ? "# grip: how much was held was not said\n" : $"grip = \"{Si(fit.Test.ClampedM, QuantityKind.Length)}\"\n");
        (BendValue Value, KeySpec Key)[] told = [.. Keys.Where(k => IsTold(k.Value, fit))];
        foreach ((_, KeySpec key) in Keys.Except(told))
        {
            text.Append(CultureInfo.InvariantCulture, $"# {key.Name}: this test does not tell it; the guess of the class stays\n");
        }

        foreach ((BendValue value, KeySpec key) in told)
        {
            text.Append(CultureInfo.InvariantCulture, $"{key.Name} = {Quoted(key, Si(fit[value].Value, key.Kind))}\n");
        }

        text.Append("\n# Drawn from evenly they scatter as much as the fit is in doubt (1.73 standard deviations to each side). stiffness_exponent is held: a smaller\n");
        text.Append("# one with a thinner tip bends alike, so drawn each by itself they would bend as this rod was seen not to bend.\n[ranges]\n");
        foreach ((BendValue value, KeySpec key) in told.Where(k => k.Value != BendValue.StiffnessExponent))
        {
            BendEstimate e = value == BendValue.TipRadiusRatio ? fit.HeldRatio : fit[value];
            text.Append(CultureInfo.InvariantCulture, $"{key.Name} = \"{Si(e.EvenLow, key.Kind)} to {Si(e.EvenHigh, key.Kind)}\"\n");
        }

        return text.ToString();
    }

    // Load and tapers belong together: one of them left to a class would bend the rod otherwise than it was seen to bend.
    private static bool IsTold(BendValue value, BendFit fit) =>
        value is BendValue.BendLoad or BendValue.TipRadiusRatio or BendValue.StiffnessExponent || !fit[value].IsGuess;

    private static string Quoted(KeySpec key, string text) => key.Kind == QuantityKind.Ratio ? text : $"\"{text}\"";

    // Five digits are more than any of it deserves.
    private static string Si(double si, QuantityKind kind) =>
        Quantity.Format(double.Parse(si.ToString("G5", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), kind);
}
