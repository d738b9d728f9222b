using System.Globalization;
using LureSim.Scenarios;
using LureSim.Studies.Cast;
using LureSim.Studies.Compare;
using LureSim.Studies.Tests.Support;
using Xunit.Abstractions;

namespace LureSim.Studies.Tests.Compare;

/// <summary>
/// How often a set-up is told from itself when both get luck of their own, which the program never gives them. Out of a pool of draws of the real
/// program, pairs of as many draws as it makes are taken, without one in both. LURESIM_FALSE_ALARMS=200 makes the whole table of docs/compare.md, a
/// pool of casts, retrieves and searches; without it only what a rod is in the hand is looked at, which takes no run.
/// </summary>
public sealed class FalseAlarmTests(ITestOutputHelper output)
{
    private const int Pool = 240, Windows = 48;

    private static readonly int Asked = int.TryParse(Environment.GetEnvironmentVariable("LURESIM_FALSE_ALARMS"), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;

    [Fact]
    public void With_luck_of_their_own_less_than_one_in_twenty_is_noticed()
    {
        int pairs = Asked > 0 ? Asked : 200;
        var faults = new List<ScenarioFault>();
        CompareSetUp one = new SetUpReader([], faults).Read([Shipped.File("small-walker.toml")], ["reel.drag=7 lb"], "")[0];
        var plan = new ComparePlan(1, Pool, Pool, Windows);
        IMeasureSet[] sets = Asked > 0 ? [.. MeasureSets.All] : [new RodMeasures()];
        var usual = new ComparePlan();
        foreach (IMeasureSet set in sets)
        {
            Measured pool = set.Run([one], plan, null, CancellationToken.None);
            foreach (CompareMeasure measure in set.Measures)
            {
                IReadOnlyList<MeasureSample> draws = pool.Column(measure, 0).Draws;
                int each = draws.Count == Windows ? usual.WindowDraws : set is RetrieveMeasures ? usual.WalkDraws : usual.CastDraws;
                CompareVerdict[] told = [.. Enumerable.Range(0, pairs).Select(seed => Verdict(measure, draws, each, seed, pool as CastMeasured))];
                output.WriteLine($"{measure.Key}: {string.Join(", ", told.GroupBy(v => v).OrderBy(g => g.Key).Select(g => $"{g.Key} {g.Count()}"))}");
                Assert.InRange(told.Count(v => v == CompareVerdict.Will) / (double)pairs, 0.0, 0.05);
            }
        }
    }

    private static CompareVerdict Verdict(CompareMeasure measure, IReadOnlyList<MeasureSample> pool, int each, int seed, CastMeasured? casts)
    {
        int[] order = [.. Enumerable.Range(0, pool.Count)];
        new Random(seed).Shuffle(order);
        if (casts is not null)
        {
            CastCase Case(int from) => casts.Cases[0] with { Draws = [.. order.Skip(from).Take(each).Select(i => casts.Cases[0].Draws[i])] };
            return CastPair.Between(Case(0), Case(each))!.Verdict switch { NoticeVerdict.Will => CompareVerdict.Will, NoticeVerdict.May => CompareVerdict.May, _ => CompareVerdict.WillNot };
        }

        var people = new People(each, (ulong)seed);
        MeasureSample[] Part(int from) => [.. order.Skip(from).Take(each).Select(i => pool[i])];
        return SenseRule.Between(measure, 0, 1, Part(0), Part(each), d => measure.Weber is null ? 0.0 : people.Of(measure.Weber, d)).Verdict;
    }
}
