using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using LureSim.Studies.Sayings;
using MathNet.Numerics.Statistics;

namespace LureSim.Reports.Sayings;

/// <summary>Numbers of a saying in units for people; shares in per cent, their differences in points.</summary>
/// <param name="shown">Units.</param>
internal sealed class SayingNumbers(Shown shown)
{
    /// <summary>Median over the draws of all places of the saying's first test, with the band of eight in ten of them: "+1.9 m (1.2 to 2.5)".</summary>
    public string Overall(SayingResult result)
    {
        TrialResult first = result.Trials[0];
        double[] all = [.. result.Trials.Where(t => t.Trial.Test == first.Trial.Test).SelectMany(t => t.Numbers)];
        return all.Length == 0 ? "-" : WithBand(first.Trial, all.Median(), Spread.Of(all));
    }

    /// <summary>The number of a place with its band.</summary>
    public string WithBand(TrialResult trial) => double.IsNaN(trial.Number) ? "-" : WithBand(trial.Trial, trial.Number, trial.Band);

    /// <summary>A value of a side.</summary>
    public string Value(ReadyTrial trial, double value) => double.IsNaN(value) ? "-" : Unit(trial, value) is var unit ? unit.Text(value) : "";

    /// <summary>A figure that moved: "mean slack 0.4 to 5.0 cm".</summary>
    public string Moved(MovedFigure moved)
    {
        ShownUnit unit = UnitOf(moved.Figure, Math.Max(Math.Abs(moved.From), Math.Abs(moved.To)));
        return $"{FigureUnit.Words(moved.Figure)} {unit.Digits(moved.From)} to {unit.Text(moved.To)}";
    }

    /// <summary>The unit of a test's figure.</summary>
    public ShownUnit Unit(ReadyTrial trial, double largest) => trial.Test.IsOfWords ? Percent : UnitOf(trial.Figure, largest);

    private static ShownUnit Percent => new("%", 0.01, 0);

    private ShownUnit UnitOf(string figure, double largest) =>
        figure.EndsWith("_share", StringComparison.Ordinal) ? Percent : FigureUnit.Of(shown.OneFamily, figure, Math.Abs(largest))[0];

    private string WithBand(ReadyTrial trial, double number, Spread band)
    {
        bool difference = trial.Sides.Count > 1 && !trial.Test.Claim.IsLimit;
        double low = double.IsNaN(band.Low) ? number : band.Low, high = double.IsNaN(band.High) ? number : band.High;
        ShownUnit unit = Unit(trial, new[] { number, low, high }.Max(Math.Abs));
        string sign = difference && number > 0.0 ? "+" : "";
        return $"{sign}{unit.Text(number)} ({unit.Digits(low)} to {unit.Digits(high)})";
    }
}
