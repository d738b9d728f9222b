using LureSim.Reports.Kit.Files;

namespace LureSim.Reports.Tests.Files;

/// <summary>A set is replaced as a set, whenever the process ends.</summary>
public sealed class SetExchangeTests : IDisposable
{
    private const string List = "luresim.sha256";
    private static readonly string[] Old = ["a.txt", "b.txt", "only-old.txt"], New = ["a.txt", "b.txt", "only-new.txt"];
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-test-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    // An exception that nobody expects ends the exchange where a kill would: nothing is put back, nothing is cleared.
    [Fact]
    public void A_kill_before_any_step_leaves_the_old_set_or_the_new_one_and_never_a_mix()
    {
        int steps = Killed(At("count"), int.MaxValue);
        Assert.Equal(Old.Length + New.Length + 2, steps);
        for (int kill = 0; kill < steps; kill++)
        {
            string path = At("k" + kill);
            Assert.Equal(kill, Killed(path, kill));
            string[] seen = Contents(path);
            Assert.True(seen.All(c => c.StartsWith("old", StringComparison.Ordinal)) || seen.All(c => c.StartsWith("new", StringComparison.Ordinal)), string.Join(' ', seen));

            // The list stands for a whole set.
            Assert.Equal(kill == 0, File.Exists(Path.Combine(path, List)));
            Assert.True(kill > 0 || seen.Length == Old.Length);

            // The next run in the folder ends the exchange, whatever becomes of itself.
            new OutputFolder(path, "test").Dispose();
            Assert.Equal(["new a.txt", "new b.txt", "new only-new.txt"], Contents(path));
            Assert.Equal("mine", File.ReadAllText(Path.Combine(path, "notes")));
            Assert.Equal(["a.txt", "b.txt", List, "notes", "only-new.txt"], Names(path));
        }
    }

    [Fact]
    public void A_kill_while_files_are_staged_leaves_the_old_set_and_is_cleared_by_the_next_run()
    {
        Write(_root, "old", Old);
        Abandon();
        Assert.Equal(["old a.txt", "old b.txt", "old only-old.txt"], Contents(_root));
        Assert.Contains(".luresim-staging", Names(_root));
        new OutputFolder(_root, "test").Dispose();
        Assert.Equal(["a.txt", "b.txt", List, "only-old.txt"], Names(_root));
    }

    [Fact]
    public void Files_of_the_earlier_set_go_with_it_unless_somebody_changed_them()
    {
        Write(_root, "old", [.. Old, "edited.txt"]);
        File.AppendAllText(At("edited.txt"), " by hand");
        File.WriteAllText(At("notes"), "mine");
        Write(_root, "new", New);
        Assert.Equal(["a.txt", "b.txt", "edited.txt", List, "notes", "only-new.txt"], Names(_root));
        Assert.Equal("old edited.txt by hand", File.ReadAllText(At("edited.txt")));
    }

    [Fact]
    public void The_list_is_what_sha256sum_reads()
    {
        Write(_root, "x", ["a.txt"]);
        Assert.Equal($"# luresim test\n{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData("x a.txt"u8))}  a.txt\n", File.ReadAllText(At(List)));
    }

    [Fact]
    public void A_set_of_another_kind_is_refused_before_the_run_and_stays()
    {
        Write(_root, "old", Old);
        var error = Assert.Throws<OutputException>(() => new OutputFolder(_root, "cadence"));
        Assert.Equal($"'{_root}' holds the results of 'test', which those of 'cadence' would mix with: choose another --out, or delete them", error.Message);
        Assert.Equal(["a.txt", "b.txt", List, "only-old.txt"], Names(_root));
    }

    [Fact]
    public void Two_runs_at_once_in_one_folder_are_refused()
    {
        using (var first = new OutputFolder(_root, "test"))
        {
            var error = Assert.Throws<OutputException>(() => new OutputFolder(_root, "test"));
            Assert.StartsWith("another run is writing to", error.Message, StringComparison.Ordinal);
            first.Add("a.txt", "fine"u8.ToArray());
            first.Commit();
        }

        Assert.Equal(["a.txt", List], Names(_root));
    }

