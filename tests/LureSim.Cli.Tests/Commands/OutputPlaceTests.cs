using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

/// <summary>Where results go, and what is found out before a run.</summary>
public sealed class OutputPlaceTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void Every_command_has_a_folder_of_its_own()
    {
        string quick = "--quiet --plots none --set 'retrieve.duration=0.5 s'";
        Session session = BuiltProgram.Shell(
            $"{BuiltProgram.Line} trim {Small} {quick} && {BuiltProgram.Line} retrieve {Small} {quick} && {BuiltProgram.Line} sweep {Small} {quick} --vary 'retrieve.cadence=1 /s'", _root);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        string own = Path.Combine(_root, "out", "small-walker");
        Assert.Equal(["retrieve", "sweep", "trim"], Directory.GetDirectories(own).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.True(File.Exists(Path.Combine(own, "retrieve", "summary.json")));
        Assert.True(File.Exists(Path.Combine(own, "sweep", "sweep.csv")));
        Assert.Equal(["trim"], Directory.GetDirectories(_root, "trim", SearchOption.AllDirectories).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("retrieve")]
    [InlineData("cadence")]
    [InlineData("cast")]
    [InlineData("sweep", "--vary", "retrieve.cadence=1 /s,2 /s")]
    public void A_folder_with_the_results_of_another_command_is_refused_before_the_run(string command, params string[] options)
    {
        string folder = Path.Combine(_root, "shared");
        Assert.Equal(ExitCode.Done, Session.Run("trim", Small, "--plots", "none", "--quiet", "--out", folder).Exit);
        string[] before = Directory.GetFileSystemEntries(folder);
        Session session = Session.Run([command, Small, .. options, "--out", folder]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Equal($"'{folder}' holds the results of 'trim', which those of '{command}' would mix with: choose another --out, or delete them\n", session.Error);
        Assert.Equal(before, Directory.GetFileSystemEntries(folder));
    }

    // A study of minutes: with a check at its end it would be stopped long before.
    [Theory]
    [InlineData("cadence", "--map")]
    [InlineData("cadence", "--across", "retrieve.distance=5 m:40 m:50")]
    [InlineData("cast", "--doubt", "2000")]
    [InlineData("cast", "--across", "rod.length=6 ft:8 ft:30")]
    [InlineData("retrieve", "--doubt", "2000")]
    [InlineData("sweep", "--vary", "retrieve.cadence=1 /s:3 /s:2000")]
    public void A_place_that_cannot_be_written_is_found_before_the_run(string command, params string[] options)
    {
        string file = Path.Combine(_root, "file");
        File.WriteAllText(file, "no folder");
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(15));
        Session session = Session.Run(stop.Token, [command, Small, .. options, "--out", Path.Combine(file, "sub")]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.StartsWith($"cannot write to '{Path.Combine(file, "sub")}': ", session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
        Assert.Equal([file], Directory.GetFileSystemEntries(_root));
    }

    [Fact]
    public void An_empty_name_is_refused()
    {
        Session session = Session.Run("trim", Small, "--out", "");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.StartsWith("--out: ", session.Error, StringComparison.Ordinal);
    }
}
