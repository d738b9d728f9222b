using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Files;

public sealed class OutputFolderTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("luresim-test-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_committed_set_is_there_and_nothing_else()
    {
        string path = Path.Combine(_root, "a", "b");
        using (var folder = new OutputFolder(path, "test"))
        {
            folder.Add("x.txt", "one"u8.ToArray());
            folder.Add("y.txt", "two"u8.ToArray());
            Assert.Empty(Directory.EnumerateFiles(path));
            folder.Commit();
        }

        Assert.Equal(["luresim.sha256", "x.txt", "y.txt"], Names(path));
        Assert.Equal("two", File.ReadAllText(Path.Combine(path, "y.txt")));
    }

    [Fact]
    public void An_uncommitted_set_leaves_no_trace()
    {
        string path = Path.Combine(_root, "new");
        using (var folder = new OutputFolder(path, "test"))
        {
            folder.Add("x.txt", "one"u8.ToArray());
        }

        Assert.False(Directory.Exists(path));
        File.WriteAllText(Path.Combine(_root, "x.txt"), "old");
        using (var folder = new OutputFolder(_root, "test"))
        {
            folder.Add("x.txt", "new"u8.ToArray());
        }

        Assert.Equal(["x.txt"], Names(_root));
        Assert.Equal("old", File.ReadAllText(Path.Combine(_root, "x.txt")));
    }

    [Fact]
    public void Files_of_the_same_name_are_replaced() => Assert.Equal("new", Rewrite("x.txt"));

    [Fact]
    public void A_set_that_cannot_be_moved_whole_puts_the_old_files_back()
    {
        File.WriteAllText(Path.Combine(_root, "x.txt"), "old");
        // A folder of the name of the second file makes its move fail after the first has been made.
        Directory.CreateDirectory(Path.Combine(_root, "y.txt"));
        using (var folder = new OutputFolder(_root, "test"))
        {
            folder.Add("x.txt", "new"u8.ToArray());
            folder.Add("y.txt", "new"u8.ToArray());
            var error = Assert.Throws<OutputException>(folder.Commit);
            Assert.StartsWith($"cannot write to '{Path.Combine(_root, "y.txt")}': ", error.Message, StringComparison.Ordinal);
        }

        Assert.Equal("old", File.ReadAllText(Path.Combine(_root, "x.txt")));
        Assert.Equal(["x.txt", "y.txt"], Names(_root));
    }

    // The staged file is gone when its turn comes, after the old one has been moved aside.
    [Fact]
    public void A_file_whose_new_content_is_lost_keeps_its_old_one()
    {
        File.WriteAllText(Path.Combine(_root, "x.txt"), "old");
        File.WriteAllText(Path.Combine(_root, "y.txt"), "old y");
        using (var folder = new OutputFolder(_root, "test"))
        {
            folder.Add("x.txt", "new"u8.ToArray());
            folder.Add("y.txt", "new"u8.ToArray());
            File.Delete(Assert.Single(Directory.GetFiles(Assert.Single(Directory.GetDirectories(_root)), "y.txt", SearchOption.AllDirectories)));
            Assert.Throws<OutputException>(folder.Commit);
        }

        Assert.Equal("old", File.ReadAllText(Path.Combine(_root, "x.txt")));
        Assert.Equal("old y", File.ReadAllText(Path.Combine(_root, "y.txt")));
        Assert.Equal(["x.txt", "y.txt"], Names(_root));
    }

    [Fact]
    public void A_committed_set_of_nothing_leaves_its_new_folder()
    {
        string path = Path.Combine(_root, "empty");
        using (var folder = new OutputFolder(path, "test"))
        {
            folder.Commit();
        }

        Assert.True(Directory.Exists(path));
        Assert.Equal(["luresim.sha256"], Names(path));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_one_clear_line()
    {
        string file = Path.Combine(_root, "file");
        File.WriteAllText(file, "not a folder");
        var error = Assert.Throws<OutputException>(() => new OutputFolder(Path.Combine(file, "sub"), "test"));
        Assert.StartsWith("cannot write to '", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Fact]
    public void A_writer_that_breaks_leaves_no_file_behind()
    {
        string path = Path.Combine(_root, "new");
        Assert.Throws<OutputException>(() =>
        {
            using var folder = new OutputFolder(path, "test");
            folder.Add("a.txt", "fine"u8.ToArray());
            folder.Add("b.txt", _ => throw new IOException("disk full\nsecond line"));
            folder.Commit();
        });
        Assert.False(Directory.Exists(path));
    }

    [Fact]
    public void A_retrieve_writes_its_whole_set()
    {
        using var folder = new OutputFolder(_root, "retrieve");
        RetrieveFiles.Write(folder, MadeUpRetrieve.Result(), "[rod]\n", RunNotes.None, LureSim.Reports.Kit.Drawing.PlotFormat.Svg);
        Assert.Equal(
            ["attitude_side.svg", "attitude_time.svg", "effective.toml", "loads.svg", "luresim.sha256", "path_top.svg", "pull_slack_turn.svg", "series.csv", "side_view.svg", "summary.json", "walk.svg"],
            Names(_root));
    }

    private string Rewrite(string name)
    {
        string target = Path.Combine(_root, name);
        File.WriteAllText(target, "old");
        using var folder = new OutputFolder(_root, "test");
        folder.Add(name, "new"u8.ToArray());
        folder.Commit();
        return File.ReadAllText(target);
    }

    private static IEnumerable<string> Names(string path) =>
        Directory.EnumerateFileSystemEntries(path).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal);
}
