using System.Globalization;
using LureSim.Scenarios;

namespace LureSim.Cli.Commands;

/// <summary>Reads counts that options give; never by the machine's culture.</summary>
internal static class Counts
{
    /// <summary>The count, or the other value where none was given or it was refused.</summary>
    /// <param name="text">As given, or null.</param>
    /// <param name="otherwise">Value when none was given.</param>
    /// <param name="option">Name of the option, for messages.</param>
    /// <param name="least">Least allowed.</param>
    /// <param name="most">Most allowed.</param>
    /// <param name="faults">Gets the fault.</param>
    public static int Read(string? text, int otherwise, string option, int least, int most, ICollection<ScenarioFault> faults)
    {
        if (text is null)
        {
            return otherwise;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count >= least && count <= most)
        {
            return count;
        }

        faults.Add(new(option, "", $"\"{text}\" is no count; allowed: {least} to {most}"));
        return otherwise;
    }
}
