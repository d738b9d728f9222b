using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>What pictures of many set-ups say in their titles.</summary>
internal static class AcrossWords
{
    // Edges of windows are found to 0.02 a second, and starts move them by more.
    private const double SameEdge = 0.1;

    /// <summary>What differs.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static string Keys(AcrossResult result) => string.Join(" and ", result.Keys.Select(k => k.Title));

    /// <summary>Which set-up walks from the slowest rhythm, which only from the fastest, and which at none.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static string Windows(AcrossResult result)
    {
        AcrossCase[] walk = [.. result.Cases.Where(c => c.Result is { Windows.Count: > 0 }).OrderBy(From)];
        AcrossCase[] never = [.. result.Cases.Where(c => c.Result is { Windows.Count: 0 })];
        string none = never.Length switch
        {
            0 => "",
            1 => $"{ChartStyle.Name(never[0].Label)} at no rhythm",
            _ => $"{never.Length} set-ups at no rhythm",
        };
        if (walk.Length == 0)
        {
            return "Nothing here walks at any rhythm";
        }

        double first = From(walk[0]), last = From(walk[^1]);
        string[] parts =
        [
            last - first < SameEdge && walk.Length > 1
                ? $"{Count(walk.Length, result.Cases.Count)} walk from about {CadenceStory.Rate(first)} twitches a second on"
                : $"{ChartStyle.Name(walk[0].Label)} walks from {CadenceStory.Rate(first)} twitches a second on",
            .. none.Length > 0 ? new[] { none } : last - first < SameEdge ? [] : new[] { $"{ChartStyle.Name(walk[^1].Label)} only from {CadenceStory.Rate(last)}" },
        ];

        // Names hold commas; a third name would fill the picture.
        return Trade.Capital(string.Join("; ", parts));
    }

    /// <summary>Which set-up glides widest at its best rhythm, and which least.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="shown">Units.</param>
    public static string Glides(AcrossResult result, Shown shown)
    {
        AcrossCase[] walk = [.. result.Cases.Where(c => c.Result?.BestPoint is not null).OrderByDescending(Glide)];
        return walk.Length switch
        {
            0 => "Nothing here walks at any rhythm",
            1 => $"Only {ChartStyle.Name(walk[0].Label)} walks: it glides {shown.Size(Glide(walk[0]))} a twitch at its best",
            _ => $"{ChartStyle.Name(walk[0].Label)} glides widest at its best rhythm, {shown.Size(Glide(walk[0]))} a twitch; {ChartStyle.Name(walk[^1].Label)} least, {shown.Size(Glide(walk[^1]))}",
        };
    }

    /// <summary>How best rhythm and glide go from the first value of the key to the last.</summary>
    /// <param name="result">Rhythms of many set-ups, the first key of numbers.</param>
    /// <param name="shown">Units.</param>
    public static string Trend(AcrossResult result, Shown shown)
    {
        AcrossCase[] walk = [.. result.Cases.Where(c => c.Result?.BestPoint is not null).OrderBy(c => c.Values[0].Number)];
        if (walk.Length < 2)
        {
            return $"Best rhythm and glide by {Keys(result)}";
        }

        (AcrossCase from, AcrossCase to) = (walk[0], walk[^1]);
        return $"From {ChartStyle.Name(from.Label)} to {ChartStyle.Name(to.Label)} the best rhythm goes from {CadenceStory.Rate(from.Result!.BestPoint!.PerS)} to {CadenceStory.Rate(to.Result!.BestPoint!.PerS)} a second, "
            + $"its glide from {shown.OneFamily.Size(Glide(from))} to {shown.OneFamily.Size(Glide(to))}";
    }

    private static string Count(int some, int all) => some == all ? $"All {all}" : $"{some} of {all}";

    private static double From(AcrossCase setUp) => setUp.Result!.Windows[0].FromPerS;

    private static double Glide(AcrossCase setUp) => setUp.Result!.BestPoint!.Median(o => o.GlideWidthM);
}
