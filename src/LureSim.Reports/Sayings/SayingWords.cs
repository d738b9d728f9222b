using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Sayings;

/// <summary>Words of sayings for people.</summary>
internal static class SayingWords
{
    /// <summary>The rule, for files and documents.</summary>
    public const string Rule = "chance: share of the draws of the guesses in which the claim is true; two thirds or more: true there, one third or less: false there, between them: cannot be told there";

    /// <summary>A verdict.</summary>
    public static string Verdict(SayingVerdict verdict) => verdict switch
    {
        SayingVerdict.Holds => "holds",
        SayingVerdict.HoldsOnlyWhen => "holds only when",
        SayingVerdict.DoesNotHold => "does not hold",
        _ => "cannot be told",
    };

    /// <summary>The word of a place.</summary>
    public static string Word(PlaceWord word) => word switch
    {
        PlaceWord.True => "true",
        PlaceWord.False => "false",
        _ => "cannot be told",
    };

    /// <summary>Who says so.</summary>
    public static string Told(ToldBy told) => told.Words.Length > 0 ? told.Words : $"{told.For} for, {told.Against} against";

    /// <summary>A second look.</summary>
    public static string Look(Again what) => what switch
    {
        Again.Mesh => "twice the nodes",
        Again.Step => "half the step",
        _ => "another seed",
    };

    /// <summary>A place and, where there are several, the test.</summary>
    public static string Name(TrialResult trial)
    {
        string[] parts = [.. new[] { trial.Trial.Test.Name, trial.Trial.Place.Name }.Where(n => n.Length > 0)];
        return parts.Length == 0 ? "as it stands" : string.Join(", ", parts);
    }

    /// <summary>What is looked at.</summary>
    public static string Figure(ReadyTrial trial)
    {
        string words = Words(trial, trial.Figure);
        string figure = trial.Test.IsOfWords ? $"share of {trial.Figures.Name} runs that are {string.Join(" or ", trial.Test.Words)}" : $"{trial.Figures.Name}: {words}";
        return trial.Test.Name.Length > 0 && trial.Test.Name != words ? $"{trial.Test.Name} ({figure})" : figure;
    }

    /// <summary>A figure: the words of one that people ask for first, else its key.</summary>
    public static string Words(ReadyTrial trial, string key) => trial.Figures.Headlines.FirstOrDefault(h => h.Key == key)?.Words ?? FigureUnit.Words(key);

    /// <summary>What would count as true.</summary>
    public static string Claim(ReadyTrial trial)
    {
        Claim claim = trial.Test.Claim;
        IReadOnlyList<SayingSide> sides = trial.Test.Sides;
        string all = sides.Count > 2 ? $"from {sides[0].Name} to {sides[^1].Name}" : sides.Count == 2 ? $"with {sides[1].Name} against {sides[0].Name}" : "";
        return claim.Kind switch
        {
            ClaimKind.Higher or ClaimKind.Rises => $"more {all}",
            ClaimKind.Lower or ClaimKind.Falls => $"less {all}",
            ClaimKind.NoDifference => $"the same {all}",
            _ => $"{claim.Text.Text} {all}".TrimEnd(),
        };
    }

    /// <summary>The verdict, with the places where they differ: "holds only when: small walker, 2 a second; not: hollow lure".</summary>
    public static string Whole(SayingResult result)
    {
        string verdict = Verdict(result.Verdict);
        (PlaceWord Word, string Names)[] words = [.. result.Trials.GroupBy(t => t.Word).OrderBy(g => g.Key).Select(g => (g.Key, string.Join("; ", g.Select(Name))))];
        return words.Length == 1 ? verdict
            : result.Verdict == SayingVerdict.HoldsOnlyWhen
            ? $"{verdict}: {words[0].Names} ({string.Join("; ", words.Skip(1).Select(w => $"{(w.Word == PlaceWord.False ? "not" : Word(w.Word))}: {w.Names}"))})"
            : $"{verdict} ({string.Join("; ", words.Select(w => $"{Word(w.Word)}: {w.Names}"))})";
    }

    /// <summary>What is so instead, where a claim is false; empty elsewhere.</summary>
    public static string Instead(TrialResult trial) => trial.Word != PlaceWord.False ? ""
        : SayingRule.Word(trial.OppositeChance) == PlaceWord.True ? "the opposite is true"
        : SayingRule.Word(trial.SameChance) == PlaceWord.True ? "no difference that is noticed"
        : "";

    /// <summary>Why a place cannot be told; empty where it can.</summary>
    public static string WhyUnknown(TrialResult trial) => trial.Word != PlaceWord.Unknown ? ""
        : trial.First == PlaceWord.Unknown && 3 * trial.Missing > trial.Values.Count ? $"{trial.Missing} of {trial.Values.Count} draws have no value ({trial.WhyMissing.TrimEnd('.')})"
        : trial.First == PlaceWord.Unknown ? $"true in {Share(trial.Chance)} of the draws"
        : string.Join("; ", trial.Looks.Where(l => !l.Stands).Select(l => $"{Word(trial.First)} in the draws, but with {Look(l.What)} the chance goes from {Share(trial.Chance)} to {(double.IsNaN(l.Chance) ? "none" : Share(l.Chance))}"));

    /// <summary>A share.</summary>
    public static string Share(double share) => double.IsNaN(share) ? "-" : Trade.Fixed(100.0 * share, 0) + " %";
}
