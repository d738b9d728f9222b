using System.Globalization;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>Takes base steps of one length, each cut into halves as often as the step rule demands.</summary>
/// <param name="baseStepS">Base step, s.</param>
/// <param name="attempt">Tries a step that ends at a time, s; gives dt sqrt(T/mu)/l, infinite where the state is not finite. Nothing may be taken over yet.</param>
/// <param name="accept">Takes the step tried last over; gets its length, s.</param>
/// <param name="stop">Stops it, looked at in every step.</param>
internal sealed class StepHalving(double baseStepS, Func<Bdf2, double, double> attempt, Action<double> accept, CancellationToken stop)
{
    /// <summary>Step rule: the tension direction is explicit, so dt sqrt(T/mu)/l must stay under this (docs/line-solver.md).</summary>
    public const double RatioLimit = 0.5;

    private const int Deepest = 10;
    private double _stepBefore, _largestRatio;
    private int _halving, _steps, _halved;

    /// <summary>Base step, s.</summary>
    public double BaseStepS => baseStepS;

    /// <summary>t at the end of the last accepted step, s.</summary>
    public double TimeS { get; private set; }

    /// <summary>One base step; returns why it cannot be taken, or null.</summary>
    /// <param name="start">t at its start, s.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public string? BaseStep(double start)
    {
        _halving = Math.Max(0, _halving - 1);
        long done = 0;
        double worst = 0.0;
        while (done < 1L << _halving)
        {
            stop.ThrowIfCancellationRequested();
            double dt = baseStepS / (1L << _halving);
            double ratio = attempt(_steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, _stepBefore), start + ((done + 1) * dt));
            if (ratio > RatioLimit)
            {
                if (++_halving > Deepest)
                {
                    return double.IsFinite(ratio)
                        ? $"the line's tension waves need a step below {dt:E1} s at {TimeS:F3} s (stiffest rate {RatioLimit / dt:E1} /s); use fewer nodes"
                        : $"the state stopped being finite at {TimeS:F3} s, step {_steps}";
                }

                _halved++;
                done *= 2;
                continue;
            }

            Accept(dt, ratio);
            worst = Math.Max(worst, ratio);
            done++;
        }

        TimeS = start + baseStepS;
        _halving += worst > 0.5 * RatioLimit && _halving > 0 ? 1 : 0;
        _halving = Math.Min(_halving, Deepest);
        return null;
    }

    /// <summary>Solver counters so far.</summary>
    /// <param name="pass">Pass of the line.</param>
    /// <param name="openShare">What the energy account leaves open.</param>
    public SolverCounters Counters(LinePass pass, double openShare) =>
        new(_steps, _halved, pass.Solver.Passes, pass.Solver.LimitHits, _largestRatio) { EnergyOpenShare = openShare };

    /// <summary>Why the energy account, at the end of a run, is too far open for a result; null where it is closed.</summary>
    /// <param name="openShare">What it leaves open.</param>
    public string? OpenAccount(double openShare)
    {
        // Not above, so that NaN is open too.
        return openShare <= SolverCounters.MostEnergyOpenShare
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the energy account stays open by {100.0 * openShare:0.0} % of the work at a step of {1e3 * baseStepS:0.###} ms; use a smaller step");
    }

    private void Accept(double dt, double ratio)
    {
        TimeS += dt;
        _stepBefore = dt;
        _largestRatio = Math.Max(_largestRatio, ratio);
        _steps++;
        accept(dt);
    }
}
