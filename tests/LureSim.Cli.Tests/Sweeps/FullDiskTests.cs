using LureSim.Cli.Tests.Support;
using LureSim.Reports.Sweep;

namespace LureSim.Cli.Tests.Sweeps;

/// <summary>Journals that cannot grow, cannot be read, or come from another kind of machine.</summary>
public sealed class FullDiskTests(SweepFixture fixture) : IClassFixture<SweepFixture>
{
    private const string Another = "another machine";

    // A limit on the size of files ends a journal as a full disk does, and needs no disk.
    [Fact]
    public void A_sweep_that_runs_out_of_room_keeps_what_is_done_and_can_go_on()
    {
        string folder = fixture.NewFolder();
        string arguments = string.Join(' ', SweepFixture.Arguments(folder).Select(a => $"'{a}'"));
        Session session = BuiltProgram.Shell($"trap '' XFSZ; ulimit -f 40; export DOTNET_EnableWriteXorExecute=0; {BuiltProgram.Line} {arguments} --threads 2");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Matches(
            @"^cannot write to '.*sweep\.journal': .*; \d+ of 500 runs are kept there: make room, then the same command with --resume goes on\n$", session.Error);
        Journal journal = Journal.Read(Path.Combine(folder, "sweep.journal"))!;
        Assert.InRange(journal.DoneCount, 1, SweepFixture.Runs - 1);
        Assert.Contains($"; {journal.DoneCount} of 500", session.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "sweep.csv")));
        Assert.Equal(ExitCode.Done, Session.Run([.. SweepFixture.Arguments(folder), "--resume"]).Exit);
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));
    }

    [Fact]
    public void Rows_of_another_machine_are_gone_on_with_only_if_told()
    {
        string folder = fixture.NewFolder();
        Rewrite(folder, "sweep.journal", Another, i => i < 490);
        Session refused = Session.Run([.. SweepFixture.Arguments(folder), "--resume"]);
        Assert.Equal(ExitCode.BadInput, refused.Exit);
        Assert.Equal(
            $"rows come from 2 kinds of machines, whose last digits may differ: {Another} | {MachineMaths.Here}; --mix-machines takes them all the same\n", refused.Error);
        Session told = Session.Run([.. SweepFixture.Arguments(folder), "--resume", "--mix-machines"]);
        Assert.Equal(ExitCode.Done, told.Exit);
        Assert.StartsWith("note: rows come from 2 kinds of machines", told.Error, StringComparison.Ordinal);
        Assert.Equal([Another, MachineMaths.Here], Journal.Read(Path.Combine(folder, "sweep.journal"))!.Machines);
    }

    [Fact]
    public void A_mixed_journal_is_merged_only_if_told()
    {
        string folder = fixture.NewFolder();
        Rewrite(folder, "sweep.journal", Another, i => i < 490);
        Session.Run([.. SweepFixture.Arguments(folder), "--resume", "--mix-machines"]);
        File.Delete(Path.Combine(folder, "sweep.csv"));
        Session refused = Session.Run("sweep", "merge", folder);
        Assert.Equal(ExitCode.BadInput, refused.Exit);
        Assert.Contains("rows come from 2 kinds of machines", refused.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "sweep.csv")));
        Assert.Equal(ExitCode.Done, Session.Run("sweep", "merge", folder, "--mix-machines", "--quiet").Exit);
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));
    }

    [Fact]
    public void Parts_of_one_other_machine_merge_without_a_word()
    {
        string folder = fixture.NewFolder();
        Rewrite(folder, "sweep.journal", Another, _ => true);
        Session merged = Session.Run("sweep", "merge", folder, "--quiet");
        Assert.Equal((ExitCode.Done, ""), (merged.Exit, merged.Error));
        Assert.Equal(fixture.Table, SweepFixture.TableIn(folder));
    }

    [Fact]
    public void Merging_keeps_the_scenario_that_the_parts_began_with()
    {
        string folder = fixture.NewFolder();
        Assert.Equal(ExitCode.Done, Session.Run([.. SweepFixture.Arguments(folder), "--shard", "1/1"]).Exit);
        string scenario = File.ReadAllText(Path.Combine(folder, "effective.toml"));
        Assert.Equal(ExitCode.Done, Session.Run("sweep", "merge", folder, "--quiet").Exit);
        Assert.Equal(scenario, File.ReadAllText(Path.Combine(folder, "effective.toml")));
    }

    [Fact]
    public void A_folder_that_cannot_be_read_is_one_line()
    {
        string folder = fixture.NewFolder();

        // The superuser may read everything, so a process of his becomes nobody first.
        string drop = Environment.IsPrivilegedProcess ? "setpriv --reuid=65534 --regid=65534 --clear-groups" : "";
        Session session = BuiltProgram.Shell($"mkdir -m 000 {folder}; chmod o+rx {Path.GetDirectoryName(folder)}; {drop} {BuiltProgram.Line} sweep merge {folder}", "/");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Matches($"^cannot read '{folder}': .*denied.*\n$", session.Error);
    }

    [Theory]
    [InlineData("/dev/zero")]
    [InlineData("/dev/null")]
    public void A_device_is_no_part(string device)
    {
        Session session = Session.Run("sweep", "merge", device);
        Assert.Equal((ExitCode.BadInput, $"'{device}' is missing, empty, or no file; a journal of a sweep is due\n"), (session.Exit, session.Error));
    }

    private void Rewrite(string folder, string name, string machine, Func<int, bool> keeps)
    {
        Directory.CreateDirectory(folder);
        Journal whole = Journal.Read(Path.Combine(fixture.At("whole"), "sweep.journal"))!;
        using JournalWriter writer = JournalWriter.Start(Path.Combine(folder, name), whole.Header, machine);
        string[] rows = [.. SweepTable.Join([whole]).Rows()];
        foreach (string row in rows.Where((_, i) => keeps(i)))
        {
            writer.Write(row);
        }
    }
}
