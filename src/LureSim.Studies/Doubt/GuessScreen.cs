using LureSim.Studies.Sampling;

namespace LureSim.Studies.Doubt;

/// <summary>
/// Runs made to see which guess matters. First the set-up as it stands; then the same with every guess moved by a hair, which shows how far the figure
/// jitters by itself (steps, mesh, loops that form or do not); then each guess at its 10 % and its 90 % end with all else as it stands; then elementary
/// effects (Morris 1991, Technometrics 33, 161, from memory): from a drawn place of all guesses one after the other is moved by two thirds of the way
/// between those ends, in a drawn order, so that a guess that matters only beside others is seen. Four levels; over every four trajectories each
/// guess starts once from each of them.
/// </summary>
/// <remarks>
/// Noise of a figure: the range that three runs, which differ by jitter alone, pass once in twenty, q(0.05; 3, 8) = 4.04 sigma (Studentized range,
/// Tukey; from memory), sigma from nine runs about the set-up as it stands or from the pairs at the starts of the trajectories, whichever is larger.
/// A pure function of its arguments: places of the guesses in, figures out. Immutable; safe to use from several threads.
/// </remarks>
public sealed class GuessScreen
{
    /// <summary>Trajectories that a study takes, one from each level of each guess.</summary>
    public const int UsualTrajectories = 4;

    /// <summary>Lower end of a guess here, a share of its draws; the upper one is as far from the other side.</summary>
    public const double LowEnd = 0.1;

    private const int Repeats = 8, FirstEnd = 1 + Repeats, Levels = 4;
    private const double Hair = 1e-3, Step = 2.0 / 3.0, StudentizedRange = 4.04;
    private const ulong RepeatStream = 0x3A1, StartStream = 0x3A2, OrderStream = 0x3A3;

    private readonly int _guesses;
    private readonly int _trajectories;
    private readonly LatinHypercube _repeats;
    private readonly LatinHypercube _starts;
    private readonly LatinHypercube _order;

    /// <summary>Creates the plan.</summary>
    /// <param name="guesses">Number of guesses, at least 1.</param>
    /// <param name="trajectories">Trajectories, at least 1.</param>
    /// <param name="seed">Seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No guesses or no trajectories.</exception>
    public GuessScreen(int guesses, int trajectories, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(guesses, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(trajectories, 1);
        (_guesses, _trajectories) = (guesses, trajectories);
        _repeats = new(Repeats + trajectories, seed ^ RepeatStream);
        _starts = new(trajectories, seed ^ StartStream);
        _order = new(trajectories, seed ^ OrderStream);
    }

    /// <summary>Number of runs; the first is the set-up as it stands.</summary>
    public int Count => FirstTrajectory + (_trajectories * PerTrajectory);

    private int FirstTrajectory => FirstEnd + (2 * _guesses);

    // Its start, the start again moved by a hair, a run per guess.
    private int PerTrajectory => 2 + _guesses;

    /// <summary>Places of all guesses in a run, shares of their draws.</summary>
    /// <param name="run">0 to <see cref="Count"/> - 1.</param>
    public double[] Shares(int run)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(run);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(run, Count);
        double[] shares = new double[_guesses];
        Array.Fill(shares, 0.5);
        if (run >= FirstTrajectory)
        {
            (int trajectory, int step) = Math.DivRem(run - FirstTrajectory, PerTrajectory);
            OnTrajectory(shares, trajectory, step);
        }
        else if (run >= FirstEnd)
        {
            (int guess, int high) = Math.DivRem(run - FirstEnd, 2);
            shares[guess] = high == 1 ? 1.0 - LowEnd : LowEnd;
        }
        else if (run > 0)
        {
            Move(shares, run - 1);
        }

        return shares;
    }

    /// <summary>Reads the runs out.</summary>
    /// <param name="figures">Names of the figures.</param>
    /// <param name="runs">Figures of each run; null where it failed, NaN where it has no such figure.</param>
    public ScreenReport Analyse(IReadOnlyList<string> figures, IReadOnlyList<IReadOnlyList<double>?> runs)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(runs);
        ArgumentOutOfRangeException.ThrowIfNotEqual(runs.Count, Count);
        double Value(int run, int f) => runs[run]?[f] ?? double.NaN;
        double[] noise = [.. figures.Select((_, f) => Noise(r => Value(r, f)))];
        GuessEffect[][] effects = [.. Enumerable.Range(0, _guesses).Select(g => figures.Select((_, f) => Effect(g, r => Value(r, f))).ToArray())];
        return new(Count, runs.Count(r => r is null), figures, noise, effects);
    }

    private GuessEffect Effect(int guess, Func<int, double> value)
    {
        double given = value(0);
        int end = FirstEnd + (2 * guess);
        double[] effects = [.. Enumerable.Range(0, _trajectories).Select(t => Elementary(t, guess, value)).Where(e => !double.IsNaN(e))];
        return new(value(end) - given, value(end + 1) - given, effects.Length == 0 ? double.NaN : effects.Average(Math.Abs), Sigma(effects));
    }

    private double Elementary(int trajectory, int guess, Func<int, double> value)
    {
        int place = Array.IndexOf(Order(trajectory), guess), before = FirstTrajectory + (trajectory * PerTrajectory) + (place == 0 ? 0 : place + 1);
        int after = FirstTrajectory + (trajectory * PerTrajectory) + place + 2;
        return (Level(trajectory, guess) < Levels / 2 ? 1.0 : -1.0) * (value(after) - value(before)) / Step;
    }

    private double Noise(Func<int, double> value)
    {
        double here = Sigma([.. Enumerable.Range(0, FirstEnd).Select(value).Where(v => !double.IsNaN(v))]);
        double[] pairs =
        [
            .. Enumerable.Range(0, _trajectories).Select(t => FirstTrajectory + (t * PerTrajectory)).Select(start => value(start + 1) - value(start))
                .Where(d => !double.IsNaN(d)),
        ];
        double there = pairs.Length == 0 ? 0.0 : Math.Sqrt(pairs.Average(d => 0.5 * d * d));
        return StudentizedRange * Math.Max(here, there);
    }

    private void OnTrajectory(double[] shares, int trajectory, int step)
    {
        int moved = Math.Max(0, step - 1);
        int[] order = Order(trajectory);
        for (int place = 0; place < _guesses; place++)
        {
            int level = Level(trajectory, order[place]);
            double x = (double)level / (Levels - 1);
            x += place >= moved ? 0.0 : level < Levels / 2 ? Step : -Step;
            shares[order[place]] = LowEnd + (x * (1.0 - (2.0 * LowEnd)));
        }

        if (step == 1)
        {
            Move(shares, Repeats + trajectory);
        }
    }

    private void Move(double[] shares, int repeat)
    {
        for (int g = 0; g < shares.Length; g++)
        {
            shares[g] += Hair * (_repeats.Share(repeat, g) - 0.5);
        }
    }

    // From the lower two levels a guess can only rise by a step, from the upper two only fall.
    private int Level(int trajectory, int guess) => (int)(Levels * _starts.Share(trajectory, guess));

    private int[] Order(int trajectory) => [.. Enumerable.Range(0, _guesses).OrderBy(g => _order.Share(trajectory, g))];

    private static double Sigma(double[] values)
    {
        if (values.Length < 2)
        {
            return 0.0;
        }

        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1));
    }
}
