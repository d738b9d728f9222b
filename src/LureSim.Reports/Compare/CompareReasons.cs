using LureSim.Model.Cast;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>Why a difference is what it is, in a clause with the numbers of both set-ups.</summary>
internal static class CompareReasons
{
    /// <summary>The clause.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="d">Difference.</param>
    /// <param name="numbers">How numbers are told.</param>
    public static string Of(CompareResult result, Difference d, CompareNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(d);
        if (!double.IsFinite(d.Value))
        {
            return Missing(result, d);
        }

        if (IsSame(d))
        {
            return "the same in both";
        }

        string clause = Cause(result, d, numbers) is string cause ? $"{cause}; {Told(d, numbers)}" : Told(d, numbers);
        return d.Verdict == CompareVerdict.Unknown ? $"{clause}, and the draws of the guesses do not agree which way" : clause;
    }

    /// <summary>True where every draw gave both the same.</summary>
    /// <param name="d">Difference.</param>
    public static bool IsSame(Difference d) => d.Value == 0.0 && d.Band is { Low: 0.0, High: 0.0 };

    // What people tell apart, in the unit of the row where that is what they sense.
    private static string Told(Difference d, CompareNumbers numbers)
    {
        if (!double.IsFinite(d.Threshold))
        {
            return $"chance that 10 to 30 casts with each show it: {Trade.Fixed(100.0 * d.Share, 0)} %";
        }

        return d.Measure == RetrieveMeasures.NoseLoad ? $"a dip shows from about {numbers.Text(ShownQuantity.Size, d.Threshold)} on"
            : d.Measure == RetrieveMeasures.SlackBudget ? $"slack that piles up shows from about {numbers.Value(d.Measure, d.Threshold)} on"
            : $"people tell about {numbers.Value(d.Measure, d.Threshold)} apart";
    }

    private static string? Cause(CompareResult result, Difference d, CompareNumbers numbers)
    {
        CastResult? from = result.Of<CastMeasured>()?.Cases[d.A].Cast, to = result.Of<CastMeasured>()?.Cases[d.B].Cast;
        WalkCase? a = result.Of<RetrieveMeasured>()?.Cases[d.A], b = result.Of<RetrieveMeasured>()?.Cases[d.B];
        if (d.Measure == CastMeasures.Distance)
        {
            return from is null || to is null ? null : $"the lure leaves at {numbers.Text(ShownQuantity.Speed, from.LaunchSpeedMS)} and {numbers.Text(ShownQuantity.Speed, to.LaunchSpeedMS)}";
        }

        if (d.Measure == RodMeasures.Clearance || d.Measure == RodMeasures.LowClearance)
        {
            return d.AValue <= 0.0 || d.BValue <= 0.0 ? "the tip goes into the water" : "a rod is not held to the degree";
        }

        return a is null || b is null ? null : OnWater(d, a, b, numbers);
    }

    private static string? OnWater(Difference d, WalkCase a, WalkCase b, CompareNumbers numbers)
    {
        if (d.Measure == RetrieveMeasures.Width)
        {
            return $"walks at its own rhythm in {a.WalkingDraws} and {b.WalkingDraws} of {a.Draws.Count} draws";
        }

        if (a.AsItStands.Summary is not { } s || b.AsItStands.Summary is not { } t)
        {
            return null;
        }

        return d.Measure == RetrieveMeasures.Wrist ? $"a wrist keeps up {numbers.Text(ShownQuantity.Torque, a.AsItStands.Setup!.Angler.SustainedTorqueNm)} for long, a guess"
            : d.Measure == RetrieveMeasures.LineDrag ? $"felt beside a pull of {numbers.Text(ShownQuantity.Pull, s.TipForcePeakN)} and {numbers.Text(ShownQuantity.Pull, t.TipForcePeakN)}"
            : d.Measure == RetrieveMeasures.NoseLoad ? $"the nose dips {numbers.Text(ShownQuantity.Size, s.NoseDipM)} and {numbers.Text(ShownQuantity.Size, t.NoseDipM)}"
            : d.Measure == RetrieveMeasures.SlackBudget ? $"a twitch frees {numbers.Text(ShownQuantity.Size, s.AdvancePerTwitchM)} and {numbers.Text(ShownQuantity.Size, t.AdvancePerTwitchM)}, and {Comfort}"
            : d.Measure == RetrieveMeasures.Turns ? Comfort
            : d.Measure == RetrieveMeasures.KeptUp && Never(a, b) ? "the walk ends before the wrist does"
            : null;
    }

    private static string Comfort { get; } = $"{Trade.Digits(Humans.Turns.Low)} to {Trade.Digits(Humans.Turns.High)} turns a second are comfortable, a guess";

    private static bool Never(WalkCase a, WalkCase b) => new[] { a, b }.All(c => c.AsItStands.Window is { } w && !(c.AsItStands.Rhythms!.Wrist.Likely.ToPerS < w.ToPerS));

    private static string Missing(CompareResult result, Difference d)
    {
        int have = result.Column(d.Measure, d.A).Draws.Count(s => s.Exists), other = result.Column(d.Measure, d.B).Draws.Count(s => s.Exists), all = result.Column(d.Measure, d.A).Draws.Count;
        return $"there is a value in {have} and {other} of {all} draws, too few to compare";
    }
}
