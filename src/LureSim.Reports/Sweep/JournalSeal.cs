using System.Security.Cryptography;
using System.Text;

namespace LureSim.Reports.Sweep;

/// <summary>
/// Closes lines of a journal: a text, a tab, and the first 64 bits of the SHA-256 of seed and text in hexadecimal digits. The seed of the
/// first line is empty; every later line's seed hangs on the first line and on the machine that made it, so that a line of another sweep,
/// part or machine does not fit. It guards against mistakes, not against somebody who computes new checks.
/// </summary>
internal sealed class JournalSeal
{
    private const int Digits = 16, Usual = 4096;
    private readonly byte[] _seed;

    private JournalSeal(byte[] seed) => _seed = seed;

    /// <summary>Seal of the first line.</summary>
    public static JournalSeal First { get; } = new([]);

    /// <summary>Seal of the lines that follow a line.</summary>
    /// <param name="text">Text of that line.</param>
    public JournalSeal After(string text) => new(HashOf(Encoding.UTF8.GetBytes(text)));

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

    private string CheckOf(ReadOnlySpan<byte> body) => Convert.ToHexStringLower(HashOf(body).AsSpan(0, Digits / 2));

    private byte[] HashOf(ReadOnlySpan<byte> body)
    {
        int length = _seed.Length + body.Length;
        Span<byte> whole = length <= Usual ? stackalloc byte[Usual] : new byte[length];
        _seed.CopyTo(whole);
        body.CopyTo(whole[_seed.Length..]);
        return SHA256.HashData(whole[..length]);
    }
}
