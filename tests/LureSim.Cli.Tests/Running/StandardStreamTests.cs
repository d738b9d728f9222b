using System.Text;
using LureSim.Cli.Tests.Support;
using LureSim.Reports.Sweep;

namespace LureSim.Cli.Tests.Running;

/// <summary>stdout or stderr that is closed, full, or read by nobody.</summary>
public sealed class StandardStreamTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Theory]
    [InlineData(">/dev/full", "cannot write to 'standard output': No space left on device\n")]
    [InlineData(">&-", "cannot write to 'standard output': it is closed\n")]
    public void Results_that_cannot_be_told_are_one_line_and_the_files_are_whole(string how, string line)
    {
        Session session = BuiltProgram.Shell($"{BuiltProgram.Line} trim {Small} --plots none --out {_root}/t {how}");
        Assert.Equal((ExitCode.BadInput, line), (session.Exit, session.Error));
        Assert.True(File.Exists(Path.Combine(_root, "t", "luresim.sha256")));
    }

    [Theory]
    [InlineData("2>/dev/full")]
    [InlineData("2>&-")]
    public void A_message_that_cannot_be_told_changes_no_exit_code(string how) =>
        Assert.Equal(ExitCode.BadInput, BuiltProgram.Shell($"{BuiltProgram.Line} check no-such-file.toml {how}").Exit);

    [Fact]
    public void A_reader_that_has_seen_enough_ends_nothing()
    {
        Session session = BuiltProgram.Shell($"set -o pipefail; {BuiltProgram.Line} check {Small} --effective | head -1");
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Single(session.Out.TrimEnd('\n').Split('\n'));
    }

    // The number of a closed stream goes to the next file that is opened; what is printed must not end there.
    [Fact]
    public void Closed_streams_print_into_no_file()
    {
        string folder = Path.Combine(_root, "s");
        Session session = BuiltProgram.Shell(
            $"{BuiltProgram.Line} sweep {Small} --vary 'retrieve.cadence=1 /s,2 /s' --vary lure.mass=10g,30g --set 'retrieve.duration=0.5 s' --set 'rod.length=7 ft' --out {folder} <&- >&- 2>&-");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Journal journal = Journal.Read(Path.Combine(folder, "sweep.journal"))!;
        Assert.Equal((4, 0), (journal.DoneCount, journal.DamagedCount));
        Assert.DoesNotContain("Sweep of", File.ReadAllText(Path.Combine(folder, "effective.toml")) + File.ReadAllText(Path.Combine(folder, "sweep.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Help_on_a_full_disk_is_one_line_too()
    {
        using var error = new StringWriter();
        Assert.Equal(ExitCode.BadInput, App.Run(["--help"], new Terminal(new FullWriter(), error, false)));
        Assert.Equal("cannot write to 'standard output': full\n", error.ToString());
    }

    [Fact]
    public void Faults_without_a_place_to_tell_them_keep_their_exit_code() =>
        Assert.Equal(ExitCode.BadInput, App.Run(["nonsense"], new Terminal(new FullWriter(), new FullWriter(), false)));

    private sealed class FullWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("full");
    }
}
