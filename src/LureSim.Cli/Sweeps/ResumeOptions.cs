using System.CommandLine;

namespace LureSim.Cli.Sweeps;

/// <summary>Options of a study that goes on from its journal.</summary>
/// <param name="what">What it is, for people.</param>
public sealed class ResumeOptions(string what)
{
    /// <summary><c>--resume</c>.</summary>
    public Option<bool> Resume { get; } = new("--resume") { Description = $"Go on with a {what} that was stopped or killed." };

    /// <summary><c>--mix-machines</c>.</summary>
    public Option<bool> Mix { get; } = new("--mix-machines") { Description = "Go on with rows of another kind of machine, whose last digits may differ." };

    /// <summary>Adds both to a command.</summary>
    /// <param name="to">Command.</param>
    public void AddTo(Command to)
    {
        to.Add(Resume);
        to.Add(Mix);
    }

    /// <summary>The values given.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    public ResumeValues Read(ParseResult parsed) => new(parsed.GetValue(Resume), parsed.GetValue(Mix));
}

/// <summary>Values of <see cref="ResumeOptions"/>.</summary>
/// <param name="Resume">Go on with what is there.</param>
/// <param name="MixMachines">Go on even with rows of another kind of machine.</param>
public readonly record struct ResumeValues(bool Resume, bool MixMachines);
