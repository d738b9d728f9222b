namespace LureSim.Reports.Sweep;

/// <summary>Reads a file line by line and knows where each line starts. Only lines that end in a line feed count.</summary>
internal sealed class LineCursor(Stream stream)
{
    private byte[] buffer = new byte[1 << 16];
    private int start;
    private int filled;

    /// <summary>Where the next line starts, bytes.</summary>
    public long Position { get; private set; }

    /// <summary>The next line without its line feed; false at the end, where a torn line may follow.</summary>
    public bool TryRead(out ReadOnlySpan<byte> line)
    {
        int searched = 0;
        while (true)
        {
            int length = buffer.AsSpan(start + searched, filled - start - searched).IndexOf((byte)'\n');
            if (length >= 0)
            {
                length += searched;
                line = buffer.AsSpan(start, length);
                start += length + 1;
                Position += length + 1;
                return true;
            }

            searched = filled - start;
            if (!Fill())
            {
                line = default;
                return false;
            }
        }
    }

    private bool Fill()
    {
        buffer.AsSpan(start, filled - start).CopyTo(buffer);
        (start, filled) = (0, filled - start);
        if (filled == buffer.Length)
        {
            Array.Resize(ref buffer, 2 * buffer.Length);
        }

        int read = stream.Read(buffer, filled, buffer.Length - filled);
        filled += read;
        return read > 0;
    }
}