    [Fact]
    public void A_list_that_leads_out_of_its_folder_is_not_believed()
    {
        string outside = At("outside.txt"), inside = At("in");
        File.WriteAllText(outside, "precious");
        Directory.CreateDirectory(inside);
        string hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData("precious"u8));
        File.WriteAllText(Path.Combine(inside, List), $"# luresim test\n{hash}  ../outside.txt\n");
        Write(inside, "new", New);
        Assert.Equal("precious", File.ReadAllText(outside));
    }

    [Fact]
    public void A_staging_folder_that_is_a_link_is_refused()
    {
        string target = Directory.CreateDirectory(At("target")).FullName, inside = Directory.CreateDirectory(At("in")).FullName;
        Directory.CreateDirectory(Path.Combine(target, "new"));
        Directory.CreateSymbolicLink(Path.Combine(inside, ".luresim-staging"), target);
        Assert.Contains("is a link", Assert.Throws<OutputException>(() => new OutputFolder(inside, "test")).Message, StringComparison.Ordinal);
        Assert.True(Directory.Exists(Path.Combine(target, "new")));
    }

    [Fact]
    public void A_wish_to_stop_ends_the_writing_and_leaves_the_old_set()
    {
        Write(_root, "old", Old);
        using var stop = new CancellationTokenSource();
        using (var folder = new OutputFolder(_root, "test", stop.Token))
        {
            folder.Add("a.txt", "new"u8.ToArray());
            stop.Cancel();
            Assert.Throws<OperationCanceledException>(() => folder.Add("b.txt", "new"u8.ToArray()));
            Assert.Throws<OperationCanceledException>(folder.Commit);
        }

        Assert.Equal(["old a.txt", "old b.txt", "old only-old.txt"], Contents(_root));
        Assert.Equal(["a.txt", "b.txt", List, "only-old.txt"], Names(_root));
    }

    [Fact]
    public void Folders_made_for_a_run_that_gave_nothing_are_gone()
    {
        new OutputFolder(Path.Combine(_root, "a", "b", "c"), "test").Dispose();
        Assert.Empty(Names(_root));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a\0b")]
    public void A_name_that_no_folder_can_have_is_refused(string path) =>
        Assert.StartsWith("--out: ", Assert.Throws<OutputException>(() => new OutputFolder(path, "test")).Message, StringComparison.Ordinal);

    private string At(string name) => Path.Combine(_root, name);

    /// <summary>An old set, then a new one up to a step; how many steps were taken.</summary>
    private static int Killed(string path, int before)
    {
        Write(path, "old", Old);
        File.WriteAllText(Path.Combine(path, "notes"), "mine");
        int steps = 0;
        var folder = new OutputFolder(path, "test")
        {
            Step = _ =>
            {
                if (steps == before)
                {
                    throw new KillException();
                }

                steps++;
            },
        };
        Fill(folder, "new", New);
        try
        {
            folder.Commit();
        }
        catch (KillException)
        {
            FreeLock(path);
        }

        return steps;
    }

    private void Abandon()
    {
        var folder = new OutputFolder(_root, "test");
        Fill(folder, "new", New);
        FreeLock(_root);
    }

    // A killed process frees its lock; here it lies under another name for as long as the object lives.
    private static void FreeLock(string path)
    {
        string staging = Path.Combine(path, ".luresim-staging");
        File.Move(Path.Combine(staging, "lock"), Path.Combine(staging, "lock-of-a-killed-run"));
        File.Delete(Path.Combine(staging, "lock-of-a-killed-run"));
    }

    private static void Write(string path, string content, string[] names)
    {
        using var folder = new OutputFolder(path, "test");
        Fill(folder, content, names);
        folder.Commit();
    }

    private static void Fill(OutputFolder folder, string content, string[] names)
    {
        foreach (string name in names)
        {
            folder.Add(name, System.Text.Encoding.UTF8.GetBytes($"{content} {name}"));
        }
    }

    private static string[] Contents(string path) => [.. Directory.GetFiles(path, "*.txt").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    private static IEnumerable<string> Names(string path) =>
        Directory.EnumerateFileSystemEntries(path).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal);

    private sealed class KillException : Exception;
}
