using System.Globalization;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios;

/// <summary>One thing that is wrong (or worth a note) in a scenario.</summary>
/// <param name="Place"><c>file(line,column)</c>, or <c>--set key=value</c>.</param>
/// <param name="Key">Full key, or empty where the file as a whole is at fault.</param>
/// <param name="Message">What is wrong; what is allowed; nearest known key.</param>
public sealed record ScenarioFault(string Place, string Key, string Message)
{
    /// <summary>Most faults of one file that are told; a person mends a few and looks again.</summary>
    public const int MostTold = 20;

    private const int Longest = 2000;

    /// <summary>The lines as printed: of each file, or of one option, the first ones and how many more there are.</summary>
    /// <param name="faults">Faults in their order.</param>
    public static IEnumerable<string> Lines(IEnumerable<ScenarioFault> faults)
    {
        foreach (IGrouping<string, ScenarioFault> file in faults.GroupBy(f => f.File))
        {
            int count = 0;
            foreach (ScenarioFault fault in file)
            {
                if (++count <= MostTold)
                {
                    yield return Clipped(fault.ToString());
                }
            }

            if (count > MostTold)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{file.Key}: and {count - MostTold} more");
            }
        }
    }

    /// <summary>The line as printed; what was typed may hold line feeds, which are told as such.</summary>
    public override string ToString() => PlainText.Escape(Key.Length == 0 ? $"{Place}: {Message}" : $"{Place}: {Key}: {Message}");

    // A key may be as long as its file; no message of the program comes near.
    private static string Clipped(string line) => line.Length <= Longest ? line : $"{line[..(Longest / 2)]} ... {line[^(Longest / 4)..]}";

    // The place without line and column, or the option without its value.
    private string File => Place.StartsWith("--", StringComparison.Ordinal) ? Place.Split(' ')[0]
        : Place.LastIndexOf('(') is int bar and > 0 && Place[^1] == ')' ? Place[..bar]
        : Place;
}
