namespace LureSim.Studies.Compare;

/// <summary>What kind of advice it is.</summary>
public enum AdviceKind
{
    /// <summary>Nothing would be noticed: the cheaper one.</summary>
    Nothing,

    /// <summary>One is noticeably better somewhere and noticeably worse nowhere.</summary>
    Clear,

    /// <summary>Each is noticeably better somewhere.</summary>
    Trade,

    /// <summary>None walks.</summary>
    NoneWalks,
}

/// <summary>A set-up to take, and the rows it should be taken for.</summary>
/// <param name="SetUp">Place of the set-up.</param>
/// <param name="For">Differences in which it will be noticed to be better, one of each row, the largest first listed row first.</param>
public sealed record AdviceFor(int SetUp, IReadOnlyList<Difference> For);

/// <summary>
/// Which set-up to take. Only rows with a wanted side count, and only differences that will be noticed. Set-ups that walk at no rhythm fall first where
/// others walk. Then: nothing noticed, the lightest to swing, since price decides; one that wins somewhere and loses nowhere, that one (of several the one
/// that wins most rows, then the one that wins the earlier row, then the lighter one); else the trade: of each row its best set-up, the first rows first.
/// </summary>
/// <param name="Kind">Kind.</param>
/// <param name="Takes">Set-ups to take, the first one leads; never empty unless none walks.</param>
/// <param name="Fallen">Set-ups that do not walk while others do.</param>
/// <param name="GivenUp">Differences in which the leading one will be noticed to be worse than another.</param>
/// <param name="Taste">Noticed differences between the leading one and others in rows without a wanted side.</param>
/// <param name="Unnoticed">Rows in which nothing will be noticed between the leading one and the others.</param>
/// <param name="Unknown">Rows in which nothing can be told between the leading one and another.</param>
/// <param name="BendTest">A difference of the leading one whose band a bend test would narrow to <see cref="WorthBending"/> or less; null without.</param>
/// <param name="BendTestShare">Its band then over its band now.</param>
public sealed record Advice(
    AdviceKind Kind, IReadOnlyList<AdviceFor> Takes, IReadOnlyList<int> Fallen, IReadOnlyList<Difference> GivenUp, IReadOnlyList<Difference> Taste,
    IReadOnlyList<CompareMeasure> Unnoticed,
    IReadOnlyList<CompareMeasure> Unknown, Difference? BendTest, double BendTestShare)
{
    /// <summary>Share of the band that a bend test must come to before it is worth a sentence.</summary>
    public const double WorthBending = 0.6;

    /// <summary>The set-up to take, -1 where none walks.</summary>
    public int Leader => Takes.Count > 0 ? Takes[0].SetUp : -1;

    /// <summary>Finds it.</summary>
    /// <param name="result">Set-ups compared.</param>
    public static Advice Of(CompareResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int[] all = [.. Enumerable.Range(0, result.SetUps.Count)];
        int[] walking = result.Of<RetrieveMeasured>() is RetrieveMeasured water ? [.. all.Where(i => water.Cases[i].EverWalks)] : all;
        if (walking.Length == 0)
        {
            return new(AdviceKind.NoneWalks, [], all, [], [], [], [], null, double.NaN);
        }

        Difference[] noticed = [.. result.Differences.Where(d => d.Verdict == CompareVerdict.Will && d.Winner >= 0 && walking.Contains(d.A) && walking.Contains(d.B))];
        (AdviceKind kind, AdviceFor[] takes) = walking.Length == 1 ? (AdviceKind.Clear, [new(walking[0], [])]) : Choose(result, walking, noticed);
        int leader = takes[0].SetUp;
        Difference[] own = [.. result.Differences.Where(d => d.A == leader || d.B == leader)], seen = [.. own.Where(d => d.Verdict == CompareVerdict.Will)];
        CompareMeasure[] Rows(Func<IGrouping<CompareMeasure, Difference>, bool> which) => [.. own.GroupBy(d => d.Measure).Where(which).Select(g => g.Key)];
        Difference? bend = own.Where(d => result.BendTestShare(d) <= WorthBending && d.Verdict != CompareVerdict.WillNot).FirstOrDefault();
        return new(
            kind, takes, [.. all.Except(walking)], [.. Worst(seen.Where(d => d.Winner >= 0 && d.Winner != leader))], [.. Worst(seen.Where(d => d.Measure.Side == Better.Neither))],
            Rows(g => g.All(d => d.Verdict == CompareVerdict.WillNot)), Rows(g => g.Any(d => d.Verdict == CompareVerdict.Unknown)), bend, bend is null ? double.NaN : result.BendTestShare(bend));
    }

    private static (AdviceKind Kind, AdviceFor[] Takes) Choose(CompareResult result, int[] walking, Difference[] noticed)
    {
        if (noticed.Length == 0)
        {
            return (AdviceKind.Nothing, [new(walking.OrderBy(i => Swing(result, i)).ThenBy(i => result.SetUps[i].Label, StringComparer.Ordinal).First(), [])]);
        }

        AdviceFor[] clear =
        [
            .. walking.Where(i => noticed.Any(d => d.Winner == i) && !noticed.Any(d => d.Winner != i && (d.A == i || d.B == i)))
                .Select(i => new AdviceFor(i, [.. Worst(noticed.Where(d => d.Winner == i))]))
                .OrderByDescending(t => t.For.Count).ThenBy(t => Row(result, t.For[0])).ThenBy(t => Swing(result, t.SetUp)).ThenBy(t => result.SetUps[t.SetUp].Label, StringComparer.Ordinal),
        ];
        if (clear.Length > 0)
        {
            return (AdviceKind.Clear, clear[..1]);
        }

        // Of each row the set-up with its best value among those that win it.
        var best = noticed.GroupBy(d => d.Measure).Select(g => Worst(g).First()).GroupBy(d => d.Winner);
        return (AdviceKind.Trade, [.. best.Select(g => new AdviceFor(g.Key, [.. g.OrderBy(d => Row(result, d))])).OrderBy(t => Row(result, t.For[0]))]);
    }

    // The largest difference of each row, in the order of rows.
    private static IEnumerable<Difference> Worst(IEnumerable<Difference> differences) => differences.GroupBy(d => d.Measure).Select(g => g.MaxBy(d => Math.Abs(d.Value))!);

    private static int Row(CompareResult result, Difference difference) => result.Sets.SelectMany(s => s.Measures).ToList().IndexOf(difference.Measure);

    private static double Swing(CompareResult result, int setUp) =>
        result.Sets.Any(s => s.Measures.Contains(RodMeasures.SwingWeight)) ? result.Column(RodMeasures.SwingWeight, setUp).AsItStands.Value : 0.0;
}
