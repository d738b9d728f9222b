using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Starting;

/// <summary>One thing that was guessed.</summary>
/// <param name="Key">Key of the scenario.</param>
/// <param name="Value">Value as the file holds it.</param>
/// <param name="Why">Where it comes from.</param>
public sealed record StartGuess(string Key, string Value, string Why);

/// <summary>A scenario that is about to be written; where its ballast lies is still open, so that the float model can find it.</summary>
public sealed class StartPlan
{
    private readonly ScenarioText _text;

    internal StartPlan(StartKind kind, string fileName, ScenarioText text, IReadOnlyList<string> remarks) =>
        (Kind, FileName, _text, Remarks) = (kind.Name, fileName, text, remarks);

    /// <summary>Kind of lure.</summary>
    public string Kind { get; }

    /// <summary>Name of the file where none is given.</summary>
    public string FileName { get; }

    /// <summary>The lure that it was scaled from.</summary>
    public Part LurePart => _text.Lure.Part;

    /// <summary>Lengths over those of that lure.</summary>
    public double Scale => _text.Lure.Scale;

    /// <summary>Length of the body, m.</summary>
    public double LengthM => _text.Lure.LengthM;

    /// <summary>Length that goes with the mass in bodies of these proportions, m.</summary>
    public double UsualLengthM => LureDraft.Of(LurePart).Sized(MassKg, null).LengthM;

    /// <summary>Mass that goes with the length, kg.</summary>
    public double UsualMassKg => LureDraft.Of(LurePart).Sized(null, LengthM).MassKg;

    /// <summary>Mass with hooks, kg.</summary>
    public double MassKg => _text.Lure.MassKg;

    /// <summary>Where the ballast would lie by scale alone, m from the middle.</summary>
    public double BallastXM => _text.Lure.Ballast.XM;

    /// <summary>Title of the scenario.</summary>
    public string Title => _text.Title;

    /// <summary>What was guessed, the lure first.</summary>
    public IReadOnlyList<StartGuess> Guesses => [.. _text.Guesses()];

    /// <summary>What the person should know.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>The scenario file.</summary>
    /// <param name="ballastXM">Where the ballast lies, m from the middle toward the nose.</param>
    /// <param name="floats">How it floats, in a few words; null while it is not known.</param>
    public string Toml(double ballastXM, string? floats = null) => _text.Write(ballastXM, floats);
}
