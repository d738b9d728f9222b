using System.Runtime.CompilerServices;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

/// <summary>Command lines that people type wrongly (Data/mistakes.txt): one line each, exit 2, nothing on stdout, and what the line says to type works.</summary>
public sealed class MistakenLineTests : IDisposable
{
    private static readonly string Good = Session.Scenario("small-walker");
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public MistakenLineTests() => File.Copy(Good, Path.Combine(_folder, "good.toml"));

    public static TheoryData<string, string, string> Lines
    {
        get
        {
            var lines = new TheoryData<string, string, string>();
            foreach (string[] cells in File.ReadAllLines(DataFile()).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(" => ")))
            {
                lines.Add(cells[0], cells[1], cells.Length > 2 ? cells[2] : "");
            }

            return lines;
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_slip_is_told_in_one_line(string typed, string said, string instead)
    {
        Session session = Session.Run(Words(typed));
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        string line = Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
        Assert.Contains(said.Replace("GOOD", Good, StringComparison.Ordinal), line.Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("Unrecognized", line, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", line, StringComparison.Ordinal);
        if (instead.Length > 0)
        {
            string[] quiet = instead.StartsWith("--", StringComparison.Ordinal) || instead.StartsWith("check", StringComparison.Ordinal) ? [] : ["--quiet", "--out", Path.Combine(_folder, "out")];
            Assert.Equal(ExitCode.Done, Session.Run([.. Words(instead), .. quiet]).Exit);
        }
    }

    [Theory]
    [InlineData("help")]
    [InlineData("Help")]
    [InlineData("help help")]
    [InlineData("--help")]
    public void Help_lists_the_commands(string typed)
    {
        Session session = Session.Run(Words(typed));
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.All(Capabilities.All, c => Assert.Contains($"  {c.Create(new Terminal(TextWriter.Null, TextWriter.Null, false), default).Name} ", session.Out, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("help cast")]
    [InlineData("cast help")]
    [InlineData("cast --help")]
    public void Help_of_a_command_lists_its_options(string typed)
    {
        Session session = Session.Run(Words(typed));
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains(" cast <file>", session.Out, StringComparison.Ordinal);
        Assert.Contains("--match", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_of_no_command_is_a_slip() => Assert.Contains("did you mean luresim cast?", Session.Run("help", "csat").Error, StringComparison.Ordinal);

    [Fact]
    public void The_name_alone_tells_what_to_type_first()
    {
        Session session = Session.Run();
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains("  luresim start ", session.Error, StringComparison.Ordinal);
        Assert.All(Capabilities.All, c => Assert.Contains($"\n  {c.Create(new Terminal(TextWriter.Null, TextWriter.Null, false), default).Name} ", session.Error, StringComparison.Ordinal));
        Assert.InRange(session.Error.Split('\n').Length, 8, 36);
    }

    private string[] Words(string line) =>
        [.. line.Split('|').SelectMany((part, i) => i == 0 ? part.Split(' ') : [part]).Select(w => w is "GOOD" or "OTHER" ? Good : w.StartsWith("good", StringComparison.Ordinal) ? Path.Combine(_folder, w) : w)];

    private static string DataFile([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "Data", "mistakes.txt");
}
