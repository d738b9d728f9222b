using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace LureSim.Gallery;

/// <summary>
/// Seals of dear pictures, kept beside them: a digest of the picture and of all it rests on (how charts are drawn, the scenario with every default, the model,
/// the study), numbers to four digits. When one of these changes, the seal no longer fits and the picture may be stale.
/// </summary>
/// <param name="root">Folder of the project.</param>
internal sealed partial class Seals(string root)
{
    /// <summary>File of the seals in <c>plots/</c>.</summary>
    public const string FileName = "seals.txt";

    private const string Head = "# Pictures that take minutes: digest of each and of what it rests on. Written by tests/LureSim.Gallery.\n";

    private string Place => Path.Combine(root, "plots", FileName);

    /// <summary>Whether the seal of a picture fits.</summary>
    /// <param name="picture">Dear picture.</param>
    /// <param name="stored">The picture on the disk.</param>
    /// <param name="workshop">Where its probe is run.</param>
    public bool Fits(Picture picture, byte[] stored, Workshop workshop) => Read().TryGetValue(picture.File, out string? seal) && seal == Of(picture, stored, workshop);

    /// <summary>Seals a picture as it is now.</summary>
    /// <param name="picture">Dear picture.</param>
    /// <param name="drawn">Its bytes.</param>
    /// <param name="workshop">Where its probe is run.</param>
    public void Put(Picture picture, byte[] drawn, Workshop workshop)
    {
        SortedDictionary<string, string> all = Read();
        all[picture.File] = Of(picture, drawn, workshop);
        File.WriteAllText(Place, Head + string.Concat(all.Select(s => $"{s.Value}  {s.Key}\n")));
    }

    /// <summary>Numbers of a text to four digits: the last ones differ between machines.</summary>
    /// <param name="text">Text of a command.</param>
    public static string Rounded(string text) => Number().Replace(text, m => double.Parse(m.Value, CultureInfo.InvariantCulture).ToString("G4", CultureInfo.InvariantCulture));

    private string Of(Picture picture, byte[] bytes, Workshop workshop)
    {
        using var all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        all.AppendData(bytes);
        string form = Path.Combine(root, "tests", "LureSim.Reports.Tests", "Charts", "Stored", picture.Probe!.StoredForm + ".txt");
        all.AppendData(File.ReadAllBytes(form));
        foreach (string typed in (string[])[.. picture.Typed, .. picture.Probe.Typed])
        {
            all.AppendData(Encoding.UTF8.GetBytes(typed + "\n"));
        }

        foreach (string typed in picture.Probe.Typed)
        {
            all.AppendData(Encoding.UTF8.GetBytes(Rounded(workshop.Run(typed))));
        }

        return Convert.ToHexStringLower(all.GetHashAndReset());
    }

    private SortedDictionary<string, string> Read()
    {
        var seals = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (string[] line in File.Exists(Place) ? File.ReadLines(Place).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split("  ")) : [])
        {
            seals[line[1]] = line[0];
        }

        return seals;
    }

    [GeneratedRegex(@"-?\d+\.\d+(?:[eE][-+]?\d+)?|-?\d+[eE][-+]?\d+")]
    private static partial Regex Number();
}
