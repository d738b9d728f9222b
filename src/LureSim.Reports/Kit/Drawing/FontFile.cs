namespace LureSim.Reports.Kit.Drawing;

/// <summary>The typefaces that travel inside the assembly, so that pictures need no installed font.</summary>
internal static class FontFile
{
    /// <summary>Family name as written into SVG, with the generic fallback.</summary>
    public const string Family = "DejaVu Sans, sans-serif";

    /// <summary>From this weight on the bold face is used.</summary>
    public const double BoldFrom = 600;

    /// <summary>Bytes of the unmodified font file.</summary>
    /// <param name="bold">Bold instead of regular.</param>
    public static byte[] Read(bool bold)
    {
        string name = bold ? "DejaVuSans-Bold.ttf" : "DejaVuSans.ttf";
        using Stream stream = typeof(FontFile).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"embedded font {name} is missing");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
