using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using LureSim.Scenarios.Variation;

namespace LureSim.Studies.Sweep;

/// <summary>Tells whether two parts belong to one sweep: SHA-256 over all that its rows depend on.</summary>
public static class Fingerprint
{
    /// <summary>The fingerprint, 64 hexadecimal digits.</summary>
    /// <param name="command">Name of the command.</param>
    /// <param name="effective">The scenario with every default spelled out.</param>
    /// <param name="axes">What varies.</param>
    /// <param name="samples">Samples of it, or null for a grid.</param>
    /// <param name="layout">Columns; they hold the number of samples of doubt.</param>
    public static string Of(string command, string effective, IReadOnlyList<Axis> axes, int? samples, SweepLayout layout)
    {
        string version = typeof(Fingerprint).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
        var text = new StringBuilder();
        text.AppendJoin('\n', version, command, effective, samples?.ToString(CultureInfo.InvariantCulture) ?? "grid", layout.Counts, layout.Header);
        foreach (Axis axis in axes)
        {
            text.Append('\n').AppendJoin('\n', axis.Name, CsvLine.Number(axis.LowSi), CsvLine.Number(axis.HighSi));
            foreach (AxisValue value in axis.Values)
            {
                text.Append('\n').AppendJoin('\t', value.Overrides);
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
