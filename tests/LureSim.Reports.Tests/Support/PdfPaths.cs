using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using LureSim.Reports.Kit.Plans;

namespace LureSim.Reports.Tests.Support;

/// <summary>Reads the lines that a PDF strokes on its pages: path operators and the current transformation of ISO 32000, no more.</summary>
internal static partial class PdfPaths
{
    /// <summary>Sizes of the pages, points.</summary>
    public static IReadOnlyList<(double Width, double Height)> Pages(byte[] pdf) =>
        [.. Box().Matches(Encoding.Latin1.GetString(pdf)).Select(m => (Number(m.Groups[1].Value), Number(m.Groups[2].Value)))];

    /// <summary>Stroked paths of every stream in order, in millimetres from the lower left corner.</summary>
    public static IReadOnlyList<IReadOnlyList<PlanPoint>> Stroked(byte[] pdf)
    {
        var all = new List<IReadOnlyList<PlanPoint>>();
        string text = Encoding.Latin1.GetString(pdf);
        foreach (Match m in Stream().Matches(text))
        {
            int from = m.Index + m.Length;
            byte[] body = pdf[from..text.IndexOf("endstream", from, StringComparison.Ordinal)];
            if (m.Value.Contains("/FlateDecode", StringComparison.Ordinal))
            {
                using var plain = new MemoryStream();
                using var inflate = new ZLibStream(new MemoryStream(body), CompressionMode.Decompress);
                inflate.CopyTo(plain);
                body = plain.ToArray();
            }

            Read(Encoding.Latin1.GetString(body), all);
        }

        return all;
    }

    private static void Read(string content, List<IReadOnlyList<PlanPoint>> all)
    {
        double[] now = [1, 0, 0, 1, 0, 0];
        var kept = new Stack<double[]>();
        var path = new List<PlanPoint>();
        var numbers = new List<double>();
        foreach (string word in content.Split((char[])[' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                numbers.Add(number);
                continue;
            }

            switch (word)
            {
                case "q":
                    kept.Push(now);
                    break;
                case "Q":
                    now = kept.Pop();
                    break;
                case "cm":
                    now = Times([.. numbers.TakeLast(6)], now);
                    break;
                case "m" or "l":
                    path.Add(Placed(numbers[^2], numbers[^1], now));
                    break;
                case "c":
                    path.Add(Placed(numbers[^2], numbers[^1], now));
                    break;
                case "S" or "s":
                    all.Add([.. path]);
                    path.Clear();
                    break;
                case "f" or "f*" or "n" or "B":
                    path.Clear();
                    break;
                default:
                    break;
            }

            numbers.Clear();
        }
    }

    private static PlanPoint Placed(double x, double y, double[] m)
    {
        const double mm = 25.4 / 72.0;
        return new(mm * ((m[0] * x) + (m[2] * y) + m[4]), mm * ((m[1] * x) + (m[3] * y) + m[5]));
    }

    private static double[] Times(double[] a, double[] b) =>
    [
        (a[0] * b[0]) + (a[1] * b[2]), (a[0] * b[1]) + (a[1] * b[3]), (a[2] * b[0]) + (a[3] * b[2]), (a[2] * b[1]) + (a[3] * b[3]),
        (a[4] * b[0]) + (a[5] * b[2]) + b[4], (a[4] * b[1]) + (a[5] * b[3]) + b[5],
    ];

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]")]
    private static partial Regex Box();

    [GeneratedRegex(@"<<[^<>]*>> stream\r?\n")]
    private static partial Regex Stream();
}
