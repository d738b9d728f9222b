using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Cli.Running;

/// <summary>
/// The one way of text to a terminal: characters that would steer it, from a title, a key or the name of a file, arrive as <c>\u001B</c>.
/// Line feeds pass, except inside what is written as one line where one line is promised.
/// </summary>
/// <param name="inner">Receives the text.</param>
/// <param name="oneLine">What <see cref="WriteLine(string)"/> gets stays one line.</param>
internal sealed class PlainWriter(TextWriter inner, bool oneLine) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write([value]);

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    /// <inheritdoc/>
    public override void Write(string? value) => inner.Write(PlainText.Escape(value ?? "", keepLines: true));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => inner.WriteLine(PlainText.Escape(value ?? "", keepLines: !oneLine));

    /// <inheritdoc/>
    public override void WriteLine() => inner.WriteLine();

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();
}
