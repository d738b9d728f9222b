using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Sweep;

/// <summary>
/// Every run of a sweep as a function of its index: which values, which row. Nothing is kept per run, so that any thread, process
/// or machine makes the same row from the same index. Safe to use from several threads.
/// </summary>
public sealed class SweepPlan
{
    /// <summary>Most runs of a sweep.</summary>
    public const int MostRuns = 10_000_000;

    private readonly ScenarioSource _source;
    private readonly IReadOnlyList<string> _overrides;
    private readonly IReadOnlyList<Axis> _axes;
    private readonly SweepPoints _points;
    private readonly IFigureSource _figures;
    private readonly GuessDesign? _doubt;
    private readonly GuessedKey[][] _guesses = [];
    private readonly KeySpec[] _guessColumns = [];

    /// <summary>Creates the plan. With doubt every point is read once to learn its guesses.</summary>
    /// <param name="source">Scenario.</param>
    /// <param name="overrides">Overrides of every run.</param>
    /// <param name="axes">What varies.</param>
    /// <param name="points">Points over the axes.</param>
    /// <param name="figures">What to run.</param>
    /// <param name="doubt">Samples of the guesses at every point, or null.</param>
    /// <exception cref="SweepException">Doubt, but nothing is guessed.</exception>
    public SweepPlan(
        ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<Axis> axes, SweepPoints points, IFigureSource figures, GuessDesign? doubt)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(figures);
        (_source, _overrides, _axes, _points, _figures, _doubt) = (source, overrides, axes, points, figures, doubt);
        if (doubt is not null)
        {
            _guesses = [.. Enumerable.Range(0, points.Count).Select(GuessesAt)];
            _guessColumns = [.. _guesses.SelectMany(g => g).Select(g => g.Key).Distinct().OrderBy(k => k.Index)];
            if (_guessColumns.Length == 0)
            {
                throw new SweepException("--doubt: nothing is guessed here, so there is nothing to draw");
            }
        }

        Layout = new(
            [.. axes.SelectMany(SweepCells.Columns)],
            [.. _guessColumns.Select(k => ColumnUnit.Append(SweepLayout.GuessMark + k.Path, k.Kind))],
            figures.Words,
            figures.Numbers,
            doubt?.Samples ?? 1);
    }

    /// <summary>Number of runs.</summary>
    public int Count => checked(_points.Count * Layout.Samples);

    /// <summary>Columns of the table.</summary>
    public SweepLayout Layout { get; }

    /// <summary>Runs one index. A run that fails is a row with its reason.</summary>
    /// <param name="index">0 to <see cref="Count"/> - 1.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SweepRow Run(int index, CancellationToken stop)
    {
        (int point, int sample) = Math.DivRem(index, Layout.Samples);
        AxisValue[] values = _points.At(point);
        GuessedKey[] drawn = _doubt is null ? [] : _guesses[point];
        var draw = GuessDraw.Make(_source, [.. _overrides, .. values.SelectMany(v => v.Overrides)], drawn, g => _doubt!.Share(g, sample));
        string[] inputs = [.. values.SelectMany((v, a) => SweepCells.Cells(_axes[a], v)), .. _guessColumns.Select(k => GuessCell(drawn, draw, k))];
        ScenarioResult scenario = draw.Scenario;
        if (!scenario.IsValid)
        {
            return new(inputs, SweepRow.Refused, FigureRow.Refused(scenario).Failure!, [], []);
        }

        FigureRow row = FigureRow.Of(_figures, scenario, stop);
        return new(inputs, row.Failure is null ? SweepRow.Done : SweepRow.Failed, row.Failure ?? "", row.Words, row.Numbers);
    }

    private GuessedKey[] GuessesAt(int point)
    {
        ScenarioResult scenario = _source.Resolve([.. _overrides, .. _points.At(point).SelectMany(v => v.Overrides)]);
        return scenario.IsValid ? GuessDesign.Of(scenario, _figures, hands: false) : [];
    }

    private static string GuessCell(GuessedKey[] drawn, GuessDraw draw, KeySpec key) =>
        Array.FindIndex(drawn, g => g.Key == key) is >= 0 and int i ? CsvLine.Number(draw.Values[i]) : "";
}
