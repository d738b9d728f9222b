using System.Globalization;
using System.Text;

namespace LureSim.Gallery;

/// <summary>The page of the pictures: caption and command of each.</summary>
internal static class GalleryPage
{
    /// <summary>Its place in the project.</summary>
    public const string Place = "docs/gallery.md";

    /// <summary>Writes the page.</summary>
    /// <param name="pictures">Pictures in order.</param>
    public static string Write(IReadOnlyList<Picture> pictures)
    {
        var text = new StringBuilder();
        text.Append("# Gallery\n\n");
        text.Append("Made by `dotnet run -c Release --project tests/LureSim.Gallery`; do not edit. Every picture comes from a shipped scenario by the commands below it\n");
        text.Append("(`luresim` stands for `dotnet run -c Release --project src/LureSim.Cli --`), which write it, and more like it, into `out/`. How to read them: [pictures.md](pictures.md).\n");
        foreach (Picture p in pictures)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## `{Path.GetFileNameWithoutExtension(p.File)}`\n\n{p.Caption}\n\n![{Alt(p.Caption)}](../plots/{p.File})\n\n```\n{string.Join('\n', p.Typed)}\n```\n");
            if (p.Probe is not null)
            {
                text.Append("\nThis one takes minutes. It is not drawn at every check, but sealed with what it rests on (`plots/seals.txt`).\n");
            }
        }

        return text.ToString();
    }

    // The first sentence.
    private static string Alt(string caption) => caption.Split(". ")[0].TrimEnd('.').Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
}
