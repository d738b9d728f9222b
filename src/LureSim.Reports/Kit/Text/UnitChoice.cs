namespace LureSim.Reports.Kit.Text;

/// <summary>Whose units a text, a table or a picture speaks. JSON and CSV are SI whatever the choice.</summary>
public enum UnitChoice
{
    /// <summary>Inches, feet, ounces, pounds.</summary>
    Trade,

    /// <summary>Centimetres, metres, grams, kilograms.</summary>
    Metric,

    /// <summary>The trade's unit, then the metric one in brackets; pictures and wide columns of numbers are metric.</summary>
    Both,
}
