using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>What another line, leader or rod changes, in a sentence made from the runs.</summary>
internal static class ChangeWords
{
    // Below this share of the largest a difference in the glide is within what the mesh of such runs leaves open (docs/cadence.md).
    private const double OpenShare = 0.10;

    /// <summary>The name of a group.</summary>
    /// <param name="group">Group.</param>
    public static string Name(ChangeGroup group) => group switch { ChangeGroup.Line => "Line", ChangeGroup.Leader => "Leader", _ => "Rod length" };

    /// <summary>One or two sentences on a group.</summary>
    /// <param name="changes">Runs of one group.</param>
    /// <param name="shown">Units.</param>
    public static string Sentence(IReadOnlyList<PageChange> changes, Shown shown)
    {
        PageChange[] walks = [.. changes.Where(c => c.Outcome.Pattern == WalkPattern.Alternating)], not = [.. changes.Except(walks)];
        return walks.Length == 0 ? $"At this rhythm it walks with none of them{(not.DistinctBy(c => c.Outcome.Pattern).Count() == 1 ? $": {CadenceStory.Answer(not[0].Outcome.Pattern)}" : $"; {Others(not)}")}."
            : not.Length == 0 ? $"It walks with all of them. {Spread(walks, shown)}"
            : $"It walks with {List(walks)}; {Others(not)}. {Spread(walks, shown)}".TrimEnd();
    }

    private static string Spread(PageChange[] walks, Shown shown)
    {
        if (walks.Length < 2)
        {
            return "";
        }

        PageChange least = walks.MinBy(Glide)!, most = walks.MaxBy(Glide)!;
        return Glide(most) - Glide(least) < OpenShare * Glide(most)
            ? $"The glide stays near {shown.Size(Glide(most))} a twitch: a difference too small for this model to tell."
            : $"The glide goes from {shown.Size(Glide(least))} a twitch with {Named(least)} to {shown.Size(Glide(most))} with {Named(most)}.";
    }

    private static double Glide(PageChange change) => change.Outcome.Summary!.GlideWidthM;

    private static string Others(PageChange[] not) => string.Join("; ", not.GroupBy(c => c.Outcome.Pattern).Select(g => $"with {List([.. g])} {CadenceStory.Answer(g.Key)}"));

    private static string List(PageChange[] changes) => Trade.And([.. changes.Select(Named)]);

    private static string Named(PageChange change) => change.Group == ChangeGroup.Rod ? $"the {change.Label} rod" : change.Label;
}
