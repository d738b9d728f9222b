using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

public sealed class SweepLayoutTests
{
    private static readonly SweepLayout Doubtful = new(["a", "b"], ["guess.c"], ["pattern"], ["x", "y"], 10);

    [Fact]
    public void Columns_follow_the_groups()
    {
        Assert.Equal("index,point,sample,a,b,guess.c,status,reason,pattern,x,y", Doubtful.Header);
        Assert.Equal("23,2,3,1,2,0.5,done,,still,0.1,-3", Doubtful.Line(23, new(["1", "2", "0.5"], SweepRow.Done, "", ["still"], [0.1, -3.0])));
        Assert.Equal("status", CsvLine.Split(Doubtful.Header)[Doubtful.StatusColumn]);
    }

    [Fact]
    public void A_failed_run_is_a_row_with_its_reason() => Assert.Equal(
        "7,2.1,nylon,failed,\"no float, it sinks\",,",
        SweepFolder.Layout.Line(7, new(["2.1", "nylon"], SweepRow.Failed, "no float,\tit sinks", [], [])));

    [Fact]
    public void A_row_that_does_not_fit_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Doubtful.Line(0, new(["1"], SweepRow.Done, "", ["still"], [1, 2])));
        Assert.Throws<ArgumentException>(() => Doubtful.Line(0, new(["1", "2", "3"], SweepRow.Done, "", ["still"], [1])));
    }

    [Fact]
    public void Counts_and_header_make_the_layout_again()
    {
        SweepLayout again = SweepLayout.TryParse(Doubtful.Counts, Doubtful.Header)!;
        Assert.Equal((Doubtful.Header, Doubtful.Counts), (again.Header, again.Counts));
    }

    [Theory]
    [InlineData("3,1,1,2,10")]
    [InlineData("")]
    [InlineData("2,1,1,2,0")]
    [InlineData("2,1,1,2")]
    [InlineData("2,1,1,x,10")]
    [InlineData("-2,1,1,2,10")]
    [InlineData("2147483647,2147483647,4,2,10")]
    public void Counts_that_do_not_fit_make_none(string counts) => Assert.Null(SweepLayout.TryParse(counts, Doubtful.Header));

    [Theory]
    [InlineData("plain")]
    [InlineData("")]
    [InlineData("7'6\"")]
    [InlineData("a,b")]
    [InlineData("\"")]
    public void Cells_come_back(string cell) => Assert.Equal(["x", cell, "y"], CsvLine.Split(CsvLine.Join(["x", cell, "y"])));

    [Fact]
    public void Breaks_become_blanks() => Assert.Equal("a b c", CsvLine.Join(["a\nb\tc"]));
}
