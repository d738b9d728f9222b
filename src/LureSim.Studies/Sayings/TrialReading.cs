using LureSim.Scenarios.Sayings;
using LureSim.Studies.Compare;
using LureSim.Studies.Figures;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Sayings;

/// <summary>Reads the runs of a test in a place: values, truths, second looks, what moved.</summary>
internal static class TrialReading
{
    private const int MostMoved = 8;
    private const double LeastMove = 0.10, Chance = 0.05;

    /// <summary>Reads them.</summary>
    /// <param name="runs">Runs.</param>
    /// <param name="rows">Their rows, in order.</param>
    public static TrialResult Read(TrialRuns runs, IReadOnlyList<FigureRow> rows)
    {
        ReadyTrial trial = runs.Trial;
        Claim claim = trial.Test.Claim;
        ILookup<(Again? Look, int Draw, int Side), FigureRow> found = runs.Runs.Zip(rows).ToLookup(r => (r.First.Look, r.First.Draw, r.First.Side), r => r.Second);
        double[][] Values(Again? look, int draws) =>
            [.. Enumerable.Range(0, draws).Select(d => Enumerable.Range(0, trial.Sides.Count).Select(s => Value(trial, [.. found[(look, d, s)]])).ToArray())];
        bool?[] Truths(double[][] values, ClaimKind kind) => [.. values.Select(v => SayingRule.IsTrue(kind, claim, v))];

        double[][] own = Values(null, runs.Plan.Draws);
        bool?[] truths = Truths(own, claim.Kind);
        double chance = SayingRule.Chance(truths);
        PlaceWord first = SayingRule.MissesTooMany(truths) ? PlaceWord.Unknown : SayingRule.Word(chance);
        Dictionary<Again, int> looked = runs.Looks().Where(l => l.Look is not null).ToDictionary(l => l.Look!.Value, l => l.Draws);
        SecondLook[] looks =
        [
            .. Enum.GetValues<Again>().Select(what => looked.TryGetValue(what, out int draws)
                ? Look(what, first, chance, truths, Truths(Values(what, draws), claim.Kind))
                : new SecondLook(what, 0, double.NaN, true)),
        ];
        int missing = truths.Count(t => t is null);
        var result = new TrialResult(
            trial, own, chance, looks.All(l => l.Stands) ? first : PlaceWord.Unknown, first, looks,
            SayingRule.Opposite(claim.Kind) is ClaimKind opposite ? SayingRule.Chance(Truths(own, opposite)) : double.NaN,
            trial.Sides.Count > 1 && !claim.IsLimit ? SayingRule.Chance(Truths(own, ClaimKind.NoDifference)) : double.NaN,
            missing, missing == 0 ? "" : Why(rows), Moved(trial, found, runs.Plan.Draws), null);
        return result with { Guess = Guess(runs, result) };
    }

    // Of several starts the median, of words the share of the starts.
    private static double Value(ReadyTrial trial, FigureRow[] starts)
    {
        FigureRow[] good = [.. starts.Where(r => r.Failure is null)];
        if (2 * good.Length <= starts.Length)
        {
            return double.NaN;
        }

        if (trial.Test.IsOfWords)
        {
            return good.Average(r => trial.Test.Words.Contains(r.Words[trial.Column]) ? 1.0 : 0.0);
        }

        double[] numbers = [.. good.Select(r => r.Numbers[trial.Column]).Where(double.IsFinite)];
        return 2 * numbers.Length <= starts.Length ? double.NaN : numbers.Median();
    }

    private static SecondLook Look(Again what, PlaceWord word, double chance, bool?[] own, bool?[] again)
    {
        if (what == Again.Seed)
        {
            return new(what, again.Length, SayingRule.Chance(again), SayingRule.Stands(word, own, again));
        }

        double moved = SayingRule.Moved(chance, own.Take(again.Length), again);
        return new(what, again.Length, moved, SayingRule.Word(moved) == word);
    }

    private static string Why(IReadOnlyList<FigureRow> rows) =>
        rows.Where(r => r.Failure is not null).GroupBy(r => r.Failure!, StringComparer.Ordinal).MaxBy(g => g.Count())?.Key ?? "the figure does not exist there";

    // Of the figures that people ask for first, as their command says, those whose draws agree which way they moved from the first side to the last, by their size.
    private static MovedFigure[] Moved(ReadyTrial trial, ILookup<(Again? Look, int Draw, int Side), FigureRow> found, int draws)
    {
        int last = trial.Sides.Count - 1;
        if (last == 0)
        {
            return [];
        }

        var moved = new List<(MovedFigure Figure, double Size)>();
        HashSet<string> asked = [.. trial.Figures.Headlines.Select(h => h.Key)];
        for (int f = 0; f < trial.Figures.Numbers.Count; f++)
        {
            if ((f == trial.Column && !trial.Test.IsOfWords) || !asked.Contains(trial.Figures.Numbers[f]))
            {
                continue;
            }

            (double From, double To)[] pairs = [.. Enumerable.Range(0, draws).Select(d => (Of(d, 0, f), Of(d, last, f))).Where(p => double.IsFinite(p.Item1) && double.IsFinite(p.Item2))];
            if (2 * pairs.Length <= draws || !SenseRule.IsSettled([.. pairs.Select(p => p.To - p.From)]))
            {
                continue;
            }

            double from = pairs.Select(p => p.From).Median(), to = pairs.Select(p => p.To).Median(), size = Math.Abs(to - from) / Math.Max(Math.Abs(from), Math.Abs(to));
            if (size >= LeastMove)
            {
                moved.Add((new(trial.Figures.Numbers[f], from, to), size));
            }
        }

        return [.. moved.OrderByDescending(m => m.Size).Take(MostMoved).Select(m => m.Figure)];

        double Of(int draw, int side, int figure)
        {
            double[] starts = [.. found[(null, draw, side)].Where(r => r.Failure is null).Select(r => r.Numbers[figure]).Where(double.IsFinite)];
            return starts.Length == 0 ? double.NaN : starts.Median();
        }
    }

    // Spearman's correlation over the draws; of many guesses one goes along by chance, so each must pass a share of the 5 % (Bonferroni).
    private static LeadingGuess? Guess(TrialRuns runs, TrialResult result)
    {
        int[] with = [.. Enumerable.Range(0, result.Values.Count).Where(d => !result.Values[d].Any(double.IsNaN))];
        double[] numbers = [.. with.Select(d => result.Told(result.Values[d]))];
        (string Key, double[] Shares)[] guesses = [.. runs.Guesses()];
        if (with.Length < 5 || guesses.Length == 0 || numbers.Max() == numbers.Min())
        {
            return null;
        }

        LeadingGuess best = guesses.Select(g => new LeadingGuess(g.Key, Correlation.Spearman(with.Select(d => g.Shares[d]), numbers))).MaxBy(g => Math.Abs(g.Rho))!;
        double free = with.Length - 2.0, t = StudentT.InvCDF(0.0, 1.0, free, 1.0 - (0.5 * Chance / guesses.Length));
        return Math.Abs(best.Rho) >= t / Math.Sqrt(free + (t * t)) ? best : null;
    }
}
