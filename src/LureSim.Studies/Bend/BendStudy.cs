using LureSim.Model;
using LureSim.Model.Bend;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Bend;

/// <summary>A fitted bend test and what people would call such a rod.</summary>
/// <param name="File">The test as written.</param>
/// <param name="Fit">The fit.</param>
/// <param name="Powers">Classes of power that its load may belong to, the likeliest first; empty where it is weaker or stronger than all.</param>
/// <param name="Actions">Classes of action, the likeliest first.</param>
public sealed record BendReport(BendFile File, BendFit Fit, IReadOnlyList<string> Powers, IReadOnlyList<string> Actions);

/// <summary>From a bend test to a rod.</summary>
public static class BendStudy
{
    /// <summary>What is known of rods before: the guesses of the keys, and the whole span of actions, since a test shall not lean on a label.</summary>
    public static BendGuesses Guesses { get; } = new(
        new(RodKeys.Action.Choices.Min(c => c.Low), RodKeys.Action.Choices.Max(c => c.High), RodKeys.TipRadiusRatio.Low, RodKeys.TipRadiusRatio.High),
        Of(RodKeys.StiffnessExponent), Of(RodKeys.MassExponent), Of(RodKeys.Mass), Of(RodKeys.FreeMassShare));

    /// <summary>Fits a test. It fails where no rod bends like this.</summary>
    /// <param name="file">The test.</param>
    /// <param name="stop">Stops the fit.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<BendReport> Run(BendFile file, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(file);
        Outcome<BendFit> outcome = BendFitter.Fit(file.Test, Guesses, stop);
        return outcome.IsWhole ? new(new(file, outcome.Result, Powers(outcome.Result), Actions(outcome.Result))) : new(null, outcome.Failure);
    }

    // The classes whose ranges the band touches; that of the best value first.
    private static IReadOnlyList<string> Powers(BendFit fit)
    {
        BendEstimate load = fit[BendValue.BendLoad];
        return
        [
            .. RodKeys.Power.Choices.Where(c => c.High > load.Low && c.Low < load.High)
                .OrderBy(c => load.Value >= c.Low && load.Value <= c.High ? 0.0 : Math.Abs(Math.Log(c.Value / load.Value))).Select(c => c.Name),
        ];
    }

    // The class whose tip stands nearest, with the default exponent, then all others between the ends of the band.
    private static IReadOnlyList<string> Actions(BendFit fit)
    {
        (string Name, double Rad)[] classes =
        [
            .. RodKeys.Action.Choices.Select(c => (c.Name, Rad: BendFitter.PlainActionRad(c.Value, RodKeys.StiffnessExponent.Parameter!.Default))).OrderBy(c => c.Rad),
        ];
        BendEstimate tip = fit.ActionRad;
        int Nearest(double rad) => Enumerable.Range(0, classes.Length).MinBy(i => Math.Abs(classes[i].Rad - (fit.PlainActionRad + rad - tip.Value)));
        int best = Nearest(tip.Value), low = Nearest(tip.Low), high = Nearest(tip.High);
        return [.. Enumerable.Range(low, high - low + 1).OrderBy(i => Math.Abs(i - best)).Select(i => classes[i].Name)];
    }

    private static BendGuess Of(KeySpec key) => new(key.GuessLow, key.GuessHigh, key.Low, key.High);
}
