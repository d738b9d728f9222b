using System.Text;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Scenarios;

namespace LureSim.Cli;

/// <summary>Where a command writes: results to <paramref name="Out"/>, everything else to <paramref name="Error"/>.</summary>
/// <param name="Out">stdout.</param>
/// <param name="Error">stderr.</param>
/// <param name="IsInteractive">True when a person watches stderr.</param>
/// <param name="ShowsProgress">False where lines that depend on the speed of the machine would disturb.</param>
public sealed record Terminal(TextWriter Out, TextWriter Error, bool IsInteractive, bool ShowsProgress = true)
{
    /// <summary>stdout, through which no text of the user steers the terminal; closed or full it is a fault in words.</summary>
    public TextWriter Out { get; } = new PlainWriter(new GuardedWriter(Out, "standard output"), oneLine: false);

    /// <summary>stderr, likewise; a line is a line, and where nobody can be told, nobody is.</summary>
    public TextWriter Error { get; } = new PlainWriter(new GuardedWriter(Error, null), oneLine: true);

    /// <summary>stderr as it is, for the program's own line of progress that is written over.</summary>
    internal TextWriter Cursor { get; } = new GuardedWriter(Error, null);

    /// <summary>Tells faults on stderr, a line each; of each file the first ones and how many more there are.</summary>
    /// <param name="faults">Faults.</param>
    internal void Tell(IEnumerable<ScenarioFault> faults)
    {
        foreach (string line in ScenarioFault.Lines(faults))
        {
            Error.WriteLine(line);
        }
    }

    /// <summary>Prints a result as JSON or text, as asked for.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="json">Writes JSON as UTF-8.</param>
    /// <param name="text">Makes the text.</param>
    internal void Print(CommonValues values, Action<Stream> json, Func<string> text)
    {
        if (values.Json)
        {
            using var stream = new MemoryStream();
            json(stream);
            Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!values.Quiet)
        {
            Out.Write(text());
            Out.Write($"Files: {values.Folder}\n");
        }
    }
}
