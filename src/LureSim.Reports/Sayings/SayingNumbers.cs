using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Sayings;

/// <summary>Numbers of a saying in units for people; shares in per cent, their differences in points.</summary>
/// <param name="shown">Units.</param>
internal sealed class SayingNumbers(Shown shown)
{
    private const int MostMoved = 3;

    /// <summary>Middle over the draws of all places of the saying's first test, with the band of eight in ten of them: "+1.9 m (1.2 to 2.5)".</summary>
    public string Overall(SayingResult result)
    {
        TrialResult[] first = [.. result.Trials.Where(t => t.Trial.Test == result.Trials[0].Trial.Test)];
        double[] all = [.. first.SelectMany(t => t.Numbers)];
        return all.Length == 0 ? "-" : WithBand(first[0], first[0].Middle(all), Spread.Of(all), Unit(first));
    }

    /// <summary>The number of a place with its band.</summary>
    public string WithBand(TrialResult trial) => double.IsNaN(trial.Number) ? "-" : WithBand(trial, trial.Number, trial.Band, Unit([trial]));

    /// <summary>The middle of a side.</summary>
    public string Side(TrialResult trial, int side) => double.IsNaN(trial.Side(side)) ? "-" : Unit([trial]).Text(trial.Side(side));

    /// <summary>The unit of a test over its places: one in which every side can be told.</summary>
    public ShownUnit Unit(IReadOnlyList<TrialResult> places)
    {
        double largest = places.SelectMany(p => Enumerable.Range(0, p.Trial.Test.Sides.Count).Select(p.Side).Append(p.Number)).Where(double.IsFinite).Select(Math.Abs).DefaultIfEmpty(0.0).Max();
        return places[0].Trial.Test.IsOfWords ? Percent : Fine(UnitOf(places[0].Trial.Figure, largest), largest);
    }

    /// <summary>The figures that moved most, of those whose digits tell it: "mean slack 0.4 to 5.0 cm".</summary>
    public IEnumerable<string> Moved(TrialResult trial) => trial.Moved.Select(m => (Moved: m, Unit: UnitOf(m.Figure, Math.Max(Math.Abs(m.From), Math.Abs(m.To)))))
        .Where(m => m.Unit.Digits(m.Moved.From) != m.Unit.Digits(m.Moved.To)).Take(MostMoved)
        .Select(m => $"{SayingWords.Words(trial.Trial, m.Moved.Figure)} {m.Unit.Digits(m.Moved.From)} to {m.Unit.Text(m.Moved.To)}");

    private static ShownUnit Percent => new("%", 0.01, 0);

    private ShownUnit UnitOf(string figure, double largest) =>
        figure.EndsWith("_share", StringComparison.Ordinal) ? Percent : FigureUnit.Of(shown.OneFamily, figure, largest)[0];

    // A number too small for the decimals of its unit gets two digits all the same: a place tells a value, and "0 to 0 g" none.
    private static ShownUnit Fine(ShownUnit unit, double largest) => largest > 0.0 && unit.Of(largest) < 1.0
        ? unit with { MostPlaces = Math.Max(unit.MostPlaces, Math.Min(15, 1 - (int)Math.Floor(Math.Log10(unit.Of(largest))))) }
        : unit;

    private static string WithBand(TrialResult trial, double number, Spread band, ShownUnit unit)
    {
        double low = double.IsNaN(band.Low) ? number : band.Low, high = double.IsNaN(band.High) ? number : band.High;
        return $"{(trial.IsDifference && number > 0.0 ? "+" : "")}{unit.Text(number)} ({unit.Digits(low)} to {unit.Digits(high)})";
    }
}
