using LureSim.Studies.Sweep;

namespace LureSim.Studies.Tests.Sweep;

public sealed class CsvLineTests
{
    [Theory]
    [InlineData("=1+2", "'=1+2")]
    [InlineData("+cmd", "'+cmd")]
    [InlineData("-3 m", "'-3 m")]
    [InlineData("@sum(a)", "'@sum(a)")]
    [InlineData("\ttab", "' tab")]
    [InlineData("\r=1", "' =1")]
    [InlineData("=1,\"2\"", "\"'=1,\"\"2\"\"\"")]
    [InlineData("-3.5e-07", "-3.5e-07")]
    [InlineData("+4", "+4")]
    [InlineData("a=1", "a=1")]
    [InlineData("", "")]
    public void A_text_that_would_be_a_formula_gets_an_apostrophe_and_a_number_none(string cell, string line) => Assert.Equal(line, CsvLine.Join([cell]));

    [Fact]
    public void A_cell_that_was_read_back_is_written_the_same()
    {
        string line = CsvLine.Join(["=1", "-2", "x, \"y\""]);
        Assert.Equal(line, CsvLine.Join(CsvLine.Split(line)));
        Assert.Equal("'=1,-2,\"x, \"\"y\"\"\"", line);
    }
}
