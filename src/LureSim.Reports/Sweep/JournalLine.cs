using System.Security.Cryptography;
using System.Text;

namespace LureSim.Reports.Sweep;

/// <summary>One line of a journal: a text, a tab, and the first 64 bits of the text's SHA-256 in hexadecimal digits.</summary>
internal static class JournalLine
{
    private const int Digits = 16;

    /// <summary>The line with its line feed, as bytes.</summary>
    public static byte[] Seal(string text)
    {
        byte[] body = Encoding.UTF8.GetBytes(text);
        return [.. body, .. Encoding.ASCII.GetBytes("\t" + CheckOf(body) + "\n")];
    }

    /// <summary>The text of a line, or null when its checksum does not fit.</summary>
    /// <param name="line">Line without its line feed.</param>
    public static string? Open(ReadOnlySpan<byte> line)
    {
        int end = line.Length - Digits - 1;
        if (end < 0 || line[end] != (byte)'\t')
        {
            return null;
        }

        string check = Encoding.ASCII.GetString(line[(end + 1)..]);
        return check == CheckOf(line[..end]) ? Encoding.UTF8.GetString(line[..end]) : null;
    }

    private static string CheckOf(ReadOnlySpan<byte> body) => Convert.ToHexStringLower(SHA256.HashData(body))[..Digits];
}
