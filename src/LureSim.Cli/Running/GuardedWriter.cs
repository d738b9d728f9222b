using System.Text;
using LureSim.Reports.Kit.Files;

namespace LureSim.Cli.Running;

/// <summary>
/// stdout or stderr that may be closed or full. Results that cannot be told are an error with a name; what goes to stderr is then lost, for
/// there is no place left to say so.
/// </summary>
/// <param name="inner">Where to write.</param>
/// <param name="name">Name of a stream whose failure is an error; null to go on in silence.</param>
internal sealed class GuardedWriter(TextWriter inner, string? name) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(string? value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            if (name is not null)
            {
                throw new OutputException(name, e);
            }
        }
    }
}
