using LureSim.Model.Retrieve;

namespace LureSim.Reports.Retrieve;

/// <summary>Words for patterns.</summary>
internal static class SummaryNames
{
    /// <summary>The pattern's name at the start of a sentence.</summary>
    /// <param name="pattern">Pattern.</param>
    public static string Sentence(WalkPattern pattern)
    {
        string name = SummaryKeys.Name(pattern);
        return char.ToUpperInvariant(name[0]) + name[1..];
    }
}
