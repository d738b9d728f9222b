using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Validation.Invariants;

/// <summary>Counts how runs of <c>cadence</c> that end when they have settled differ from the same runs to their end; safe on threads.</summary>
/// <param name="longS">Length of a third run of every fourth pair, s, its last two fifths counted: what the run to its end is worth itself. 0 = none.</param>
internal sealed class SettledComparison(double longS = 0.0)
{
    private const int LongEach = 4;
    private const double WarmUpShare = 0.6;

    private readonly Lock _lock = new();
    private readonly List<string> _others = [];
    private readonly List<double> _glides = [];
    private double _shortS, _longS;
    private readonly List<string> _longs = [];
    private int _walks, _calls, _longRuns, _wholeOtherWords, _wholeWalks, _endingOtherWords, _endingWalks;

    /// <summary>Pairs in which both runs were whole.</summary>
    public int Runs { get; private set; }

    /// <summary>Of these, runs that ended before.</summary>
    public int Ended { get; private set; }

    /// <summary>Of these, runs with another word.</summary>
    public int OtherWords => _others.Count;

    /// <summary>Where both alternate: difference of the width over the width of the long run.</summary>
    public List<double> Widths { get; } = [];

    /// <summary>Runs a pair, and a third, longer one of every fourth.</summary>
    public void Compare(Scenario scenario, double perS, WalkStart start, string name)
    {
        RetrieveTask Task(StationaryPlan plan) => StationaryRun.Make(scenario.Retrieve!, perS, start, plan);
        string named = FormattableString.Invariant($"{name} at {perS} /s, nose {start.HeadingRad:0.00} rad");
        (RetrieveSummary Whole, RetrieveSummary Ending)? pair = Compare(
            scenario, Task(new(CadencePlan.WarmUpS, ToTheEnd: true)), Task(new(CadencePlan.WarmUpS)), named);
        double warmUpS = WarmUpShare * longS;
        if (pair is var (whole, ending) && longS > 0.0 && Interlocked.Increment(ref _calls) % LongEach == 0
            && RetrieveRun.Run(scenario.Setup, Task(new(warmUpS, (int)((longS - warmUpS) * perS), ToTheEnd: true))).Result is { Failure: null } result)
        {
            lock (_lock)
            {
                JudgeLong(result.Summary.Pattern, whole.Pattern, ending.Pattern, named);
            }
        }
    }

    /// <summary>Runs a pair of tasks; the short run must be the beginning of the long one, to the bit. Null where one failed.</summary>
    public (RetrieveSummary Whole, RetrieveSummary Ending)? Compare(Scenario scenario, RetrieveTask whole, RetrieveTask ending, string name)
    {
        if (RetrieveRun.Run(scenario.Setup, whole).Result is not { Failure: null } full || RetrieveRun.Run(scenario.Setup, ending).Result is not { Failure: null } part)
        {
            return null;
        }

        int rows = part.Series.Count;
        Assert.All(full.Series.Channels, c => Assert.True(c.Values[..rows].SequenceEqual(part.Series[c.Name]), $"{c.Name} of {name}"));
        lock (_lock)
        {
            Runs++;
            Ended += rows < full.Series.Count ? 1 : 0;
            _shortS += part.Series["time_s"][^1];
            _longS += full.Series["time_s"][^1];
            Judge(full.Summary, part.Summary, full.Hull.LengthM, FormattableString.Invariant($"{name}: {full.Summary.Pattern}, {part.Summary.Pattern} after {part.Series["time_s"][^1]:0.0} s"));
        }

        return (full.Summary, part.Summary);
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        double[] widths = [.. Widths.Order()], glides = [.. _glides.Order()];
        double At(double[] values, double share) => values.Length == 0 ? 0.0 : values[Math.Min(values.Length - 1, (int)(share * values.Length))];
        return string.Create(CultureInfo.InvariantCulture, $"{Runs} runs, {Ended} ended before, {_shortS / _longS:0.000} of the simulated time; {OtherWords} other words, {_walks} of them about alternating; ")
            + string.Create(CultureInfo.InvariantCulture, $"{widths.Length} alternate in both: width differs by {At(widths, 0.5):P1} (median), {At(widths, 0.9):P1} (nine in ten), {At(widths, 1.0):P1} (most), ")
            + string.Create(CultureInfo.InvariantCulture, $"glide by {At(glides, 0.5):0.000}, {At(glides, 0.9):0.000}, {At(glides, 1.0):0.000} hulls{string.Concat(_others.Select(o => "\n  " + o))}")
            + (_longRuns == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"\n{_longRuns} runs of {longS} s: other words to the end {_wholeOtherWords} ({_wholeWalks} about alternating), ended when settled {_endingOtherWords} ({_endingWalks}){string.Concat(_longs.Select(o => "\n  " + o))}"));
    }

    private void Judge(RetrieveSummary full, RetrieveSummary part, double lengthM, string name)
    {
        if (full.Pattern != part.Pattern)
        {
            _others.Add(name);
            _walks += full.Pattern == WalkPattern.Alternating || part.Pattern == WalkPattern.Alternating ? 1 : 0;
        }
        else if (full.Pattern == WalkPattern.Alternating)
        {
            Widths.Add(Math.Abs(part.WidthM - full.WidthM) / full.WidthM);
            _glides.Add(Math.Abs(part.GlideWidthM - full.GlideWidthM) / lengthM);
        }
    }

    private void JudgeLong(WalkPattern longest, WalkPattern whole, WalkPattern ending, string name)
    {
        bool DiffersAboutWalking(WalkPattern word) => word != longest && (word == WalkPattern.Alternating || longest == WalkPattern.Alternating);
        _longRuns++;
        _wholeOtherWords += whole != longest ? 1 : 0;
        _wholeWalks += DiffersAboutWalking(whole) ? 1 : 0;
        _endingOtherWords += ending != longest ? 1 : 0;
        _endingWalks += DiffersAboutWalking(ending) ? 1 : 0;
        if (whole != longest || ending != longest)
        {
            _longs.Add($"{name}: {longest} at last, {whole} to the end, {ending} when settled");
        }
    }
}
