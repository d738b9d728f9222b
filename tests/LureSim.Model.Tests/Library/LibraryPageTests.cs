using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using LureSimExamples;

namespace LureSim.Model.Tests.Library;

/// <summary>The programs of docs/library.md run, print what makes sense, and stand on the page as they are. LURESIM_WRITE_DOCS=1 rewrites their blocks.</summary>
public sealed partial class LibraryPageTests
{
    [Fact]
    public void The_page_shows_the_programs_as_they_are()
    {
        string page = File.ReadAllText(Page()).ReplaceLineEndings("\n");
        string written = Block().Replace(page, m => $"<!-- {m.Groups["file"].Value} -->\n```csharp\n{Program(m.Groups["file"].Value)}```");
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(Page(), written);
            page = written;
        }

        Assert.Equal(written, page);
        Assert.Equal(["CastProgram.cs", "Tackle.cs", "WalkProgram.cs", "WatchProgram.cs"], Block().Matches(page).Select(m => m.Groups["file"].Value).Order());

        // No other block of C# goes untried.
        Assert.Equal(Block().Count(page), Regex.Count(page, "```csharp"));
    }

    [Fact]
    public void The_retrieve_prints_a_walk()
    {
        string text = Printed(WalkProgram.Main);
        Assert.Contains("pattern Alternating", text, StringComparison.Ordinal);
        double[] numbers = Numbers(text);
        Assert.Equal(2, numbers.Length);
        Assert.InRange(numbers[0], 0.01, 0.3);
        Assert.InRange(numbers[1], 0.01, 0.3);
    }

    [Fact]
    public void The_casts_print_a_distance_for_each_rod()
    {
        double[] numbers = Numbers(Printed(CastProgram.Main));
        Assert.Equal([1.8, 2.0, 2.2, 2.4], numbers.Where((_, i) => i % 2 == 0));
        double[] distances = [.. numbers.Where((_, i) => i % 2 == 1)];
        Assert.All(distances, d => Assert.InRange(d, 10.0, 80.0));
        Assert.True(distances[^1] > distances[0]);
    }

    // 8 s at 0.5 ms are 16 000 steps, more where the step was cut. A pull comes each half second and lasts less than that.
    [Fact]
    public void The_observer_prints_the_largest_pull()
    {
        double[] numbers = Numbers(Printed(WatchProgram.Main));
        Assert.Equal(4, numbers.Length);
        Assert.InRange(numbers[0], 16000, 64000);
        Assert.InRange(numbers[1], 0.1, 20.0);
        Assert.InRange(numbers[2], 0.0, 8.0);
        Assert.InRange(numbers[3], 0.0, 1000.0);
    }

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    private static string Printed(Action program)
    {
        (TextWriter console, CultureInfo culture) = (Console.Out, CultureInfo.CurrentCulture);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            Console.SetOut(text);
            program();
        }
        finally
        {
            Console.SetOut(console);
            CultureInfo.CurrentCulture = culture;
        }

        return text.ToString();
    }

    // Text of a file from after its begin mark to before its end mark.
    private static string Program(string file)
    {
        string text = File.ReadAllText(Path.Combine(Path.GetDirectoryName(Here())!, file)).ReplaceLineEndings("\n");
        int from = text.IndexOf("// begin\n", StringComparison.Ordinal) + "// begin\n".Length;
        return text[from..text.IndexOf("// end", StringComparison.Ordinal)];
    }

    private static string Page() => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "library.md"));

    private static string Here([CallerFilePath] string here = "") => here;

    [GeneratedRegex("<!-- (?<file>[A-Za-z]+\\.cs) -->\n```csharp\n.*?```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
