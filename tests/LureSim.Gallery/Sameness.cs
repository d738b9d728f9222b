using SkiaSharp;

namespace LureSim.Gallery;

/// <summary>Whether two pictures show the same: other processors pack a PNG otherwise and round the rim of a letter otherwise, but no digit.</summary>
internal static class Sameness
{
    // A digit that changes moves dozens of pixels by most of the scale; a rim that rounds otherwise moves some by a few levels.
    private const int MostPixels = 10, MostLevels = 16;

    /// <summary>True when both show the same.</summary>
    /// <param name="file">Name, which tells the format.</param>
    /// <param name="stored">One picture.</param>
    /// <param name="drawn">The other.</param>
    public static bool Of(string file, byte[] stored, byte[] drawn) =>
        stored.AsSpan().SequenceEqual(drawn) || (Path.GetExtension(file) == ".png" && SamePixels(stored, drawn));

    private static bool SamePixels(byte[] stored, byte[] drawn)
    {
        using SKBitmap? a = Decoded(stored), b = Decoded(drawn);
        if (a is null || b is null || a.Width != b.Width || a.Height != b.Height)
        {
            return false;
        }

        SKColor[] left = a.Pixels, right = b.Pixels;
        int other = 0;
        for (int i = 0; i < left.Length; i++)
        {
            other += Distance(left[i], right[i]) > MostLevels ? 1 : 0;
        }

        return other <= MostPixels;
    }

    // Null where the bytes are no picture.
    private static SKBitmap? Decoded(byte[] bytes)
    {
        using SKData data = SKData.CreateCopy(bytes);
        using SKCodec? codec = SKCodec.Create(data);
        return codec is null ? null : SKBitmap.Decode(codec);
    }

    private static int Distance(SKColor a, SKColor b) =>
        Math.Max(Math.Abs(a.Red - b.Red), Math.Max(Math.Abs(a.Green - b.Green), Math.Abs(a.Blue - b.Blue)));
}
