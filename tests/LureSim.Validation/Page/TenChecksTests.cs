using System.Globalization;
using System.Text.RegularExpressions;

namespace LureSim.Validation.Page;

/// <summary>docs/ten-checks.md: each line of arithmetic is right, each table agrees with the published checks, each command names one.</summary>
public sealed partial class TenChecksTests
{
    // A pencil keeps five or six digits; what the text calls different (other data, straight pieces) stays below this.
    private const double PencilShare = 3e-3;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 10)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_line_of_arithmetic_comes_out_as_written(int number)
    {
        Match[] lines = [.. Line().Matches(Section(number)).Cast<Match>()];
        Assert.NotEmpty(lines);
        Assert.All(lines, m => Assert.Equal(Number(m.Groups[2].Value), Arithmetic.Of(m.Groups[1].Value), LastDigit(m.Groups[2].Value)));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_row_is_one_of_the_check_as_computed_now(int number)
    {
        string section = Section(number);
        Check check = Named(section);
        Assert.Equal(Heading().Match(section).Groups[1].Value, check.Code);
        Match[] rows = [.. TableRow().Matches(section).Cast<Match>()];
        Assert.NotEmpty(rows);
        foreach (Match m in rows)
        {
            Row row = check.Rows.Single(r => r.Quantity == m.Groups[1].Value.Trim());
            string pencil = m.Groups[2].Value, product = m.Groups[3].Value;
            Assert.Equal(row.Computed, Number(product), LastDigit(product));
            double si = m.Value.Contains("by pencil kg", StringComparison.Ordinal) ? 1e3 : 1.0;
            Assert.Equal(row.Expected, si * Number(pencil), (PencilShare * Math.Abs(row.Expected)) + LastDigit(pencil));
            Assert.Contains(pencil, section[..section.IndexOf("| quantity", StringComparison.Ordinal)], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_has_ten()
    {
        Assert.Equal(10, Heading().Count(Page()));
        Assert.All(Enumerable.Range(1, 10), n => Assert.Contains("\nSource: ", Section(n), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2^3 / 12 / (pi / 2)", 0.42441318)]
    [InlineData("-2 + 3 * (1 - 4)", -11.0)]
    [InlineData("2^3^2", 512.0)]
    [InlineData("ln(sqrt(16) / 2)", 0.69314718)]
    public void Arithmetic_is_worked_out(string text, double value) => Assert.Equal(value, Arithmetic.Of(text), 1e-8);

    [Theory]
    [InlineData("2 +")]
    [InlineData("sin(1)")]
    [InlineData("(1")]
    [InlineData("1 2 kg")]
    public void What_is_no_arithmetic_is_refused(string text) => Assert.Throws<FormatException>(() => Arithmetic.Of(text));

    private static string Page() => File.ReadAllText(Path.Combine(Program.Root(), "docs", "ten-checks.md"));

    private static string Section(int number) => Regex.Split(Page(), "(?m)^(?=## )").Single(s => s.StartsWith($"## {number}. ", StringComparison.Ordinal));

    private static Check Named(string section) => (Check)PublishedChecks.Methods()[Command().Match(section).Groups[1].Value].Invoke(null, null)!;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    // Half a unit of the last digit written, and a hair for what lies just between two.
    private static double LastDigit(string text)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        return 0.5001 * (point < 0 ? 1.0 : Math.Pow(10.0, point + 1 - text.Length));
    }

    [GeneratedRegex(@"(?m)^(?:[A-Za-z][A-Za-z ]*(?: =|:))? *([-\d(a-z][-+*/^() .\da-z]*?) = (-?[\d.]+)$")]
    private static partial Regex Line();

    [GeneratedRegex(@"(?m)^## \d+\. .+ \((\w+)\)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"(?m)^\| (.+?) \| (-?[\d.]+) \| (-?[\d.]+) \|.*$")]
    private static partial Regex TableRow();

    [GeneratedRegex(@"tests/LureSim\.Validation -- (\w+\.\w+)")]
    private static partial Regex Command();
}
