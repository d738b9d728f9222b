using LureSim.Model.Lures;
using LureSim.Scenarios;
using LureSim.Scenarios.Parts;

namespace LureSim.Studies.Start;

/// <summary>What a part comes to in a set-up.</summary>
public static class PartFacts
{
    // What stands around a part does not matter to it.
    private static readonly (string Table, string Name)[] Around = [("rod", "medium-heavy-fast"), ("line", "30-lb-braid"), ("lure", "walker")];

    /// <summary>A set-up that holds a part.</summary>
    /// <param name="part">Part.</param>
    /// <exception cref="InvalidOperationException">The part does not fit into a scenario; a test reads them all.</exception>
    public static ScenarioResult Read(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        IEnumerable<Part> all = Around.Where(a => a.Table != part.Folder.Table).Select(a => PartLibrary.Find(a.Table, a.Name)!).Append(part);
        ScenarioResult read = ScenarioSource.FromText(string.Concat(all.Select(p => $"[{p.Folder.Table}]\n{p.Text}\n"))).Resolve();
        return read.IsValid ? read : throw new InvalidOperationException(read.Errors[0].ToString());
    }

    /// <summary>The lure of a part.</summary>
    /// <param name="part">A part of the folder <c>lures</c>.</param>
    public static LureSpec Lure(Part part) => Read(part).Setup!.Lure;
}
