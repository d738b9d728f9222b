using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Plans;

namespace LureSim.Reports.Design;

/// <summary>Finds room for the short names of marks that lie close together.</summary>
internal sealed class LabelPlaces
{
    // Capitals of the embedded font over the size.
    private const double Capital = 0.76, Gap = 0.7;
    private const int Rings = 6, Ways = 8;
    private readonly List<(double Left, double Top, double Right, double Bottom)> _taken = [];

    /// <summary>Keeps names off a mark.</summary>
    /// <param name="x">Its place, mm.</param>
    /// <param name="y">Its place, mm.</param>
    /// <param name="half">Half its size, mm.</param>
    public void Take(double x, double y, double half) => _taken.Add((x - half, y - half, x + half, y + half));

    /// <summary>The nearest free place for a name, right and above first.</summary>
    /// <param name="x">Place of the mark, mm.</param>
    /// <param name="y">Place of the mark, mm.</param>
    /// <param name="half">Half the size of the mark, mm.</param>
    /// <param name="text">Name.</param>
    /// <param name="size">Size of the letters, mm.</param>
    /// <returns>Left end of its baseline; where everything near is taken, the last place tried.</returns>
    public PlanPoint Place(double x, double y, double half, string text, double size)
    {
        double width = FontMetrics.For(FontFile.BoldFrom).Width(text) * size, height = Capital * size;
        (double Left, double Top, double Right, double Bottom) box = default;
        for (int i = 0; i < Rings * Ways; i++)
        {
            (double sin, double cos) = Math.SinCos(2.0 * Math.PI * ((i % Ways) + 1) / Ways);
            double away = half + Gap + (i / Ways * 1.2);
            double middleX = x + (cos * (away + (0.5 * width))), middleY = y - (sin * (away + (0.5 * height)));
            box = (middleX - (0.5 * width), middleY - (0.5 * height), middleX + (0.5 * width), middleY + (0.5 * height));
            if (_taken.TrueForAll(t => t.Right <= box.Left || t.Left >= box.Right || t.Bottom <= box.Top || t.Top >= box.Bottom))
            {
                break;
            }
        }

        _taken.Add(box);
        return new(box.Left, box.Bottom);
    }
}
