using System.Runtime.CompilerServices;

namespace LureSim.Model.Tests.Library;

/// <summary>The public surface of the model is the one written down, so that a change of it is seen. LURESIM_WRITE_DOCS=1 rewrites the list.
/// That every public member has a doc comment is the compiler's business (CS1591, an error).</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_the_one_written_down()
    {
        string[] now = [.. ApiText.Lines(typeof(RunContext).Assembly)];
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(Listed(), string.Join('\n', now) + "\n");
        }

        Assert.Equal("", Difference(File.ReadAllLines(Listed()), now));
        Assert.Equal(now, File.ReadAllLines(Listed()));
    }

    [Fact]
    public void A_difference_says_what_is_new_and_what_is_gone()
    {
        Assert.Equal("", Difference(["a", "b"], ["a", "b"]));
        Assert.Equal("new: c\ngone: a\n", Difference(["a", "b"], ["b", "c"]));
    }

    [Theory]
    [InlineData("Retrieve.RetrieveRun : sealed class")]
    [InlineData("Retrieve.RetrieveRun.Run(Setup setup, RetrieveTask task, RunContext context = default, Action<RetrieveView>? observer = null) : static Outcome<RetrieveResult>")]
    [InlineData("Retrieve.RetrieveRun.StepRatioLimit : const double = 0.5")]
    [InlineData("Retrieve.RetrieveView : readonly ref struct")]
    [InlineData("Retrieve.RetrieveView.LineXM : ReadOnlySpan<double> { get }")]
    [InlineData("Assembly.Setup.Leader : LeaderSpec? { get; init }")]
    [InlineData("Outcome<T>.Demand() : T")]
    [InlineData("Cast.ReleaseMode.AtAngle = 2")]
    public void The_list_reads_like_this(string line) => Assert.Contains(line, ApiText.Lines(typeof(RunContext).Assembly));

    [Fact]
    public void No_internal_type_is_listed() =>
        Assert.DoesNotContain(ApiText.Lines(typeof(RunContext).Assembly), l => l.Contains("AirStep", StringComparison.Ordinal));

    private static string Difference(IReadOnlyCollection<string> listed, IReadOnlyCollection<string> now) =>
        string.Concat(now.Except(listed).Select(l => $"new: {l}\n").Concat(listed.Except(now).Select(l => $"gone: {l}\n")));

    private static string Listed([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "public-api.txt");
}
