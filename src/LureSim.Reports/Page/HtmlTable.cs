using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Page;

/// <summary>Tables of a page: on a narrow screen each row becomes a small list, for which every cell knows the name of its column.</summary>
internal static class HtmlTable
{
    /// <summary>A table; the first cell of a row is its name.</summary>
    /// <param name="heads">Names of the columns.</param>
    /// <param name="rows">Rows, as long as the heads.</param>
    public static Markup Of(IReadOnlyList<Markup> heads, IReadOnlyList<Markup[]> rows) => Markup.Tag("table", "", [
        Markup.Tag("thead", "", [Markup.Tag("tr", "", [.. heads.Select(h => Markup.Tag("th", [("scope", "col")], h))])]),
        Markup.Tag("tbody", "", [.. rows.Select(r => Markup.Tag("tr", "", [
            Markup.Tag("th", [("scope", "row")], r[0]),
            .. r.Skip(1).Select((cell, i) => Markup.Tag("td", "", Markup.Tag("span", [("class", "head"), ("aria-hidden", "true")], heads[i + 1]), cell))]))])]);

    /// <summary>A value: the first unit bold, the other below.</summary>
    /// <param name="shown">Units.</param>
    /// <param name="quantity">What it is.</param>
    /// <param name="si">Value, SI.</param>
    public static Markup Cell(Shown shown, ShownQuantity quantity, double si)
    {
        TableRow row = shown.Row("", quantity, si);
        return Cell(row.First, row.Second);
    }

    /// <summary>A value with a second line.</summary>
    /// <param name="first">Bold.</param>
    /// <param name="second">Below; may be empty.</param>
    public static Markup Cell(string first, string second) => Markup.Of(Markup.Tag("b", "", first), second.Length > 0 ? Markup.Tag("small", "", second) : default);
}
