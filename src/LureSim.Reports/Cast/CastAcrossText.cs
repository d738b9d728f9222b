using System.Text;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>A comparison of casts for the terminal.</summary>
public static class CastAcrossText
{
    // Up to here every pair is shown without asking: two set-ups and the scenario's own.
    private const int FewCases = 3;

    /// <summary>Title, table, sentences and caution.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="pairs">Whether to show every two set-ups; up to three set-ups they are shown anyway.</param>
    public static string Build(CastAcross result, RunNotes notes, bool pairs = false)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Title).Append("\ncast across ").Append(result.KeyTitle.Split(',')[0]).Append("\n\n");
        Shown shown = notes.Shown;
        double farthest = result.Cases.Select((c, i) => c.Cast is null ? 0.0 : Math.Abs(result.MeanM(i))).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, farthest);
        text.Append(ColumnTable.Text(
            [result.KeyTitle.Split(',')[0], $"mean, {unit.Name}", $"8 of 10, {unit.Name}", $"gain, {unit.Name}", $"8 of 10, {unit.Name}", "casts", "chance", "verdict"],
            [.. result.Cases.Select((_, i) => Row(result, i, shown, unit))])).Append('\n');
        if ((pairs || result.Cases.Count == FewCases) && result.Pairs().Any())
        {
            text.Append(Pairs(result, unit)).Append('\n');
        }

        foreach (string sentence in Sentences(result, shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.AppendNotes(notes, "cast_across.json");
        return text.ToString();
    }

    private static string[] Row(CastAcross result, int index, Shown shown, ShownUnit unit)
    {
        CastCase c = result.Cases[index];
        if (c.Cast is null)
        {
            return [c.Label, "none"];
        }

        double mean = result.MeanM(index);
        string other = shown.Choice == UnitChoice.Both ? $" ({new Shown(UnitChoice.Trade).Distance(mean)})" : "";
        string[] far = [c.Label, double.IsFinite(mean) ? Number(mean, unit) + other : "-", Range(c.GuessesM, unit)];
        return index == result.ReferenceIndex ? [.. far, "", "", "", "", "(reference)"]
            : result.Against(index) is CastPair pair ? [.. far, CastAcrossWords.Gain(unit.Of(pair.GainM)), Range(pair.GainsM, unit), CastAcrossWords.Casts(pair.Casts), CastAcrossWords.Chance(pair.Share), CastAcrossWords.Verdict(pair.Verdict)]
            : far;
    }

    private static string Pairs(CastAcross result, ShownUnit unit) => ColumnTable.Text(
        ["from", "to", $"gain, {unit.Name}", $"8 of 10, {unit.Name}", "chance", "verdict"],
        [.. result.Pairs().Select(p => (string[])[p.From, p.To, CastAcrossWords.Gain(unit.Of(p.GainM)), Range(p.GainsM, unit), CastAcrossWords.Chance(p.Share), CastAcrossWords.Verdict(p.Verdict)])]);

    private static IEnumerable<string> Sentences(CastAcross result, Shown shown)
    {
        int draws = result.Reference.Draws.Count;
        yield return $"Reference: {result.Reference.Label}, {CastAcrossWords.Reference(result)}; the gain of each row is on it.";
        if (result.Law is not null)
        {
            yield return $"With the length go: {result.Law}.";
        }

        yield return draws > 0
            ? $"Mean: over {draws} draws of the guesses, the same luck for all set-ups, and in each over many casts with their release errors; gain: of that mean. 8 of 10: of the draws."
            : "Mean: over many casts with their release errors, the guesses as they stand; gain: of that mean.";
        yield return $"Chance: {CastAcrossWords.Rule}. The scatter is {Trade.Fixed(100.0 * Scatter(result), 0)} % of the distance. Casts: the fewest with each that bring the chance to two thirds.";
        foreach (string sentence in Failures(result, draws))
        {
            yield return sentence;
        }

        CastCase[] known = [.. result.Cases.Where(c => c.Cast is not null)];
        if (known.Length > 1)
        {
            yield return Why(known[0], known[^1], shown);
        }
    }

    private static IEnumerable<string> Failures(CastAcross result, int draws)
    {
        foreach (CastCase c in result.Cases.Where(c => c.Failure is not null))
        {
            yield return $"{c.Label}: {c.Failure}";
        }

        CastCase[] holes = [.. result.Cases.Where(c => c.Cast is not null && c.FailedDraws > 0)];
        if (draws > 0)
        {
            yield return holes.Length == 0 ? "No draw failed." : $"Failed draws: {string.Join("; ", holes.Select(c => $"{c.Label} {c.FailedDraws} of {draws}"))}. A gain is over the draws that finished in both set-ups.";
        }

        if (result.Cases.Where((c, i) => c.Cast is not null && double.IsNaN(result.MeanM(i))).Any())
        {
            yield return "Where a dash stands for the mean, other draws finished than in the reference, so that the two means do not differ by the gain.";
        }
    }

    private static double Scatter(CastAcross result) =>
        result.Cases.Where(c => c.Cast is not null && double.IsFinite(c.MeanM)).Select(c => c.ScatterM / Math.Abs(c.MeanM)).DefaultIfEmpty(double.NaN).Average();

    private static string Why(CastCase from, CastCase to, Shown shown)
    {
        CastResult a = from.Cast!, b = to.Cast!;
        string Pair(Func<CastResult, double> percent) => $"{Trade.Fixed(percent(a), 0)} to {Trade.Fixed(percent(b), 0)}";
        return $"From {from.Label} to {to.Label}, with every guess as it stands: the butt turns at {CastStory.Turns(a.ReleaseTurnRadS)} to {CastStory.Turns(b.ReleaseTurnRadS)} of {CastStory.Turns(b.Setup.Hands.TopSpeedRadS)} turns a second at the release, the lure leaves at "
            + $"{shown.Range(ShownQuantity.Speed, a.LaunchSpeedMS, b.LaunchSpeedMS)}; the hands give {shown.Range(ShownQuantity.Energy, a.Energy.HandsJ, b.Energy.HandsJ)}, of which {Pair(c => 100.0 * (c.Energy.LureJ + c.Energy.LureAirJ) / c.Energy.HandsJ)} % go "
            + $"with the lure and {Pair(c => 100.0 * c.Energy.RodAirJ / c.Energy.HandsJ)} % into the air on the rod; the air takes {Pair(c => 100.0 * c.Energy.LureAirJ / (c.Energy.LureJ + c.Energy.LureAirJ))} % of what the lure had.";
    }

    private static string Range(Spread band, ShownUnit unit) => double.IsFinite(band.Low) ? $"{Number(band.Low, unit)}..{Number(band.High, unit)}" : "";

    private static string Number(double m, ShownUnit unit) => Trade.Fixed(unit.Of(m), 1);
}
