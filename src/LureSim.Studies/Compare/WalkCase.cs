using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;

namespace LureSim.Studies.Compare;

/// <summary>One draw of one set-up on the water.</summary>
/// <param name="Setup">As drawn; null where the draw makes no valid set-up.</param>
/// <param name="Task">As drawn.</param>
/// <param name="Summary">Figures at the set-up's own rhythm; null where the run failed.</param>
/// <param name="Rhythms">Rhythms that walk; null where they were not searched, or every run failed.</param>
public sealed record WalkDraw(Model.Assembly.Setup? Setup, RetrieveTask? Task, RetrieveSummary? Summary, CadenceResult? Rhythms)
{
    /// <summary>True where it walks at the set-up's own rhythm.</summary>
    public bool Walks => Summary?.Pattern == WalkPattern.Alternating;

    /// <summary>The widest stretch of rhythms that walk, upper over lower edge; null without any.</summary>
    public CadenceWindow? Window => Rhythms?.Windows.MaxBy(w => w.Ratio);
}

/// <summary>One set-up on the water.</summary>
/// <param name="AsItStands">With every guess as it stands.</param>
/// <param name="Draws">With the guesses drawn.</param>
/// <param name="Searched">How many of these, from the first, were searched for rhythms.</param>
public sealed record WalkCase(WalkDraw AsItStands, IReadOnlyList<WalkDraw> Draws, int Searched)
{
    /// <summary>Whether it walks at any rhythm, with the guesses as they stand.</summary>
    public bool EverWalks => AsItStands.Walks || AsItStands.Window is not null;

    /// <summary>Draws that walk at the set-up's own rhythm.</summary>
    public int WalkingDraws => Draws.Count(d => d.Walks);

    /// <summary>Searched draws that walk at some rhythm.</summary>
    public int DrawsWithWindow => Draws.Take(Searched).Count(d => d.Window is not null);

    /// <summary>The answer to its own rhythm, or to most rhythms where that run failed; null when nothing finished.</summary>
    public WalkPattern? Pattern => AsItStands.Summary?.Pattern ?? AsItStands.Rhythms?.Points.GroupBy(p => p.Pattern).MaxBy(g => g.Count())?.Key;
}
