using LureSim.Model.Trim;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>How the lure floats and what would change it: a drawing, sentences, the changes that move the walk margin most, errors of building.</summary>
internal static class FloatSection
{
    /// <summary>The section; nothing where no float was asked for.</summary>
    /// <param name="page">Page.</param>
    public static Markup Of(PageContext page) => page.Result.Cases.All(c => c.Design is null && c.DesignFault is null)
        ? default
        : StorySections.Section("float", "How the lure floats, and what would change it", page.Each(c => Told(c, page.Shown)), Key(page));

    private static Markup Told(PageCase c, Shown shown) => c.Design is not DesignReport { Rest: TrimResult rest } report
        ? StorySections.Paragraphs([$"No float was computed: {c.DesignFault ?? "the model gives none"}."])
        : Markup.Of(
            Markup.Tag("div", "drawn", FloatDrawing.Both(rest, HookSizes.Of(c.File.Here), shown)),
            Markup.Tag("div", "beside", StorySections.Paragraphs(FloatWords.Sentences(report, c.Guesses, shown))),
            report.Tolerance is ToleranceTable errors ? Changes(report, errors, shown) : default);

    private static Markup Changes(DesignReport report, ToleranceTable errors, Shown shown) => Markup.Of(
        StorySections.Paragraphs([FloatWords.Ranking(report, shown)]),
        HtmlTable.Of(
            ["", "margin", "turn at one pull", "float angle", "freeboard"],
            [
                ["as it is", .. Cells(report.Own, report.Own, shown)],
                .. FloatWords.Telling(report).Select(r => (Markup[])[DesignWords.Change(r.Change, shown), .. Cells(r.After, report.Own, shown)]),
                ["all errors of building at once", .. Worst(errors, shown)],
            ]));

    // Once for all files: steps and errors are the same for all.
    private static Markup Key(PageContext page)
    {
        PageCase? told = page.Result.Cases.FirstOrDefault(c => c.Design is not null);
        if (told is null)
        {
            return default;
        }

        string command = page.IsMany ? "luresim design FILE" : string.Join(' ', ["luresim design", ShellWord.Of(told.File.Source.Name), .. told.File.Overrides.Select(o => $"--set {ShellWord.Of(o)}")]);
        return Markup.Tag("p", "key", Markup.Prose(told.Design!.Tolerance is not ToleranceTable errors
            ? $"What a change of the lure or an error of building does was left out of this page; `{command}` tells it."
            : $"Small: by how much a change moves it. {FloatWords.Errors(errors, page.Shown)} Steps and errors are choices, and every margin rests on the same chi: compare rows, do not swear by a sign. `{command}` has every change and "
                + "error by itself and the hooks that the lure carries; with `--angle` it says where the weight goes."));
    }

    private static Markup[] Cells(DesignPoint point, DesignPoint own, Shown shown) =>
    [
        Cell(DesignFigures.Margin, point, own, v => Trade.Fixed(v, 2), ""), Cell(DesignFigures.Turn, point, own, v => Trade.Fixed(v, 0), " deg"),
        Cell(DesignFigures.Trim, point, own, v => Trade.Fixed(v, 1), " deg"),
        point.FreeboardM is double m ? HtmlTable.Cell(shown, ShownQuantity.Size, m) : "-",
    ];

    private static Markup Cell(Model.Figure<DesignPoint> figure, DesignPoint point, DesignPoint own, Func<double, string> tell, string unit) =>
        figure.Value(point) is not double value ? "-"
        : HtmlTable.Cell(tell(value) + unit, point != own && figure.Value(own) is double before ? DesignUnits.Signed(value - before, tell) : "");

    private static Markup[] Worst(ToleranceTable errors, Shown shown)
    {
        Markup Range(Model.Figure<DesignPoint> figure, Func<double, double, Markup> tell) =>
            errors.Worst.FirstOrDefault(w => w.Key == figure.Key) is WorstCase w && figure.Value(w.Low) is double low && figure.Value(w.High) is double high ? tell(low, high) : "-";
        return
        [
            Range(DesignFigures.Margin, (a, b) => Between(Trade.Fixed(a, 2), Trade.Fixed(b, 2), "")), "-",
            Range(DesignFigures.Trim, (a, b) => Between(Trade.Fixed(a, 1), Trade.Fixed(b, 1), " deg")),
            Range(DesignFigures.Freeboard, (a, b) => Lengths(shown.Units(ShownQuantity.Size, Math.Max(Math.Abs(a), Math.Abs(b))), a, b)),
        ];
    }

    private static Markup Lengths(ShownUnit[] units, double low, double high)
    {
        string[] told = [.. units.Select(u => $"{u.Digits(low)} to {u.Text(high)}")];
        return HtmlTable.Cell(told[0], told.Length > 1 ? told[1] : "");
    }

    private static Markup Between(string low, string high, string unit) => HtmlTable.Cell(low == high ? low + unit : $"{low} to {high}{unit}", "");
}
