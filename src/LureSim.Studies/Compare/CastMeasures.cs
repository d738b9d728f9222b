using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cast;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Compare;

/// <summary>Distance as a person casts: the study and the rule of <c>cast --across</c>.</summary>
public sealed class CastMeasures : IMeasureSet
{
    /// <summary>Mean distance.</summary>
    public static readonly CompareMeasure Distance = new("distance_m", "m", Better.More, null);

    private static readonly CastSource Casts = new();

    /// <inheritdoc/>
    public IReadOnlyList<CompareMeasure> Measures { get; } = [Distance];

    /// <inheritdoc/>
    public double Work => 11.0;

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario) => Casts.Reads(key, scenario);

    /// <inheritdoc/>
    public Measured Run(IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        ArgumentNullException.ThrowIfNull(plan);
        var design = new GuessDesign(plan.CastDraws, plan.Seed);
        bool rods = CompareStudy.RodsDiffer(setUps);
        IReadOnlyList<CastCase> Cast(Func<KeySpec, bool>? held, double from) => CastAcrossStudy.Run(
            [.. setUps.Select(s => new CastVariant(s.Label, s.SetUp.Here.Setup!, s.SetUp.Here.Cast!, d => CastVariants.Drawn(s.SetUp, design, d, held)))],
            plan.CastDraws, plan.Threads, share => progress?.Invoke(rods ? 0.5 * (from + share) : share), stop);
        IReadOnlyList<CastCase> cases = Cast(null, 0.0);
        return new CastMeasured(cases, rods ? Cast(ComparePlan.IsOfBendTest, 1.0) : null, plan);
    }
}

/// <summary>Casts of every set-up.</summary>
public sealed class CastMeasured : Measured
{
    internal CastMeasured(IReadOnlyList<CastCase> cases, IReadOnlyList<CastCase>? tested, ComparePlan plan)
        : base(
            [CastMeasures.Distance], [[.. cases.Select(c => new MeasureColumn(c.Cast is null ? MeasureSample.None : Sample(CastDraw.Of(c.Cast)), Draws(c)))]], _ => plan.People(plan.CastDraws),
            tested is null ? null : new Dictionary<CompareMeasure, IReadOnlyList<IReadOnlyList<MeasureSample>>> { [CastMeasures.Distance] = [.. tested.Select(Draws)] }) =>
        Cases = cases;

    /// <summary>One per set-up.</summary>
    public IReadOnlyList<CastCase> Cases { get; }

    /// <inheritdoc/>
    public override Difference Between(CompareMeasure measure, int a, int b)
    {
        CastCase from = Cases[a], to = Cases[b];
        if (CastPair.Between(from, to) is not CastPair pair)
        {
            return Difference.None(measure, a, b, from.MeanM, to.MeanM);
        }

        (CastDraw From, CastDraw To)[] both = [.. from.Known.Zip(to.Known).Where(d => d.First.Finished && d.Second.Finished)];
        return new(measure, a, b, both.Average(d => d.From.MeanM), both.Average(d => d.To.MeanM), pair.GainM, pair.GainsM, pair.Share, Verdict(pair.Verdict), double.NaN);
    }

    private static CompareVerdict Verdict(NoticeVerdict verdict) => verdict switch
    {
        NoticeVerdict.Will => CompareVerdict.Will,
        NoticeVerdict.May => CompareVerdict.May,
        _ => CompareVerdict.WillNot,
    };

    private static MeasureSample Sample(CastDraw draw) => MeasureSample.Of(draw.MeanM, draw.SigmaM);

    private static IReadOnlyList<MeasureSample> Draws(CastCase c) => [.. c.Draws.Select(Sample)];
}
