using System.Text;
using System.Threading.Channels;
using LureSim.Cli;

namespace LureSim.Live;

/// <summary>A whole study for the page: the program's own command, with its text and pictures, and its line of progress while it runs.</summary>
/// <param name="file">Scenario file.</param>
/// <param name="units">Units, or null for those of the file.</param>
internal sealed class StudyRun(string file, string? units)
{
    /// <summary>Runs it; each line of progress comes when it is there, the answer last.</summary>
    /// <param name="request">What is asked for.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public async IAsyncEnumerable<StudyLine> Lines(StudyRequest request, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken stop)
    {
        var lines = Channel.CreateUnbounded<StudyLine>(new() { SingleReader = true });
        Task work = Task.Run(
            () =>
            {
                try
                {
                    lines.Writer.TryWrite(Answer(request, lines.Writer, stop));
                }
                finally
                {
                    lines.Writer.Complete();
                }
            },
            CancellationToken.None);
        await foreach (StudyLine line in lines.Reader.ReadAllAsync(CancellationToken.None).ConfigureAwait(false))
        {
            yield return line;
        }

        await work.ConfigureAwait(false);
        stop.ThrowIfCancellationRequested();
    }

    private StudyLine Answer(StudyRequest request, ChannelWriter<StudyLine> lines, CancellationToken stop)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("luresim-live-");
        try
        {
            using var text = new StringWriter();
            using var error = new ProgressWriter(line => lines.TryWrite(new(Progress: line)));
            int code = App.Run(request.Arguments(file, folder.FullName, units), new Terminal(text, error, IsInteractive: true), stop);
            string told = WithoutFolder(text.ToString());
            return told.Length == 0 ? new(Fault: error.Told.Trim() is { Length: > 0 } why ? why : $"the program ended with {code}")
                : new(Text: told + error.Told, Pictures: Pictures(folder));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Where the files are matters to nobody: they are gone when the page has them.
    private static string WithoutFolder(string text) => string.Join('\n', text.Split('\n').Where(l => !l.StartsWith("Files: ", StringComparison.Ordinal)).Select(WithoutFiles));

    // "Guessed parameters: 1; effective.toml marks them ..."
    private static string WithoutFiles(string line) =>
        line.StartsWith("Guessed parameters: ", StringComparison.Ordinal) && line.IndexOf(';', StringComparison.Ordinal) is > 0 and int end ? line[..end] + "." : line;

    private static StudyPicture[] Pictures(DirectoryInfo folder) =>
        [.. folder.GetFiles("*.svg").OrderBy(f => f.Name, StringComparer.Ordinal).Select(f => new StudyPicture(Path.GetFileNameWithoutExtension(f.Name), File.ReadAllText(f.FullName)))];

    /// <summary>Parts what is rewritten in place, the progress, from what stays, faults and notes.</summary>
    private sealed class ProgressWriter(Action<string> progress) : TextWriter
    {
        private readonly StringBuilder _told = new();
        private readonly Lock _gate = new();

        public override Encoding Encoding => Encoding.UTF8;

        public string Told
        {
            get
            {
                lock (_gate)
                {
                    return _told.ToString();
                }
            }
        }

        public override void Write(char value) => Write(value.ToString());

        public override void Write(string? value)
        {
            lock (_gate)
            {
                if (value is ['\r', .. string line])
                {
                    if (line.Trim() is { Length: > 0 } words)
                    {
                        progress(words);
                    }
                }
                else
                {
                    _told.Append(value);
                }
            }
        }
    }
}
