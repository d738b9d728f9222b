using System.Security.Cryptography;
using System.Text;

namespace LureSim.Reports.Sweep;

/// <summary>
/// Closes lines of a journal: a text, a tab, and the first 64 bits of its HMAC-SHA-256 in hexadecimal digits. The key of the first line is
/// empty; every later line's key hangs on the first line and on the machine that made it, so that a line of another sweep, or of another
/// place in the file, does not fit.
/// </summary>
internal sealed class JournalSeal
{
    private const int Digits = 16;
    private readonly byte[] _key;

    private JournalSeal(byte[] key) => _key = key;

    /// <summary>Seal of the first line.</summary>
    public static JournalSeal First { get; } = new([]);

    /// <summary>Seal of the lines that follow a line.</summary>
    /// <param name="text">Text of that line.</param>
    public JournalSeal After(string text) => new(HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes(text)));

    /// <summary>The line with its line feed, as bytes.</summary>
    /// <param name="text">Text without line feed.</param>
    public byte[] Close(string text)
    {
        byte[] body = Encoding.UTF8.GetBytes(text);
        return [.. body, .. Encoding.ASCII.GetBytes("\t" + CheckOf(body) + "\n")];
    }

    /// <summary>The text of a line, or null when its check does not fit.</summary>
    /// <param name="line">Line without its line feed.</param>
    public string? Open(ReadOnlySpan<byte> line)
    {
        int end = line.Length - Digits - 1;
        if (end < 0 || line[end] != (byte)'\t')
        {
            return null;
        }

        string check = Encoding.ASCII.GetString(line[(end + 1)..]);
        return check == CheckOf(line[..end]) ? Encoding.UTF8.GetString(line[..end]) : null;
    }

    private string CheckOf(ReadOnlySpan<byte> body)
    {
        Span<byte> hash = stackalloc byte[HMACSHA256.HashSizeInBytes];
        HMACSHA256.HashData(_key, body, hash);
        return Convert.ToHexStringLower(hash[..(Digits / 2)]);
    }
}
