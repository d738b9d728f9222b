namespace LureSim.Reports.Sweep;

/// <summary>Reads a file line by line and knows where each line starts. Only lines that end in a line feed count.</summary>
internal sealed class LineCursor(Stream stream)
{
    private byte[] _buffer = new byte[1 << 16];
    private int _start;
    private int _filled;

    /// <summary>Where the next line starts, bytes.</summary>
    public long Position { get; private set; }

    /// <summary>The next line without its line feed; false at the end, where a torn line may follow.</summary>
    public bool TryRead(out ReadOnlySpan<byte> line)
    {
        int searched = 0;
        while (true)
        {
            int length = _buffer.AsSpan(_start + searched, _filled - _start - searched).IndexOf((byte)'\n');
            if (length >= 0)
            {
                length += searched;
                line = _buffer.AsSpan(_start, length);
                _start += length + 1;
                Position += length + 1;
                return true;
            }

            searched = _filled - _start;
            if (!Fill())
            {
                line = default;
                return false;
            }
        }
    }

    private bool Fill()
    {
        _buffer.AsSpan(_start, _filled - _start).CopyTo(_buffer);
        (_start, _filled) = (0, _filled - _start);
        if (_filled == _buffer.Length)
        {
            Array.Resize(ref _buffer, 2 * _buffer.Length);
        }

        int read = stream.Read(_buffer, _filled, _buffer.Length - _filled);
        _filled += read;
        return read > 0;
    }
}
