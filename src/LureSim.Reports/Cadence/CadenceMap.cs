using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Maps;
using OxyPlot;

namespace LureSim.Reports.Cadence;

/// <summary>Pattern as colour over two quantities; where it walks, darker green is a wider glide.</summary>
public static class CadenceMap
{
    private const int MostLevels = 3;

    // Pale to dark, the middle one the green of every other picture.
    private static readonly OxyColor[] Greens =
        [ChartStyle.Pale(ChartStyle.Green, 0.3), ChartStyle.Pale(ChartStyle.Green, 0.65), ChartStyle.Green, OxyColor.FromRgb(0, 92, 67)];

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Map.</param>
    /// <param name="title">What it says.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(MapResult result, string title, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        double[,] glide = result.Grid.GlideM;
        ShownUnit unit = shown.Unit(ShownQuantity.Size, glide.Cast<double>().Where(double.IsFinite).DefaultIfEmpty(0.1).Max());
        double[] levels = StudyMap.Levels(Scaled(glide, unit), MostLevels);
        StudyClass[] walks = [.. Walks(levels, unit)], others =
            [.. PatternClasses.Of(result.Grid.Patterns.Cast<WalkPattern?>().Where(p => p != WalkPattern.Alternating).Distinct())];
        var cells = new double[result.X.Count, result.Y.Count];
        for (int i = 0; i < result.X.Count; i++)
        {
            for (int j = 0; j < result.Y.Count; j++)
            {
                WalkPattern? pattern = result.Grid.Patterns[i, j];
                cells[i, j] = pattern == WalkPattern.Alternating
                    ? levels.Count(l => unit.Of(glide[i, j]) >= l)
                    : walks.Length + Array.FindIndex(others, c => c.Label == PatternClasses.Name(pattern));
            }
        }

        return StudyMap.Classes(
            "cadence_map", title, $"{result.Title}; darker green: wider glide per twitch", Trade.Capital(result.XKey.Title), Trade.Capital(result.YKey.Title),
            new StudyGrid([.. result.X], [.. result.Y], cells), [.. walks, .. others]);
    }

    private static double[,] Scaled(double[,] si, ShownUnit unit)
    {
        var scaled = new double[si.GetLength(0), si.GetLength(1)];
        for (int k = 0; k < si.Length; k++)
        {
            scaled[k / si.GetLength(1), k % si.GetLength(1)] = unit.Of(si[k / si.GetLength(1), k % si.GetLength(1)]);
        }

        return scaled;
    }

    private static IEnumerable<StudyClass> Walks(double[] levels, ShownUnit unit)
    {
        string region = PatternClasses.Name(WalkPattern.Alternating);
        string Number(double v) => v.ToString("0.###", CultureInfo.InvariantCulture);
        for (int k = 0; k <= levels.Length; k++)
        {
            string range = levels.Length == 0 ? region
                : k == 0 ? $"{region}, glides under {Number(levels[0])} {unit.Name}"
                : k == levels.Length ? $"over {Number(levels[^1])} {unit.Name}"
                : $"{Number(levels[k - 1])} to {Number(levels[k])} {unit.Name}";
            yield return new StudyClass(range, Greens[levels.Length == 0 ? 2 : k], region);
        }
    }
}
