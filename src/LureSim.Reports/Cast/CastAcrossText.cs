using System.Text;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>A comparison of casts for the terminal.</summary>
public static class CastAcrossText
{
    /// <summary>Title, table, sentences and caution.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(CastAcross result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Title).Append("\ncast across ").Append(result.KeyTitle).Append("\n\n");
        text.Append(ColumnTable.Text(Header(result), [.. result.Cases.Select((_, i) => Row(result, i))])).Append('\n');
        foreach (string sentence in Sentences(result))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.AppendNotes(notes, "cast_across.json");
        return text.ToString();
    }

    private static string[] Header(CastAcross result) =>
        [result.KeyTitle.Split(',')[0], "cast, m", "mean, m", "band, m", "gain, m", "band, m", "casts", "verdict", "in draws"];

    private static string[] Row(CastAcross result, int index)
    {
        CastCase c = result.Cases[index];
        if (c.Cast is null)
        {
            return [c.Label, "none"];
        }

        string[] far = [c.Label, $"{Trade.Fixed(c.Cast.DistanceM, 1)}", $"{Trade.Fixed(c.Cast.DistanceMeanM, 1)} ({Trade.Fixed(Trade.Feet(c.Cast.DistanceMeanM), 0)} ft)", Range(c.GuessesM)];
        return result.Step(index) is CastStep step
            ? [.. far, Signed(step.GainM), Range(step.GainsM), step.Casts > 999.0 ? ">999" : Trade.Fixed(Math.Ceiling(step.Casts), 0), CastAcrossCsv.Verdict(step), CastAcrossCsv.Sure(step)]
            : far;
    }

    private static IEnumerable<string> Sentences(CastAcross result)
    {
        if (result.Law is not null)
        {
            yield return $"With the length go: {result.Law}.";
        }

        yield return $"Cast: let go as the scenario says, or at the best moment. Mean: of many casts with their release errors. Gain: of the mean, on {(result.IsNumeric ? "the one before" : "the first")}, median of the draws. Band: eight of ten draws of the guesses, the same luck for all set-ups. Casts: as many with each as show the gain against the scatter from cast to cast "
            + $"({Trade.Fixed(100.0 * Scatter(result), 0)} % of the distance), 16 (scatter/gain)^2; up to 16 you will notice. In draws: the share of draws with the same verdict.";
        CastCase[] known = [.. result.Cases.Where(c => c.Cast is not null)];
        if (known.Length > 1)
        {
            yield return Why(known[0], known[^1]);
        }

        foreach (CastCase c in result.Cases.Where(c => c.Failure is not null))
        {
            yield return $"{c.Label}: {c.Failure}";
        }
    }

    private static double Scatter(CastAcross result) => result.Cases.Where(c => c.Cast is not null).Average(c => c.SigmaM / Math.Abs(c.Cast!.DistanceMeanM));

    private static string Why(CastCase from, CastCase to)
    {
        CastResult a = from.Cast!, b = to.Cast!;
        string Pair(Func<CastResult, double> value, int places) => $"{Trade.Fixed(value(a), places)} to {Trade.Fixed(value(b), places)}";
        return $"From {from.Label} to {to.Label}: the butt turns at {Pair(c => c.ReleaseTurnRadS, 1)} of {Trade.Fixed(b.Setup.Hands.SpeedRadS, 1)} rad/s at the release, the lure leaves at "
            + $"{Pair(c => c.LaunchSpeedMS, 1)} m/s; of the hands' work ({Pair(c => c.Energy.HandsJ, 0)} J) {Pair(c => 100.0 * (c.Energy.LureJ + c.Energy.LureAirJ) / c.Energy.HandsJ, 0)} % goes "
            + $"with the lure and {Pair(c => 100.0 * c.Energy.RodAirJ / c.Energy.HandsJ, 0)} % into the air on the rod; the air takes {Pair(c => 100.0 * c.Energy.LureAirJ / (c.Energy.LureJ + c.Energy.LureAirJ), 0)} % of what the lure had.";
    }

    private static string Range(Spread band) => double.IsFinite(band.Low) ? $"{Trade.Fixed(band.Low, 1)}..{Trade.Fixed(band.High, 1)}" : "";

    private static string Signed(double value) => (value > 0.0 ? "+" : "") + Trade.Fixed(value, 1);
}
