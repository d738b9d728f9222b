using System.Reflection;
using System.Text;
using System.Text.Json;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Files;

public sealed class RetrieveFileTests
{
    private static readonly RunNotes Notes = new(["wind bends the slack line"], ["rod.damping = 0.10 (0.05 to 0.2)"]);

    [Fact]
    public void Summary_file_reads_as_expected() => Expected.Matches("summary.json", Text(Write));

    [Fact]
    public void Every_member_of_the_summary_has_its_key_and_its_value()
    {
        JsonElement json = JsonDocument.Parse(Text(Write)).RootElement;
        RetrieveSummary summary = MadeUpRetrieve.Summary(WalkPattern.Alternating);
        PropertyInfo[] numbers = [.. typeof(RetrieveSummary).GetProperties().Where(p => p.PropertyType != typeof(WalkPattern) && p.Name != "EqualityContract")];
        Assert.Equal(numbers.Length, RetrieveFigures.All.Count);
        foreach (PropertyInfo member in numbers)
        {
            Figure<RetrieveSummary> key = Assert.Single(RetrieveFigures.All, k => Squeezed(k.Key).Equals(member.Name, StringComparison.OrdinalIgnoreCase));
            double value = Convert.ToDouble(member.GetValue(summary), System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(value, json.GetProperty(key.Key).GetDouble());
        }

        static string Squeezed(string key) => key.Replace("_", string.Empty, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_is_not_one_is_refused_rather_than_written()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        RetrieveResult broken = result with { Summary = result.Summary with { GlideWidthM = double.NaN } };
        Assert.Throws<ArgumentException>(() => SummaryJson.Write(new MemoryStream(), broken, Notes));
    }

    [Fact]
    public void Series_reads_back_to_nine_digits_under_the_same_names()
    {
        Series series = MadeUpRetrieve.Result(1.0).Series;
        string[] lines = Text(s => SeriesCsv.Write(s, series)).TrimEnd('\n').Split('\n');
        Assert.Equal(string.Join(',', series.Channels.Select(c => c.Name)), lines[0]);
        Assert.Equal(series.Count + 1, lines.Length);
        for (int i = 0; i < series.Count; i++)
        {
            double[] row = [.. lines[i + 1].Split(',').Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture))];
            for (int c = 0; c < row.Length; c++)
            {
                double value = series.Channels[c].Values[i];
                // Half a unit of the ninth digit.
                Assert.True(Math.Abs(row[c] - value) <= 5e-9 * Math.Abs(value), $"{lines[0]} row {i}");
            }
        }
    }

    [Fact]
    public void Files_do_not_depend_on_the_culture()
    {
        Series series = MadeUpRetrieve.Result(0.5).Series;
        string csv = Text(s => SeriesCsv.Write(s, series)), json = Text(Write);
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = new("de-DE");
            Assert.Equal(csv, Text(s => SeriesCsv.Write(s, series)));
            Assert.Equal(json, Text(Write));
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    private static void Write(Stream stream) => SummaryJson.Write(stream, MadeUpRetrieve.Result(), Notes);

    private static string Text(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
