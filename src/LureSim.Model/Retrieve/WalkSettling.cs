namespace LureSim.Model.Retrieve;

/// <summary>What a twitch leaves behind for the next one.</summary>
/// <param name="Twitch">The twitch.</param>
/// <param name="SlackM">Slack just before the next pull, m.</param>
/// <param name="TakeUpMS">Take-up speed at the same time, m/s.</param>
internal readonly record struct TwitchEnd(TwitchRecord Twitch, double SlackM, double TakeUpMS);

/// <summary>
/// Whether a walk has settled, from its last eight twitches: each comes back to the one before last, what still drifts would change little if it
/// drifted on until the middle of the twitches that the whole run counts, and the pattern's word does not hang on a threshold. A return alone is
/// not enough: the hand gathers over seconds, so neighbours look alike long before the walk has arrived. How often it errs, and by how much:
/// <c>docs/cadence.md</c>.
/// </summary>
internal static class WalkSettling
{
    /// <summary>Twitches looked at, and counted by a run that ends: two of each side in each half.</summary>
    public const int Twitches = 8;

    // Half of the 20 deg at which the rules of patterns part tracking from turning.
    private const double HeadingRad = 10.0 * Math.PI / 180.0;

    private const double SlackM = 0.02;

    // Half of what the mesh of such runs leaves open in the glide.
    private const double TakeUpShare = 0.05;

    // A fifth of the narrowest walk.
    private const double WidthOverLength = 0.2 * PatternFinder.LeastWidthOverLength;

    // Angles and widths may be this much larger or smaller without another word.
    private const double Firm = 1.2;

    private const int Half = Twitches / 2;

    /// <summary>True when the walk has settled.</summary>
    /// <param name="ends">All twitches so far.</param>
    /// <param name="middle">Middle of the twitches that the whole run counts, in twitches from its start.</param>
    /// <param name="surgeMassKg">m11 of the hull, kg.</param>
    /// <param name="lengthM">L of the hull, m.</param>
    public static bool IsSettled(IReadOnlyList<TwitchEnd> ends, double middle, double surgeMassKg, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(ends);
        if (ends.Count < Twitches)
        {
            return false;
        }

        TwitchEnd[] last = [.. ends.TakeLast(Twitches)];

        // From the middle of these twitches on, in steps as long as that from the middle of their first half to that of their second.
        double ahead = Math.Max(0.0, middle - (ends.Count - Half)) / Half;
        return Math.Abs(Drift(last, e => e.TakeUpMS)) * ahead <= TakeUpShare * last.Average(e => e.TakeUpMS)
            && Math.Abs(Drift(last, e => e.SlackM)) * ahead <= SlackM
            && Math.Abs(Drift(last, e => e.Twitch.WidthM)) * ahead <= WidthOverLength * lengthM
            && Returns(last, 0, ahead) && Returns(last, 1, ahead)
            && IsFirm(last, surgeMassKg, lengthM);
    }

    private static double Drift(TwitchEnd[] last, Func<TwitchEnd, double> value) => last[Half..].Average(value) - last[..Half].Average(value);

    // Every second twitch ends at the same heading, the four of one side after each other.
    private static bool Returns(TwitchEnd[] last, int side, double ahead)
    {
        double first = last[side].Twitch.EndHeadingRad;
        double b = Turned(last[side + 2], first), c = Turned(last[side + 4], first), d = Turned(last[side + 6], first);
        double spread = Math.Max(Math.Max(0.0, b), Math.Max(c, d)) - Math.Min(Math.Min(0.0, b), Math.Min(c, d));
        return spread <= HeadingRad && Math.Abs(0.5 * (c + d - b)) * ahead <= HeadingRad;
    }

    private static double Turned(TwitchEnd end, double fromRad) => Math.IEEERemainder(end.Twitch.EndHeadingRad - fromRad, 2.0 * Math.PI);

    private static bool IsFirm(TwitchEnd[] last, double surgeMassKg, double lengthM)
    {
        WalkPattern Word(double scale) => PatternFinder.Classify([.. last.Select(e => Scaled(e.Twitch, scale))], surgeMassKg, lengthM);
        WalkPattern word = Word(1.0);
        return Word(Firm) == word && Word(1.0 / Firm) == word;
    }

    private static TwitchRecord Scaled(TwitchRecord t, double scale) =>
        t with { EndHeadingRad = scale * t.EndHeadingRad, SwingRad = scale * t.SwingRad, WidthM = scale * t.WidthM };
}
