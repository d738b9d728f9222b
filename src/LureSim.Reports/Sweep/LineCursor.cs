namespace LureSim.Reports.Sweep;

/// <summary>Reads a file line by line and knows where each line starts. Only lines that end in a line feed count.</summary>
internal sealed class LineCursor(Stream stream)
{
    /// <summary>Longest line that is taken, bytes; a row of a sweep is a thousandth of it.</summary>
    public const int Longest = 1 << 20;

    private byte[] _buffer = new byte[1 << 16];
    private int _start;
    private int _filled;

    /// <summary>Where the next line starts, bytes.</summary>
    public long Position { get; private set; }

    /// <summary>The next line without its line feed, empty for one that is longer than <see cref="Longest"/>; false at the end, where a
    /// torn line may follow.</summary>
    /// <param name="line">Line.</param>
    /// <param name="skipsLong">Reads on to the end of a line that is too long, instead of ending there.</param>
    public bool TryRead(out ReadOnlySpan<byte> line, bool skipsLong = true)
    {
        int searched = 0;
        long skipped = 0;
        while (true)
        {
            int length = _buffer.AsSpan(_start + searched, _filled - _start - searched).IndexOf((byte)'\n');
            if (length >= 0)
            {
                length += searched;
                line = skipped > 0 ? default : _buffer.AsSpan(_start, length);
                _start += length + 1;
                Position += skipped + length + 1;
                return true;
            }

            searched = _filled - _start;
            if (searched >= Longest)
            {
                (skipped, searched, _start) = (skipped + searched, 0, _filled);
                if (!skipsLong)
                {
                    line = default;
                    return true;
                }
            }

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
