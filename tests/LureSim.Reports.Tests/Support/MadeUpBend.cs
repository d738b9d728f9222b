using LureSim.Model.Bend;
using LureSim.Model.Rods;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Bend;

namespace LureSim.Reports.Tests.Support;

/// <summary>A fitted bend test drawn by hand: parabolas for shapes, a curve that flattens, one reading off.</summary>
internal static class MadeUpBend
{
    private const double Free = 1.8;
    private static readonly double[] Loads = [0.5, 1.0, 2.0, 3.0];

    public static BendReport Report(bool odd)
    {
        BendTest test = new(2.1, 0.3, [.. Loads.Select(l => new BendReading(l, Drop(l)))], false, 0.12, null, [new(1.4, 0.05)], null, new());
        BendEstimate Near(double value, double left, BendGuess? guess = null) => new(value, 0.95 * value, 1.05 * value, 0.93 * value, 1.07 * value, left, guess);
        BendRow[] rows =
        [
            .. Loads.Select((l, i) => new BendRow(ReadingKind.Drop, i, l, Drop(l) + (odd && i == 2 ? 0.1 : 0.004), Drop(l), Drop(l) - 0.003, odd && i == 2 ? 9.0 : 0.8)),
            new(ReadingKind.Bounce, 0, 0.4903, 1.4, 1.38, 1.37, 0.4), new(ReadingKind.Mass, 0, 0.0, 0.12, 0.12, 0.12, 0.0),
        ];
        BendEstimate[] values = [Near(3.2, 0.0), Near(0.25, 0.5, new(0.12, 0.55, 0.1, 0.9)), Near(3.2, 0.9), Near(0.12, 0.1), Near(0.45, 0.95), Near(1.5, 0.99)];
        var fit = new BendFit(
            test, new RodSpec(2.1, 0.3, 3.2, 0.054), 21.0, [.. values], Near(0.25, 0.4), Near(0.8, 0.0), 0.78, Near(5.4, 0.0), 0.02, [.. rows], odd ? 2.4 : 1.0,
            [new(BendValue.StiffnessExponent, null, 0.0, 2.9, 3.5), new(BendValue.FreeMassShare, ReadingKind.Balance, 0.0, 0.42, 0.48)],
            [.. Enumerable.Range(0, 21).Select(i => 0.18 * i).Select(l => new BendPoint(l, Drop(l), 0.98 * Drop(l), 1.02 * Drop(l)))],
            [.. Loads.Prepend(0.0).Select(Shape)]);
        return new(new BendFile("made-up rod", test, ["b.csv(4)", "b.csv(5)", "b.csv(6)", "b.csv(7)"], UnitFamily.Metric, false), fit, ["medium", "medium-heavy"], ["fast"]);
    }

    private static double Drop(double load) => Free * 0.75 * load / (load + 4.0);

    private static BentShape Shape(double load)
    {
        double[] share = [.. Enumerable.Range(0, 11).Select(i => 0.1 * i)];
        double down = 0.02 + Drop(load);
        return new(load, [.. share.Select(s => Free * s * (1.0 - (0.12 * s * down)))], [.. share.Select(s => -down * s * s)]);
    }
}
