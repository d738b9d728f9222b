namespace LureSim.Reports.Kit.Text;

/// <summary>A unit for people.</summary>
/// <param name="Name">As it stands behind a number.</param>
/// <param name="Si">One of it in SI, above 0.</param>
/// <param name="MostPlaces">Decimals beyond which a number in it means nothing here, 0 to 4.</param>
public sealed record ShownUnit(string Name, double Si, int MostPlaces)
{
    /// <summary>Smallest number in it that a text shows, SI.</summary>
    public double LeastSi => Si * Math.Pow(10.0, -MostPlaces);

    /// <summary>SI to this unit.</summary>
    /// <param name="si">Value in SI.</param>
    public double Of(double si) => si / Si;

    /// <summary>The number with two significant digits (three from 100 on), no more decimals than mean something, without the unit.</summary>
    /// <param name="si">Value in SI, finite.</param>
    public string Digits(double si) => Trade.Digits(Of(si), MostPlaces);

    /// <summary>The number with its unit.</summary>
    /// <param name="si">Value in SI, finite.</param>
    public string Text(double si) => Name.Length == 0 ? Digits(si) : $"{Digits(si)} {Name}";

    /// <summary>Decimals of a column of numbers: none where the largest has three digits without, one from 1 on, else two.</summary>
    /// <param name="largestSi">Largest size in the column, SI, finite.</param>
    public int Places(double largestSi)
    {
        double largest = Of(Math.Abs(largestSi));
        return largest == 0.0 ? 0 : Math.Min(largest >= 100.0 ? 0 : largest >= 1.0 ? 1 : 2, MostPlaces);
    }
}
