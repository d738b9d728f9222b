using System.Globalization;
using System.Text;

namespace LureSim.Validation.Page;

/// <summary>The published checks as a Markdown page.</summary>
internal static class ValidationPage
{
    // Below this an error is rounding of the machine and would differ from one to the next.
    private const double Rounding = 1e-9;

    /// <summary>Writes the page; line feeds, invariant numbers.</summary>
    /// <param name="checks">Checks in any order.</param>
    public static string Write(IReadOnlyList<Check> checks)
    {
        Check[] ordered = [.. checks.OrderBy(c => CheckCode.Of(c.Code)).ThenBy(c => c.Title, StringComparer.Ordinal)];
        var text = new StringBuilder();
        text.Append("# Published checks\n\n");
        text.Append("Made by `dotnet run -c Release --project tests/LureSim.Validation`; do not edit. Every entry is a test of\n");
        text.Append("`tests/LureSim.Validation`. \"Share of tolerance\" is the worst error of the entry over its tolerance; a band claims\n");
        text.Append("only that the value stays inside what the source gives.\n\n");
        text.Append("| code | check | numbers | share of tolerance | holds |\n|---|---|---|---|---|\n");
        foreach (Check c in ordered)
        {
            double worst = c.Rows.Max(Share);
            string share = c.Rows.All(r => r.Kind == Tol.Band) ? "band" : worst < 0.005 ? "< 0.01" : worst.ToString("F2", CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"| {c.Code} | {Cell(c.Title)} | {c.Rows.Count} | {share} | {(c.Rows.All(r => r.Passes) && (c.Ladder?.Holds ?? true) ? "yes" : "NO")} |\n");
        }

        foreach (Check c in ordered)
        {
            Append(text, c);
        }

        return text.ToString();
    }

    /// <summary>One check as it stands on the page.</summary>
    /// <param name="check">Check.</param>
    public static string Entry(Check check)
    {
        var text = new StringBuilder();
        Append(text, check);
        return text.ToString().Trim();
    }

    private static double Share(Row r) => r.Error < Rounding || r.Error == 0.0 ? 0.0 : r.Error / r.Tolerance;

    private static void Append(StringBuilder text, Check c)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## {c.Code}. {c.Title}\n\n");
        text.Append(CultureInfo.InvariantCulture, $"Source: {c.Source}\n\nTolerance: {c.ToleranceReason}\n\n");
        text.Append("| quantity | unit | expected | computed | error | tolerance |\n|---|---|---|---|---|---|\n");
        foreach (Row r in c.Rows)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {Cell(r.Quantity)} | {Cell(r.Unit)} | {Expected(r)} | {Digits(r.Computed, 5)} | {Error(r)} | {Tolerance(r)} |\n");
        }

        if (c.Ladder is not Ladder ladder)
        {
            return;
        }

        text.Append(CultureInfo.InvariantCulture, $"\nError of {ladder.Quantity} against {ladder.Parameter}:\n\n| {Cell(ladder.Parameter)} | error |\n|---|---|\n");
        foreach ((double level, double error) in ladder.Levels)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {Digits(level, 4)} | {Small(error)} |\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"\nOrder {ladder.Order:F1} over these levels, at least {ladder.LeastOrder:0.0#} demanded: {ladder.Why}\n");
    }

    private static string Expected(Row r) => r.Kind == Tol.Band
        ? $"{Digits(r.Expected - r.Tolerance, 5)} to {Digits(r.Expected + r.Tolerance, 5)}"
        : Digits(r.Expected, 6);

    private static string Error(Row r) => r.Kind switch
    {
        Tol.Band => "inside",
        Tol.Relative => r.Error < Rounding ? "< 1e-7 %" : $"{Digits(100.0 * r.Error, 2)} %",
        _ => Small(r.Error),
    };

    private static string Tolerance(Row r) => r.Kind switch
    {
        Tol.Band => "band",
        Tol.Relative => $"{Digits(100.0 * r.Tolerance, 2)} %",
        _ => Digits(r.Tolerance, 2),
    };

    private static string Small(double error) => error < Rounding ? "< 1e-9" : Digits(error, 2);

    private static string Digits(double value, int digits)
    {
        string text = value.ToString("G" + digits, CultureInfo.InvariantCulture);
        return text is "-0" ? "0" : text;
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}

/// <summary>Order of codes: letters, then number, then what follows.</summary>
internal readonly record struct CheckCode(string Letters, int Number, string Rest) : IComparable<CheckCode>
{
    /// <summary>Splits "S3" or "C2a".</summary>
    public static CheckCode Of(string code)
    {
        int letters = code.TakeWhile(char.IsAsciiLetter).Count();
        int digits = code.Skip(letters).TakeWhile(char.IsAsciiDigit).Count();
        int number = digits > 0 ? int.Parse(code.AsSpan(letters, digits), CultureInfo.InvariantCulture) : 0;
        return new CheckCode(code[..letters], number, code[(letters + digits)..]);
    }

    /// <inheritdoc/>
    public int CompareTo(CheckCode other)
    {
        int letters = string.CompareOrdinal(Letters, other.Letters);
        int number = Number.CompareTo(other.Number);
        return letters != 0 ? letters : number != 0 ? number : string.CompareOrdinal(Rest, other.Rest);
    }
}
