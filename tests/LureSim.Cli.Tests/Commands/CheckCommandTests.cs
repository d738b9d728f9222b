using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

public sealed class CheckCommandTests
{
    public static TheoryData<string> Shipped()
    {
        var data = new TheoryData<string>();
        string folder = Path.GetDirectoryName(Session.Scenario("large-walker"))!;
        foreach (string file in Directory.GetFiles(folder, "*.toml").Order(StringComparer.Ordinal))
        {
            data.Add(Path.GetFileNameWithoutExtension(file));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Shipped_scenarios_are_valid_and_list_their_guesses(string name)
    {
        Session session = Session.Run("check", Session.Scenario(name));
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("valid;", session.Out, StringComparison.Ordinal);
        Assert.Contains("rod.damping = 0.1 (0.05 to 0.2)", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Effective_prints_a_scenario()
    {
        Session session = Session.Run("check", Session.Scenario("small-walker"), "--effective");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("[leader]", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_end_with_2()
    {
        Session session = Session.Run("check", Session.Scenario("small-walker"), "--set", "lure.mass=900 g");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains("it would sink", session.Error, StringComparison.Ordinal);
    }
}
