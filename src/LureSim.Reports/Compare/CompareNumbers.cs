using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>The numbers of a comparison for people: of each row one unit, in the family asked for, with the decimals that its largest value deserves.</summary>
/// <param name="result">Set-ups compared.</param>
/// <param name="shown">Whose units; where both, the metric ones, since a column has one.</param>
internal sealed class CompareNumbers(CompareResult result, Shown shown)
{
    private readonly Shown _shown = shown.OneFamily;

    /// <summary>Unit of a row.</summary>
    /// <param name="measure">Row.</param>
    public ShownUnit Unit(CompareMeasure measure) => MeasureWords.Of(measure) is { Quantity: ShownQuantity quantity } ? _shown.Unit(quantity, Largest(measure)) : MeasureWords.Of(measure).Own!;

    /// <summary>A value without its unit; a dash where there is none.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="si">Value, SI.</param>
    public string Number(CompareMeasure measure, double si)
    {
        ShownUnit unit = Unit(measure);
        return double.IsFinite(si) ? Trade.Fixed(unit.Of(si), unit.Places(Largest(measure))) : "-";
    }

    /// <summary>A value with its unit.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="si">Value, SI.</param>
    public string Value(CompareMeasure measure, double si) => double.IsFinite(si) ? $"{Number(measure, si)} {Unit(measure).Name}" : "none";

    /// <summary>A change with its sign, without its unit.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="si">Change, SI.</param>
    public string Change(CompareMeasure measure, double si)
    {
        string text = Number(measure, si);
        return si > 0.0 && text.AsSpan().IndexOfAnyInRange('1', '9') >= 0 ? "+" + text : text;
    }

    /// <summary>A change with its unit and its band.</summary>
    /// <param name="d">Difference.</param>
    public string Change(Difference d) => !double.IsFinite(d.Value) ? "no value"
        : !double.IsFinite(d.Band.Low) ? $"{Change(d.Measure, d.Value)} {Unit(d.Measure).Name}"
        : $"{Change(d.Measure, d.Value)} {Unit(d.Measure).Name} ({Change(d.Measure, d.Band.Low)} to {Change(d.Measure, d.Band.High)})";

    /// <summary>Any other quantity.</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="si">Value, SI.</param>
    public string Text(ShownQuantity quantity, double si) => _shown.Text(quantity, si);

    private double Largest(CompareMeasure measure) =>
        Enumerable.Range(0, result.SetUps.Count).Select(i => Math.Abs(result.Column(measure, i).Mean)).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
}
