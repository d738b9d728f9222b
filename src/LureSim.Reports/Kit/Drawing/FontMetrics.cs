using System.Buffers.Binary;
using System.Text;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>
/// Advance widths and line height straight from a TrueType file, so that SVG is laid out without native code and PNG
/// is laid out exactly like it. Tables head, hhea, hmtx and cmap (format 4): OpenType specification, ISO/IEC 14496-22.
/// </summary>
internal sealed class FontMetrics
{
    private static readonly Lazy<FontMetrics> RegularFace = new(() => new FontMetrics(FontFile.Read(bold: false)));
    private static readonly Lazy<FontMetrics> BoldFace = new(() => new FontMetrics(FontFile.Read(bold: true)));

    private readonly byte[] _data;
    private readonly int _cmap;
    private readonly int _hmtx;
    private readonly int _wideGlyphs;
    private readonly double _unitsPerEm;

    /// <summary>Reads the tables of one font file.</summary>
    /// <param name="data">The whole file.</param>
    public FontMetrics(byte[] data)
    {
        _data = data;
        _unitsPerEm = U16(Table("head") + 18);
        int hhea = Table("hhea");
        Ascent = I16(hhea + 4) / _unitsPerEm;
        Descent = -I16(hhea + 6) / _unitsPerEm;
        _wideGlyphs = U16(hhea + 34);
        _hmtx = Table("hmtx");
        _cmap = UnicodeMap(Table("cmap"));
    }

    /// <summary>Height above the baseline over the font size.</summary>
    public double Ascent { get; }

    /// <summary>Depth below the baseline over the font size.</summary>
    public double Descent { get; }

    /// <summary>Distance of two baselines over the font size.</summary>
    public double LineHeight => Ascent + Descent;

    /// <summary>The face for a weight.</summary>
    /// <param name="weight">400 regular, 700 bold.</param>
    public static FontMetrics For(double weight) =>
        weight >= FontFile.BoldFrom ? BoldFace.Value : RegularFace.Value;

    /// <summary>Width of one line of text over the font size; no kerning.</summary>
    /// <param name="line">Text without line breaks.</param>
    public double Width(string line)
    {
        int sum = 0;
        foreach (char c in line)
        {
            sum += U16(_hmtx + (4 * Math.Min(Glyph(c), _wideGlyphs - 1)));
        }

        return sum / _unitsPerEm;
    }

    /// <summary>Index of a character's glyph, 0 when the font has none.</summary>
    /// <param name="c">A character of the basic plane.</param>
    public int Glyph(char c)
    {
        int segments = U16(_cmap + 6) / 2;
        int ends = _cmap + 14, starts = ends + (2 * segments) + 2;
        int deltas = starts + (2 * segments), offsets = deltas + (2 * segments);
        for (int i = 0; i < segments; i++)
        {
            if (c > U16(ends + (2 * i)))
            {
                continue;
            }

            int start = U16(starts + (2 * i)), offset = U16(offsets + (2 * i)), delta = U16(deltas + (2 * i));
            if (c < start)
            {
                return 0;
            }

            int glyph = offset == 0 ? c : U16(offsets + (2 * i) + offset + (2 * (c - start)));
            return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
        }

        return 0;
    }

    private int UnicodeMap(int cmap)
    {
        int count = U16(cmap + 2);
        for (int i = 0; i < count; i++)
        {
            int map = cmap + (int)U32(cmap + 8 + (8 * i));
            if (U16(map) == 4)
            {
                return map;
            }
        }

        throw new InvalidDataException("the font has no character map of format 4");
    }

    private int Table(string tag)
    {
        int count = U16(4);
        for (int i = 0; i < count; i++)
        {
            int record = 12 + (16 * i);
            if (Encoding.ASCII.GetString(_data, record, 4) == tag)
            {
                return (int)U32(record + 8);
            }
        }

        throw new InvalidDataException($"the font has no table {tag}");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_data.AsSpan(at));

    private int I16(int at) => BinaryPrimitives.ReadInt16BigEndian(_data.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_data.AsSpan(at));
}
