
namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[line]</c>.</summary>
public static class LineKeys
{
    /// <summary>Keys of the main line.</summary>
    public static readonly LineKeySet Set = new("line", mayBeAbsent: false, s => s.Line);

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [.. Set.All];
}
