using LureSim.Scenarios.Keys;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>What things of a strike are called in files: kebab case.</summary>
internal static class StrikeWords
{
    /// <summary>A name of the code as files have it: <c>HoldsWeakly</c> is <c>holds-weakly</c>.</summary>
    /// <typeparam name="T">Enumeration.</typeparam>
    /// <param name="value">Value.</param>
    public static string Of<T>(T value)
        where T : struct, Enum => string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));

    /// <summary>The style of a strike, as scenario files have it.</summary>
    /// <param name="report">Strike.</param>
    public static string Style(StrikeReport report) => StrikeKeys.Style.Choices.First(c => c.Value == (int)report.Strike.Task.Stroke.Style).Name;
}
