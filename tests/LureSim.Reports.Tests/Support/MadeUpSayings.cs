using LureSim.Scenarios.Sayings;
using LureSim.Studies.Figures;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Tests.Support;

/// <summary>Sayings without physics: what goes in comes out.</summary>
internal static class MadeUpSayings
{
    private static readonly SaidText Nowhere = new("", "made-up.toml(1,1)");

    /// <summary>Three sayings: one true in one place and false in another, one of a limit that holds, one of words whose second look fails.</summary>
    public static SayingsReport Report() => new([Further(), Straight(), Walks()], 3, new(9));

    /// <summary>The first of three, the others stopped.</summary>
    public static SayingsReport Stopped() => new([Further()], 3, new(9));

    /// <summary>Two places with numbers, and one without any.</summary>
    public static SayingResult Further()
    {
        SayingTest test = Test("cast", "distance_mean_m", [], new(ClaimKind.Higher, new("more is higher", ""), double.NaN, 0.05, double.NaN, true), "6 ft 6 in", "7 ft 6 in");
        return new(
            Saying("longer-rod-casts-further", "A longer rod casts further.", new(9, 0, ""), test, "light lure", "very long name of a place: heavy lure on thick nylon, two hands, against the wind", "no line"),
            [
                Trial(test, "light lure", [.. Enumerable.Range(0, 9).Select(d => new[] { 20.0 + d, 22.0 + (1.2 * d) })], PlaceWord.True, moved: [new("rod_energy_J", 0.8, 1.3), new("energy_pick_up_J", 0.001, 0.002)], guess: "cast.effort"),
                Trial(test, "very long name of a place: heavy lure on thick nylon, two hands, against the wind", [.. Enumerable.Range(0, 9).Select(d => new[] { 20.0 + d, 19.6 + d })], PlaceWord.False, same: 1.0),
                Trial(test, "no line", [.. Enumerable.Range(0, 9).Select(_ => new[] { double.NaN, 3.0 })], PlaceWord.Unknown, missing: 9),
            ]);
    }

    /// <summary>A limit on one set-up.</summary>
    public static SayingResult Straight()
    {
        SayingTest test = Test("retrieve", "sheer_deg", [], new(ClaimKind.AtMost, new("at most 10 deg", ""), 10.0, 0.1, double.NaN, false), "");
        return new(Saying("reeled-straight", "Reeled straight in it does nothing.", new(0, 0, "common practice, no source"), test, ""), [Trial(test, "", [.. Enumerable.Range(1, 9).Select(d => new[] { 0.4 * d })], PlaceWord.True)]);
    }

    /// <summary>Pulls of hundredths of a gram.</summary>
    public static SayingResult Tiny()
    {
        SayingTest test = Test("retrieve", "nose_down_load_N", [], new(ClaimKind.Higher, new("more is higher", ""), double.NaN, 0.1, double.NaN, true), "thin", "thick");
        return new(Saying("tiny", "Thick line weighs on the nose.", new(1, 0, ""), test, ""), [Trial(test, "", [.. Enumerable.Range(1, 9).Select(d => new[] { 1e-4, 1e-4 + (2e-5 * d) })], PlaceWord.True)]);
    }

    private static SayingResult Walks()
    {
        SayingTest test = Test("retrieve", "pattern", ["alternating"], new(ClaimKind.Falls, new("falls", ""), double.NaN, double.NaN, 0.5, true), "12 in", "18 in", "84 in");
        SecondLook lost = new(Again.Mesh, 3, 0.4, false);
        return new(
            Saying("short-leader", "A walker wants a short leader.", new(4, 2, ""), test, "at 2 a second"),
            [Trial(test, "at 2 a second", [.. Enumerable.Range(0, 9).Select(d => new[] { 1.0, 1.0, d < 6 ? 0.0 : 1.0 })], PlaceWord.True, lost: lost)]);
    }

    private static Saying Saying(string name, string says, ToldBy told, SayingTest test, params string[] places) =>
        new(name, says, "Two set-ups that differ in one thing are compared.", told, [.. places.Select(p => new SayingPlace(p, Nowhere, []))], [test]);

    private static SayingTest Test(string command, string figure, string[] words, Claim claim, params string[] sides) =>
        new("", Nowhere with { Text = command }, Nowhere with { Text = figure }, words, [], [.. sides.Select(s => new SayingSide(s, []))], claim, 0);

    private static TrialResult Trial(
        SayingTest test, string place, double[][] values, PlaceWord first, double same = 0.0, int missing = 0, MovedFigure[]? moved = null, string? guess = null, SecondLook? lost = null)
    {
        IFigureSource source = test.Command.Text == "cast" ? new CastSource() : new RetrieveSource();
        int column = (test.IsOfWords ? source.Words : source.Numbers).ToList().IndexOf(test.Figure.Text);
        bool?[] truths = [.. values.Select(v => SayingRule.IsTrue(test.Claim.Kind, test.Claim, v))];
        SecondLook[] all = [lost ?? new(Again.Mesh, 0, double.NaN, true), new(Again.Step, 3, SayingRule.Chance(truths), true), new(Again.Seed, 4, SayingRule.Chance(truths), true)];
        return new(
            new(test, new(place, Nowhere, []), source, column, null!, [], []), values, SayingRule.Chance(truths), all.All(l => l.Stands) ? first : PlaceWord.Unknown, first, all, 0.0, same, missing,
            missing > 0 ? "the line broke." : "", moved ?? [], guess is null ? null : new(guess, 0.9));
    }
}
