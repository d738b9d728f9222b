using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Maps;

namespace LureSim.Reports.Cadence;

/// <summary>Pattern as colour and glide as contours over two quantities.</summary>
public static class CadenceMap
{
    /// <summary>Builds the chart.</summary>
    /// <param name="result">Map.</param>
    /// <param name="subtitle">The sentence to take home.</param>
    public static Chart Build(MapResult result, string subtitle)
    {
        ArgumentNullException.ThrowIfNull(result);
        WalkPattern?[] seen = [.. result.Grid.Patterns.Cast<WalkPattern?>().Distinct()];
        StudyClass[] classes = PatternClasses.Of(seen);
        var cells = new double[result.X.Count, result.Y.Count];
        var glide = new double[result.X.Count, result.Y.Count];
        for (int i = 0; i < result.X.Count; i++)
        {
            for (int j = 0; j < result.Y.Count; j++)
            {
                cells[i, j] = Array.FindIndex(classes, c => c.Label == PatternClasses.Name(result.Grid.Patterns[i, j]));
                glide[i, j] = 100.0 * result.Grid.GlideM[i, j];
            }
        }

        return StudyMap.Classes(
            "cadence_map", result.Title, subtitle, result.XKey.Title, result.YKey.Title, new StudyGrid([.. result.X], [.. result.Y], cells), classes,
            new StudyGrid([.. result.X], [.. result.Y], glide), null, "glide, cm per twitch");
    }
}
