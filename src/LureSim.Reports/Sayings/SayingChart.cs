using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Sayings;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Sayings;

/// <summary>A saying in pictures, one for each test: a row for each place with its number, its band, and where the saying would be true.</summary>
public static class SayingChart
{
    private const double Half = 0.36, WordsWidth = 330, Margin = 0.08;
    private static readonly OxyColor True = ChartStyle.Pale(ChartStyle.Green, 0.3);

    /// <summary>Builds the pictures of a saying; a test without a number has none.</summary>
    /// <param name="result">What came out.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<Chart> Build(SayingResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        int number = 0;
        foreach (IGrouping<SayingTest, TrialResult> test in result.Trials.GroupBy(t => t.Trial.Test))
        {
            string name = $"saying_{result.Saying.Name}{(++number > 1 ? FormattableString.Invariant($"_{number}") : "")}";
            if (test.Any(t => t.Numbers.Count > 0))
            {
                yield return Build(name, result, [.. test], new(shown));
            }
        }
    }

    private static Chart Build(string name, SayingResult result, TrialResult[] places, SayingNumbers numbers)
    {
        ReadyTrial trial = places[0].Trial;
        ShownUnit unit = numbers.Unit(places);
        string[] labels = [.. places.Select(p => p.Trial.Place.Name.Length > 0 ? p.Trial.Place.Name : "as it stands")];
        PlotModel model = ChartStyle.NewModel($"\"{result.Saying.Says.TrimEnd('.')}\": {SayingWords.Verdict(result.Verdict)}", $"{Trade.Capital(SayingWords.Figure(trial))}; true would be: {SayingWords.Claim(trial)}; beside the rows the draws in which it is");
        int height = SetUpRows.Height(labels.Length);
        CategoryAxis names = SetUpRows.Axis(labels);
        var panels = new Panels(model, height, [names]);
        (double low, double high) = Ends(places, unit);
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, Title(places[0], unit), low, high);
        axis.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(axis);
        for (int i = 0; i < places.Length; i++)
        {
            Row(panels, labels.Length - 1 - i, places[i], unit, (low, high), numbers);
        }

        if (places[0].IsDifference)
        {
            panels.Line(0, [0.0, 0.0], [-0.5, labels.Length - 0.5], Looks.Reference);
        }

        panels.Header(0, string.Empty, new HeaderEntry("the saying would be true here", True, Swatch.Box), new HeaderEntry("8 of 10 draws of the guesses", ChartStyle.Blue), new HeaderEntry("middle draw", ChartStyle.Ink, Swatch.Dot));
        return new(name, model, Height: height);
    }

    private static void Row(Panels panels, int row, TrialResult place, ShownUnit unit, (double Low, double High) ends, SayingNumbers numbers)
    {
        (double from, double to) = Region(place);
        SetUpRows.Box(panels, Math.Max(ends.Low, unit.Of(from)), Math.Min(ends.High, unit.Of(to)), row, Half, True);
        if (!double.IsNaN(place.Number))
        {
            double low = double.IsNaN(place.Band.Low) ? place.Number : place.Band.Low, high = double.IsNaN(place.Band.High) ? place.Number : place.Band.High;
            panels.Line(0, [unit.Of(low), unit.Of(high)], [row, row], ChartStyle.Blue, 10);
            SetUpRows.Dot(panels, unit.Of(place.Number), row, ChartStyle.Ink);
        }

        SetUpRows.Beside(panels, ends.High, row, $"{SayingWords.Word(place.Word)}, {SayingWords.Share(place.Chance)}", -1);
        SetUpRows.Beside(panels, ends.High, row, numbers.WithBand(place), 1);
    }

    // Where the number would make the claim true; of a list the first step to the last alone.
    private static (double From, double To) Region(TrialResult place)
    {
        Claim claim = place.Trial.Test.Claim;
        double notice = place.IsDifference ? claim.Notice(place.Side(0)) : 0.0;
        return claim.Kind switch
        {
            ClaimKind.Higher or ClaimKind.Rises => (notice, double.PositiveInfinity),
            ClaimKind.Lower or ClaimKind.Falls => (double.NegativeInfinity, -notice),
            ClaimKind.NoDifference => (-notice, notice),
            ClaimKind.AtLeast => (claim.Limit, double.PositiveInfinity),
            _ => (double.NegativeInfinity, claim.Limit),
        };
    }

    private static (double Low, double High) Ends(TrialResult[] places, ShownUnit unit)
    {
        double[] all =
        [
            .. places.SelectMany(p => new[] { p.Number, p.Band.Low, p.Band.High, Region(p).From, Region(p).To }).Append(0.0).Where(double.IsFinite).Select(unit.Of),
        ];
        double low = all.Min(), high = all.Max(), margin = Margin * Math.Max(high - low, 1e-9);
        return (low - margin, high + margin);
    }

    private static string Title(TrialResult place, ShownUnit unit)
    {
        IReadOnlyList<SayingSide> sides = place.Trial.Test.Sides;
        string name = unit.Name.Length > 0 ? $", {unit.Name}" : "";
        return place.IsDifference ? $"{Trade.Capital(sides[^1].Name)} less {sides[0].Name}{name}" : $"{Trade.Capital(SayingWords.Figure(place.Trial))}{name}";
    }
}
