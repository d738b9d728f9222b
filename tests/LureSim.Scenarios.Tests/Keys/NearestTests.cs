using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests.Keys;

public class NearestTests
{
    [Theory]
    [InlineData("length", "length", 0)]
    [InlineData("lenght", "length", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    public void Distance_counts_edits(string a, string b, int edits) => Assert.Equal(edits, Nearest.Distance(a, b));

    [Fact]
    public void Nothing_near_is_null() => Assert.Null(Nearest.Of("zzzzzz", ["rod", "reel"]));
}
