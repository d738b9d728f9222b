using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;

namespace LureSim.Studies.Cadence;

/// <summary>Which rhythms walk. Definitions: <c>docs/cadence.md</c>.</summary>
public sealed record CadenceResult
{
    /// <summary>Set-up.</summary>
    public required Setup Setup { get; init; }

    /// <summary>Retrieve.</summary>
    public required RetrieveTask Task { get; init; }

    /// <summary>How it was searched.</summary>
    public required CadencePlan Plan { get; init; }

    /// <summary>Sampled rhythms, rising.</summary>
    public required IReadOnlyList<RhythmPoint> Points { get; init; }

    /// <summary>Stretches of rhythms that walk, rising.</summary>
    public required IReadOnlyList<CadenceWindow> Windows { get; init; }

    /// <summary>Best rhythm, or null when nothing walks.</summary>
    public required BestRhythm? Best { get; init; }

    /// <summary>Limits of the wrist: most likely, weak end, strong end.</summary>
    public required (WristLimit Likely, WristLimit Weak, WristLimit Strong) Wrist { get; init; }

    /// <summary>Torque that these limits came from.</summary>
    public required SustainedTorque Torque { get; init; }

    /// <summary>The sample at the best rhythm, or null.</summary>
    public RhythmPoint? BestPoint => Best is null ? null : Points.MinBy(p => Math.Abs(p.PerS - Best.PerS));

    /// <summary>The sample that glides widest of those that walk, or null.</summary>
    public RhythmPoint? Widest => Points.Where(p => p.Walks).MaxBy(p => p.Median(o => o.GlideWidthM));

    /// <summary>The sample that glides least of those that walk faster than the best, or null.</summary>
    public RhythmPoint? NarrowestAboveBest =>
        Points.Where(p => p.Walks && Best is not null && p.PerS > Best.PerS).MinBy(p => p.Median(o => o.GlideWidthM));

    /// <summary>The most regular sample of those that walk, or null.</summary>
    public RhythmPoint? MostRegular => Points.Where(p => p.Walks).MaxBy(p => p.Median(o => o.Regularity));

    /// <summary>Share of starts that alternate at the best rhythm; without one, the highest share at any rhythm.</summary>
    public double LockShare => BestPoint?.LockShare ?? Points.Max(p => p.LockShare);

    /// <summary>Natural frequency f1 of the free rod's first bending mode, Hz; the rhythm beats against it (docs/cadence.md).</summary>
    public double TipFrequencyHz => RodModes.Compute(Setup.Rod).AngularFrequency(0) / (2.0 * Math.PI);

    /// <summary>Whether the walk at a sample may hang on how fast the hand took up line before (<see cref="CadenceWindow.MayHangOnHand"/>).</summary>
    /// <param name="point">Sample.</param>
    public bool MayHangOnHand(RhythmPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return point.Walks && Windows.Any(w => w.MayHangOnHand(point.PerS));
    }

    /// <summary>The sample at the set-up's own rhythm, or null when it lies outside the range.</summary>
    public RhythmPoint? Own => Points.FirstOrDefault(p => p.PerS == Task.CadencePerS);

    /// <summary>Starts that failed, with the reason of the first; null when none did.</summary>
    public string? Failures
    {
        get
        {
            int failed = Points.Sum(p => p.Outcomes.Count(o => o.Failure is not null));
            int all = Points.Sum(p => p.Outcomes.Count);
            return failed == 0 ? null : $"{failed} of {all} runs failed; the first: {Points.First(p => p.Failure is not null).Failure}";
        }
    }

    /// <summary>Stretches of equal pattern over the whole range, rising; a change lies in the middle between two samples.</summary>
    public IReadOnlyList<(WalkPattern? Pattern, double FromPerS, double ToPerS)> Bands()
    {
        var bands = new List<(WalkPattern? Pattern, double FromPerS, double ToPerS)>();
        double from = Points[0].PerS;
        for (int i = 0; i < Points.Count; i++)
        {
            bool last = i == Points.Count - 1;
            if (last || Points[i].Pattern != Points[i + 1].Pattern)
            {
                double to = last ? Points[i].PerS : 0.5 * (Points[i].PerS + Points[i + 1].PerS);
                bands.Add((Points[i].Pattern, from, to));
                from = to;
            }
        }

        return bands;
    }
}
