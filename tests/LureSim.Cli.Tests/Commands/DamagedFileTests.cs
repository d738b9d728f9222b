using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

/// <summary>
/// Shipped scenarios with random damage, through the whole program: a run (exit 0), faults in words (2) or a reason why the model
/// stops (3). Never an exception, never a stack trace, nothing on stdout when a file is refused.
/// </summary>
public sealed partial class DamagedFileTests : IDisposable
{
    private static readonly string[] Paths =
        [.. Directory.GetFiles(Path.GetDirectoryName(Session.Scenario("large-walker"))!, "*.toml").Order(StringComparer.Ordinal)];

    private static readonly string[] Files = [.. Paths.Select(File.ReadAllText)];

    private static readonly double[] Factors = [0.0, -1.0, 0.01, 0.1, 0.5, 1.5, 2.0, 10.0, 1000.0, 1e300];

    // LURESIM_DAMAGED_FILES sets the number of each kind; 5,000 were run by hand.
    private static readonly int Iterations =
        int.Parse(Environment.GetEnvironmentVariable("LURESIM_DAMAGED_FILES") ?? "100", CultureInfo.InvariantCulture);

    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-damaged-").FullName;

    private int _count, _ran;

    // Some of them build on others, or on a drawing, which are looked for beside the damaged file.
    public DamagedFileTests() => Array.ForEach(
        [.. Paths, .. Directory.GetFiles(Path.GetDirectoryName(Paths[0])!, "*.svg")], p => File.Copy(p, Path.Combine(_folder, Path.GetFileName(p))));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Numbers_changed() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Select(Gen.Int[0, 200], Gen.Int[0, Factors.Length - 1]).Array[1, 3]).Sample(
            (file, changes) =>
            {
                string text = Files[file];
                foreach ((int at, int factor) in changes)
                {
                    MatchCollection numbers = Number().Matches(text);
                    Match n = numbers[at % numbers.Count];
                    double value = double.Parse(n.Value, CultureInfo.InvariantCulture) * Factors[factor];
                    text = text[..n.Index] + value.ToString("R", CultureInfo.InvariantCulture) + text[(n.Index + n.Length)..];
                }

                EndsInWords(text);
            },
            iter: Iterations, threads: 1);

    [Fact]
    public void Values_swapped() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Int[0, 200], Gen.Int[0, 200]).Sample(
            (file, first, second) =>
            {
                MatchCollection values = Quoted().Matches(Files[file]);
                (Match a, Match b) = (values[first % values.Count], values[second % values.Count]);
                (a, b) = a.Index < b.Index ? (a, b) : (b, a);
                string text = Files[file];
                EndsInWords(a.Index == b.Index ? text : text[..a.Index] + b.Value + text[(a.Index + a.Length)..b.Index] + a.Value + text[(b.Index + b.Length)..]);
            },
            iter: Iterations, threads: 1);

    [Fact]
    public void Lines_lost() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Int[0, 200].Array[1, 4]).Sample(
            (file, lost) =>
            {
                List<string> lines = [.. Files[file].Split('\n')];
                foreach (int at in lost)
                {
                    lines.RemoveAt(at % lines.Count);
                }

                EndsInWords(string.Join('\n', lines));
            },
            iter: Iterations, threads: 1);

    [Fact]
    public void Characters_garbled() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Select(Gen.Int[0, 5000], Gen.Char).Array[1, 3]).Sample(
            (file, edits) =>
            {
                char[] text = Files[file].ToCharArray();
                foreach ((int at, char put) in edits)
                {
                    text[at % text.Length] = put;
                }

                EndsInWords(new string(text));
            },
            iter: Iterations, threads: 1);

    [Fact]
    public void Whole_files_run()
    {
        foreach (string file in Files)
        {
            EndsInWords(file);
        }

        Assert.Equal(Files.Length, _ran);
    }

    private void EndsInWords(string text)
    {
        string path = Path.Combine(_folder, $"s{_count++}.toml");
        File.WriteAllText(path, text);
        Session s = Session.Run("retrieve", path, "--json", "--quiet", "--plots", "none", "--set", "retrieve.duration=0.6 s", "--set", "solver.nodes=20");
        Assert.True(s.Exit is 0 or 2 or 3, $"exit {s.Exit}");
        Assert.DoesNotContain("   at ", s.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", s.Error, StringComparison.Ordinal);
        Assert.Equal(s.Exit == 0, s.Error.Length == 0);
        if (s.Exit == 2)
        {
            Assert.Empty(s.Out);
        }

        _ran += s.Exit == 0 ? 1 : 0;
        File.Delete(path);
    }

    [GeneratedRegex(@"(?<![\w.])\d+(\.\d+)?")]
    private static partial Regex Number();

    [GeneratedRegex("\"[^\"\n]*\"")]
    private static partial Regex Quoted();
}
