using System.Globalization;
using System.Text;

namespace LureSim.Scenarios.Tests;

/// <summary>A run as text, lists written out, every double by its bits: equal texts mean equal runs. Fails on a number that is not finite.</summary>
internal static class SpecText
{
    public static string Of(Scenario spec)
    {
        var text = new StringBuilder();
        Append(text, spec);
        return text.ToString();
    }

    private static void Append(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null or string or bool or Enum or int or ulong:
                text.Append(CultureInfo.InvariantCulture, $"{value};");
                break;
            case double number:
                Assert.True(double.IsFinite(number));
                text.Append(CultureInfo.InvariantCulture, $"{BitConverter.DoubleToInt64Bits(number):X};");
                break;
            case System.Collections.IEnumerable list:
                foreach (object item in list)
                {
                    Append(text.Append('['), item);
                }

                break;
            default:
                foreach (System.Reflection.PropertyInfo property in value.GetType().GetProperties(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.Instance))
                {
                    Append(text.Append(property.Name).Append('='), property.GetValue(value));
                }

                break;
        }
    }
}
