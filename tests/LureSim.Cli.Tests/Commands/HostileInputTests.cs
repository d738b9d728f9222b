using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using LureSim.Cli.Tests.Support;
using LureSim.Scenarios;
using LureSim.Scenarios.Reading;

namespace LureSim.Cli.Tests.Commands;

/// <summary>Files that are none, or that were made to knock the program over: a clear line and exit code 2.</summary>
public sealed class HostileInputTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private Socket? _socket;
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose()
    {
        _socket?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    public static TheoryData<string, string> Odd => new()
    {
        { "", "the name is empty" },
        { ".", "it is a folder" },
        { "fifo", "no plain file" },
        { "socket", "no plain file" },
        { "/dev/zero", "no plain file" },
        { "/dev/null", "no plain file" },
        { "big", "more than 1 MB" },
        { "none", "there is no such file" },
    };

    [Theory]
    [MemberData(nameof(Odd))]
    public Task As_a_scenario(string name, string told) => Refused(told, 1, "check", Place(name));

    [Theory]
    [MemberData(nameof(Odd))]
    public Task As_a_base(string name, string told)
    {
        string scenario = Write("s.toml", $"base = '{Place(name)}'\n");
        return Refused(name.Length == 0 ? "it is a folder" : told, 1, "check", name.Length == 0 ? Write("s.toml", "base = '.'\n") : scenario);
    }

    [Theory]
    [MemberData(nameof(Odd))]
    public Task As_a_part(string name, string told) => Refused(told, 1, "check", Small, "--set", $"lure={Place(name)}");

    [Theory]
    [MemberData(nameof(Odd))]
    public Task As_sections_of_a_hull(string name, string told)
    {
        // The folder of a CSV is its scenario's, and an empty name is that folder.
        string value = name.Length == 0 ? "." : Place(name);
        return Refused(name.Length == 0 ? "it is a folder" : told, 2, "check", Small, "--set", $"lure.stations={value}");
    }

    [Theory]
    [InlineData("fifo.csv", "no plain file")]
    [InlineData("fifo", "no plain file")]
    [InlineData("socket", "no plain file")]
    [InlineData("/dev/zero", "no plain file")]
    [InlineData("big", "more than 1 MB")]
    [InlineData(".", "it is a folder")]
    public Task As_measured_casts(string name, string told) => Refused(told, 1, "cast", Small, "--json", "--match", Place(name));

    [Theory]
    [InlineData("base = \"a\\u0000b\"")]
    [InlineData("lure = \"a\\u0000b\"")]
    [InlineData("[lure]\nbase = \"a\\u0000b\"")]
    public Task A_name_with_nul(string text) => Refused("holds a NUL character", 1, "check", Write("s.toml", text));

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{a=", "}")]
    public async Task Nesting_has_an_end_that_is_said(string open, string close)
    {
        foreach (int depth in (int[])[33, 65, 100_000])
        {
            string text = $"a = {string.Concat(Enumerable.Repeat(open, depth))}1{string.Concat(Enumerable.Repeat(close, depth))}\n";
            await Refused("stand in each other more than 32 deep", 1, "check", Write("s.toml", text));
        }

        await Refused("the value cannot be read", 1, "check", Small, "--set", $"lure.hooks={new string('[', 200)}{new string(']', 200)}");
    }

    [Fact]
    public async Task A_chain_of_bases_has_an_end_that_is_said()
    {
        for (int i = 0; i < 3000; i++)
        {
            Write($"c{i}.toml", $"base = \"c{i + 1}.toml\"\n");
        }

        File.Copy(Small, Path.Combine(_folder, "c3000.toml"));
        await Refused("c32.toml(1,8): base: \"c33.toml\" stands at the end of a longer chain of bases than is read; at most 32 bases deep", 1, "check", Path.Combine(_folder, "c0.toml"));
        Assert.Equal(ExitCode.Done, Session.Run("check", Path.Combine(_folder, "c2968.toml")).Exit);
    }

    [Fact]
    public async Task Files_that_ask_for_ever_more_files_end()
    {
        string[] tables = ["water", "air", "angler", "rod", "reel", "line", "leader", "lure", "retrieve", "cast", "hands", "solver"];
        string parts = string.Concat(tables.Select(t => $"{t} = \"r0.toml\"\n"));
        for (int i = 0; i < 25; i++)
        {
            Write($"r{i}.toml", i < 24 ? $"base = \"r{i + 1}.toml\"\n" : "# end\n");
        }

        // Three files, 12 chains of 25 from the second, 7 more from the first, and 22 of the next.
        Write("t0.toml", $"base = \"t1.toml\"\n{parts}");
        Write("t1.toml", $"base = \"t2.toml\"\n{parts}");
        File.Copy(Small, Path.Combine(_folder, "t2.toml"));
        await Refused("\"r22.toml\" is one file too many; a scenario is made of at most 500", 1, "check", Path.Combine(_folder, "t0.toml"));
    }

    [Fact]
    public void Twenty_faults_of_a_file_are_told_and_the_rest_counted()
    {
        string part = Write("part.toml", string.Concat(Enumerable.Range(0, 25).Select(i => $"k{i} = 1\n")));
        Session session = Session.Run("check", Write("s.toml", $"lure = '{part}'\n" + string.Concat(Enumerable.Range(0, 57).Select(i => $"wider{i} = 1\n"))));
        string[] lines = session.Error.TrimEnd('\n').Split('\n');
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Equal(2 * (ScenarioFault.MostTold + 1), lines.Length);
        Assert.Contains(lines, l => Regex.IsMatch(l, @"part\.toml: and \d+ more$"));
        Assert.Contains(lines, l => Regex.IsMatch(l, @"s\.toml: and \d+ more$"));

        string casts = Write("casts.csv", "distance\n" + string.Concat(Enumerable.Repeat("3\n", 57)));
        string[] told = Session.Run("cast", Small, "--match", casts).Error.TrimEnd('\n').Split('\n');
        Assert.Equal((21, $"{casts}: and 37 more"), (told.Length, told[^1]));
    }

    [Fact]
    public void A_key_as_long_as_its_file_does_not_fill_the_screen() =>
        Assert.InRange(Session.Run("check", Write("s.toml", $"{new string('k', 500_000)} = 1\n")).Error.Length, 100, 10_000);

    [Fact]
    public async Task Many_keys_are_read_in_a_moment()
    {
        // A search from the start for each of them would be 4e9 comparisons.
        string text = string.Concat(Enumerable.Range(0, 90_000).Select(i => $"k{i} = 1\n"));
        Assert.InRange(text.Length, 900_000, FileText.MostBytes);
        await Refused(": and ", 21, "check", Write("s.toml", text));
    }

    [Fact]
    public async Task Many_keys_that_resemble_others_are_refused_in_a_moment()
    {
        // The nearest of all keys is looked for only where it is told: for each of these it would take a minute.
        string text = "[rod]\n" + string.Concat(Enumerable.Range(0, 60_000).Select(i => $"lengt{i} = 1\n"));
        await Refused(": and ", 21, "check", Write("s.toml", text));
    }

    [Theory]
    [InlineData("\"a\\u001b[31m\" = 1", "a\\u001B[31m: unknown key")]
    [InlineData("\"a\\nb\" = 1", "a\\u000Ab: unknown key")]
    [InlineData("\"a\\rb\" = 1", "a\\u000Db: unknown key")]
    [InlineData("\"a\\u202eb\" = 1", "a\\u202Eb: unknown key")]
    [InlineData("\"a\\u009bb\" = 1", "a\\u009Bb: unknown key")]
    [InlineData("title = \"\\u001b]0;x\\u0007\"", "title: it holds the control character U+001B")]
    [InlineData("title = \"a\\nb\"", "title: it holds the control character U+000A")]
    [InlineData("title = \"\\u202egpj\"", "title: it holds the control character U+202E")]
    [InlineData("lure = \"\\u001b[2J\"", "\"\\u001B[2J\": there is no such file")]
    public void Nothing_that_steers_a_terminal_reaches_it(string line, string told)
    {
        Session session = Session.Run("check", Write("s.toml", line + $"\nbase = '{Small}'\n"));
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(session.Out + session.Error, c => char.IsControl(c) && c != '\n');
        Assert.All(session.Error.TrimEnd('\n').Split('\n'), l => Assert.Contains(": ", l, StringComparison.Ordinal));
    }

    [Fact]
    public void Names_of_files_options_and_labels_steer_no_terminal()
    {
        string csv = Write("casts.csv", "lure,distance\n\u001b[31m,30 m\n");
        foreach (string[] args in (string[][])[["check", "a\u001b[31m\nb.toml"], ["check", "--\u001b[31m\u202e\n"], ["cast", Small, "--json", "--match", csv], ["sweep", Small, "--vary", "\u001b[31m=1"]])
        {
            Session session = Session.Run(args);
            Assert.Equal(ExitCode.BadInput, session.Exit);
            Assert.DoesNotContain(session.Error, c => c is '\u202e' || (char.IsControl(c) && c != '\n'));
        }
    }

    [Fact]
    public void Scripts_and_emoji_pass()
    {
        Session session = Session.Run("check", Small, "--set", "title=Größe, 釣り, \U0001F41F\u200D\U0001F30A", "--effective");
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains("Größe, 釣り, \U0001F41F\u200D\U0001F30A", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_working_folder_that_is_gone_is_said()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // It cannot be removed there.
        }

        string gone = Directory.CreateDirectory(Path.Combine(_folder, "gone")).FullName, program = typeof(App).Assembly.Location;
        using var process = Process.Start(new ProcessStartInfo("sh", ["-c", $"cd '{gone}' && rmdir '{gone}' && dotnet '{program}' check s.toml"]) { RedirectStandardError = true })!;
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal((ExitCode.BadInput, "s.toml: the working folder does not exist any more\n"), (process.ExitCode, error));
    }

    [Fact]
    public void A_link_is_followed_to_its_file()
    {
        File.CreateSymbolicLink(Path.Combine(_folder, "link.toml"), Small);
        Assert.Equal(ExitCode.Done, Session.Run("check", Path.Combine(_folder, "link.toml")).Exit);
    }

    private static Task<Session> Run(params string[] args) => Task.Run(() => Session.Run(args)).WaitAsync(Patience);

    private static async Task Refused(string told, int lines, params string[] args)
    {
        Session session = await Run(args);
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.Equal((ExitCode.BadInput, "", lines), (session.Exit, session.Out, session.Error.TrimEnd('\n').Split('\n').Length));
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, text, new UTF8Encoding(false));
        return path;
    }

    private string Place(string name)
    {
        string path = Path.Combine(_folder, name);
        if (name.StartsWith("fifo", StringComparison.Ordinal))
        {
            Process.Start("mkfifo", [path]).WaitForExit();
        }
        else if (name == "socket")
        {
            _socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
            _socket.Bind(new UnixDomainSocketEndPoint(path));
        }
        else if (name == "big")
        {
            File.WriteAllText(path, new string('#', FileText.MostBytes + 1));
        }

        return name is "." ? _folder : name.Length == 0 ? name : path;
    }
}
