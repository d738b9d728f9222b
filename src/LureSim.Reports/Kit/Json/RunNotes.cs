using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Kit.Json;

/// <summary>What the reader of a result must know beside its numbers.</summary>
/// <param name="Warnings">One line each.</param>
/// <param name="Guesses">One line per parameter that was guessed: key, value, range.</param>
public sealed record RunNotes(IReadOnlyList<string> Warnings, IReadOnlyList<string> Guesses)
{
    /// <summary>How quantities are told in texts and pictures; JSON and CSV are SI whatever it says.</summary>
    public Shown Shown { get; init; } = Shown.Both;

    /// <summary>Nothing to say.</summary>
    public static RunNotes None { get; } = new([], []);

    /// <summary>The same with one more warning before the others.</summary>
    /// <param name="warning">Warning, or null for none.</param>
    public RunNotes After(string? warning) => warning is null ? this : this with { Warnings = [warning, .. Warnings] };
}
