namespace LureSim.Studies.Compare;

/// <summary>One thing about people that decides whether they notice a difference. None was measured with rods: each is a guess with a range.</summary>
/// <param name="Key">Name in files.</param>
/// <param name="Words">What it is.</param>
/// <param name="Unit">Unit of the range; empty for shares.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Source">Where the range comes from.</param>
public sealed record Human(string Key, string Words, string Unit, double Low, double High, string Source)
{
    /// <summary>Value below which a share of people lies: even in ratio, since senses work by ratios.</summary>
    /// <param name="share">0 to 1.</param>
    public double At(double share) => Low * Math.Pow(High / Low, share);
}

/// <summary>The table of people: how small a difference they tell apart (a share of the value, Weber's fraction), and how steady they are.</summary>
public static class Humans
{
    private const string Guessed = "guess, no source";

    /// <summary>Tempo of a rhythm.</summary>
    public static readonly Human Tempo = new("tempo", "tempo told apart", "", 0.015, 0.06, "Drake and Botte 1993, Perception and Psychophysics 54, 277: 6 % of one interval, 3 % of six, 1.5 % at best (abstract seen)");

    /// <summary>Torque felt by the hand.</summary>
    public static readonly Human Torque = new("torque", "torque told apart by hand", "", 0.07, 0.15, "force 7 % (Pang, Tan and Durlach 1991, Perception and Psychophysics 49, 531, abstract seen); torque between finger and thumb 12.7 % (Jandura and Srinivasan 1994, from memory)");

    /// <summary>Heaviness of a held thing.</summary>
    public static readonly Human Weight = new("weight", "heaviness of a held thing told apart", "", 0.04, 0.13, "lifted weights 4.3 % (Oberlin 1936) and 5.9 % (Fechner's weights, Laming), both quoted in a later paper that was seen; torque as the upper end");

    /// <summary>Swing weight.</summary>
    public static readonly Human Inertia = new("inertia", "swing weight told apart", "", 0.05, 0.30, "Brody 2000, Sports Engineering 3, 145: a few per cent by trained players; Kreifeldt and Chuang 1979, Science 206, 588, and Ross and Benson 1986: 20 to 30 % by others (all from memory)");

    /// <summary>Lengths by eye.</summary>
    public static readonly Human Eye = new("eye", "lengths told apart by eye", "", 0.03, 0.10, "lines side by side 3 % (Teghtsoonian 1971, American Journal of Psychology 84, 233, from memory); moving, and one after the other: guess");

    /// <summary>Sharpness of the eye.</summary>
    public static readonly Human Sharpness = new("sharpness", "smallest angle that an eye resolves", "rad", 2.9e-4, 5.8e-4, "one minute of arc is the norm of the sight test since Snellen 1862 (from memory); two on moving water: guess");

    /// <summary>How steadily a rhythm is kept.</summary>
    public static readonly Human Steadiness = new("steadiness", "scatter of a twitched rhythm", "", 0.04, 0.10, "tapping 3 to 6 % (Wing and Kristofferson 1973, Perception and Psychophysics 14, 5, from memory); with a rod: guess");

    /// <summary>How steadily a rod is held.</summary>
    public static readonly Human RodAngle = new("rod_angle", "scatter of the angle at which a rod is held", "rad", 0.035, 0.087, "guess, 2 to 5 deg, no source");

    /// <summary>How steadily slack is kept.</summary>
    public static readonly Human Slack = new("slack", "scatter of the slack that is kept", "m", 0.02, 0.06, Guessed);

    /// <summary>Twitches that are watched before somebody judges.</summary>
    public static readonly Human Twitches = new("twitches", "twitches watched before somebody judges", "", 10.0, 30.0, "as many as casts (common practice, no source)");

    /// <summary>Turns of the handle that are comfortable while twitching.</summary>
    public static readonly Human Turns = new("turns", "comfortable turns of the handle while twitching", "1/s", 0.8, 2.0, Guessed);

    /// <summary>All, in the order of documents.</summary>
    public static IReadOnlyList<Human> All { get; } = [Tempo, Torque, Weight, Inertia, Eye, Sharpness, Steadiness, RodAngle, Slack, Twitches, Turns];
}
