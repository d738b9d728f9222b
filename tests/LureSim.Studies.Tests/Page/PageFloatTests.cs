using LureSim.Model.Margin;
using LureSim.Studies.Design;
using LureSim.Studies.Page;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Page;

/// <summary>What a page tells of a float is what <c>design</c> tells.</summary>
public sealed class PageFloatTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_page_tells_the_float_and_margin_of_design(bool withChanges)
    {
        var file = new PageFile(Shipped.File("small-walker.toml"), []);
        DesignReport told = PageFloat.Of(file, withChanges, default).Report!, design = DesignStudy.Run(file.Here, null, new MarginTask(), 1, default);
        Assert.Equal((design.Own.SheddingMargin, design.Own.PullTurnDeg, design.Rest!.FreeboardM), (told.Own.SheddingMargin, told.Own.PullTurnDeg, told.Rest!.FreeboardM));
        Assert.Equal(withChanges ? design.Changes.Select(c => c.MarginMove) : [], told.Changes.Select(c => c.MarginMove));
        Assert.Equal(withChanges, told.Tolerance is not null);
        Assert.Empty(told.Hooks);
    }
}
