using System.Security.Cryptography;

namespace LureSim.Reports.Kit.Files;

/// <summary>The list that lies beside a set of files: which command made it, and the SHA-256 of each file, as <c>sha256sum -c</c> reads it.
/// A set is whole when its list is there: the list goes first and comes last.</summary>
/// <param name="Kind">What the set is, for example <c>cadence-map</c>.</param>
/// <param name="Files">Names without folder, with 64 hexadecimal digits each.</param>
internal sealed record SetList(string Kind, IReadOnlyList<(string Name, string Sha256)> Files)
{
    /// <summary>Name of the list.</summary>
    public const string FileName = "luresim.sha256";

    private const string Mark = "# luresim ";
    private const int Digits = 64, Longest = 1 << 20;

    /// <summary>The list as text.</summary>
    public string Text => $"{Mark}{Kind}\n{string.Concat(Files.Select(f => $"{f.Sha256}  {f.Name}\n"))}";

    /// <summary>Reads the list of a folder; null when it has none that this program wrote.</summary>
    /// <param name="folder">Folder.</param>
    public static SetList? Read(string folder)
    {
        var file = new FileInfo(Path.Combine(folder, FileName));
        return file.Exists && file.Length is > 0 and < Longest ? Parse(File.ReadAllText(file.FullName)) : null;
    }

    /// <summary>SHA-256 of a file as hexadecimal digits.</summary>
    /// <param name="file">Opened at its start.</param>
    public static string HashOf(FileStream file) => Convert.ToHexStringLower(SHA256.HashData(file));

    /// <summary>Whether a file of the set lies in a folder just as it was written.</summary>
    /// <param name="folder">Folder.</param>
    /// <param name="name">Name of a listed file.</param>
    public bool IsAsWritten(string folder, string name)
    {
        string path = Path.Combine(folder, name);
        if (!File.Exists(path))
        {
            return false;
        }

        using FileStream file = File.OpenRead(path);
        return HashOf(file) == Files.First(f => f.Name == name).Sha256;
    }

    private static SetList? Parse(string text)
    {
        string[] lines = text.TrimEnd('\n').Split('\n');
        string kind = lines[0].StartsWith(Mark, StringComparison.Ordinal) ? lines[0][Mark.Length..] : "";
        (string Name, string Sha256)[] files = [.. lines.Skip(1).Where(l => l.Length > Digits + 2).Select(l => (l[(Digits + 2)..], l[..Digits]))];
        bool whole = kind.Length > 0 && kind.All(c => c is '-' or (>= 'a' and <= 'z')) && files.Length == lines.Length - 1;
        return whole && files.All(f => IsPlain(f.Name)) ? new(kind, files) : null;
    }

    // A list that someone has changed must not lead out of its folder.
    private static bool IsPlain(string name) => name[0] != '.' && !name.AsSpan().ContainsAny("/\\\0:");
}
