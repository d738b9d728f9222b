using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

/// <summary>The option <c>--units</c>: texts and pictures follow it, files for machines do not.</summary>
public sealed class UnitsOptionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("units").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("trim")]
    [InlineData("pool")]
    [InlineData("strike")]
    [InlineData("retrieve", "--set", "retrieve.duration=2 s")]
    public void Files_for_machines_are_the_same_bytes_in_every_choice(params string[] command)
    {
        string[] choices = ["trade", "metric", "both"];
        string[] texts = Array.ConvertAll(choices, units => Run(command, Place(units), "svg", units));
        Assert.Equal(choices.Length, texts.Distinct().Count());
        string[] files = [.. Directory.GetFiles(Place("both")).Select(f => Path.GetFileName(f)).Where(f => Path.GetExtension(f) is ".json" or ".csv" or ".toml")];
        Assert.True(files.Length >= 3);
        Assert.All(choices, units => Assert.All(files, file => Assert.Equal(Bytes("both", file), Bytes(units, file))));
        Assert.Contains(Directory.GetFiles(Place("both"), "*.svg"), svg => !Bytes("trade", Path.GetFileName(svg)).SequenceEqual(Bytes("metric", Path.GetFileName(svg))));
        string[] json = Array.ConvertAll(choices, units => Session.Run([command[0], Session.Scenario("small-walker"), .. command[1..], "--json", "--units", units]).Out);
        Assert.Single(json.Distinct());
    }

    // All lengths, masses and loads of the file in one family; the diameter of a line is in mm everywhere.
    [Theory]
    [InlineData("a trade", "draft", "in")]
    [InlineData("a metric", "draft", "cm")]
    [InlineData("the shipped", "draft", "in  ")]
    public void Without_the_option_a_file_speaks_its_own_units(string whose, string row, string unit)
    {
        string shipped = File.ReadAllText(Session.Scenario("small-walker")), file = Path.Combine(_folder, "own.toml");
        File.WriteAllText(file, whose switch { "a trade" => Inches(shipped), "a metric" => Metric(shipped), _ => shipped });
        string line = Session.Run("trim", file, "--plots", "none", "--out", Place("own")).Out.Split('\n').Single(l => l.TrimStart().StartsWith(row, StringComparison.Ordinal)) + "  ";
        Assert.Matches($" [0-9.]+ {unit}", line);
        Assert.Equal(whose == "the shipped", line.Contains(" in ", StringComparison.Ordinal) && line.Contains(" cm ", StringComparison.Ordinal));
    }

    [Fact]
    public void Units_that_nobody_measures_in_are_refused_in_one_line()
    {
        Session session = Session.Run("trim", Session.Scenario("small-walker"), "--units", "furlongs");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Equal("--units: 'furlongs' is none of its words; say trade, metric or both", session.Error.Split('\n')[0]);
        Assert.Empty(session.Out);
    }

    private string Place(string name) => Path.Combine(_folder, name);

    private byte[] Bytes(string units, string file) => File.ReadAllBytes(Path.Combine(Place(units), file));

    private static string Run(string[] command, string place, string plots, string units)
    {
        Session session = Session.Run([command[0], Session.Scenario("small-walker"), .. command[1..], "--out", place, "--plots", plots, "--units", units]);
        Assert.Equal(ExitCode.Done, session.Exit);
        return session.Out.Replace(place, "", StringComparison.Ordinal);
    }

    private static string Inches(string text) => Replaced(
        text, ("\"1.2 m\"", "\"47 in\""), ("\"34 mm\"", "\"1.34 in\""), ("\"90 mm\"", "\"3.54 in\""), ("\"17.5 mm\"", "\"0.69 in\""), ("\"10 g\"", "\"0.353 oz\""),
        ("\"1.5 g\"", "\"0.053 oz\""), ("\"-9 mm\"", "\"-0.354 in\""), ("\"-5 mm\"", "\"-0.197 in\""), ("\"20 mm\"", "\"0.787 in\""), ("\"-8 mm\"", "\"-0.315 in\""),
        ("\"-43 mm\"", "\"-1.69 in\""), ("\"0 mm\"", "\"0 in\""), ("\"15 m\"", "\"49 ft\""), ("\"15 cm\"", "\"6 in\""), ("\"12 cm\"", "\"4.7 in\""));

    private static string Metric(string text) => Replaced(
        text, ("\"6 ft 8 in\"", "\"2.03 m\""), ("\"4 oz\"", "\"113 g\""), ("\"6 lb\"", "\"2.7 kg\""), ("\"30 lb\"", "\"13.6 kg\""), ("\"15 in\"", "\"38 cm\""));

    private static string Replaced(string text, params (string From, string To)[] pairs)
    {
        foreach ((string from, string to) in pairs)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        return text;
    }
}
