using System.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lines.Chain;

/// <summary>Where the surface film under the line is whole: lost below two capillary lengths, back in the air (docs/line.md).</summary>
internal static class FilmBreak
{
    /// <summary>Breaks the film under nodes drawn too deep and makes it whole over nodes in the air.</summary>
    /// <param name="film">1 whole, 0 broken; nodes 1 to N-1 are updated.</param>
    /// <param name="state">Line at the end of an accepted step.</param>
    /// <param name="segments">N.</param>
    /// <param name="capillaryLengthM">l_c, m.</param>
    public static void Update(double[] film, LineState state, int segments, double capillaryLengthM)
    {
        ref double z = ref First(state.Z), whole = ref First(film);
        var breakThrough = new Vector<double>(-2.0 * capillaryLengthM);
        for (nuint i = 1; i < (nuint)segments; i += (nuint)Width)
        {
            Vector<double> height = Load(ref z, i);
            Vector<double> kept = Vector.ConditionalSelect(Vector.GreaterThan(height, Vector<double>.Zero), Vector<double>.One, Load(ref whole, i));
            Store(Vector.ConditionalSelect(Vector.LessThan(height, breakThrough), Vector<double>.Zero, kept), ref whole, i);
        }
    }
}
