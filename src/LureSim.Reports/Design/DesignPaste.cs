using System.Globalization;
using System.Text;
using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Reports.Design;

/// <summary>The lines of a lure to build, to paste into the table [lure] of its scenario.</summary>
public static class DesignPaste
{
    // Smaller differences are rounding.
    private const double LeastM = 5e-6, LeastKg = 5e-7;

    /// <summary>What differs of mass, tie, weights and hook sizes, as TOML; empty where nothing does.</summary>
    /// <param name="before">Lure as it is.</param>
    /// <param name="after">Lure to build.</param>
    /// <param name="hookSteps">Sizes that every hook is larger by.</param>
    public static string Lines(LureSpec before, LureSpec after, int hookSteps)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var text = new StringBuilder();
        if (after.Build.DensityKgM3 is null && Math.Abs(after.MassKg - before.MassKg) >= LeastKg)
        {
            text.Append(CultureInfo.InvariantCulture, $"mass = \"{Gram(after.MassKg)}\"  # body and weights without hooks; instead of mass_with_hooks\n");
        }

        if (Math.Abs(after.TieXM - before.TieXM) >= LeastM || Math.Abs(after.TieZM - before.TieZM) >= LeastM)
        {
            text.Append(CultureInfo.InvariantCulture, $"tie = {{ x = \"{Mm(after.TieXM)}\", z = \"{Mm(after.TieZM)}\" }}\n");
        }

        if (!after.Ballast.Equals(before.Ballast))
        {
            text.Append("ballast = [\n");
            foreach (BallastSpec b in after.Ballast)
            {
                string metal = b.DensityKgM3 == 11340.0 ? "" : string.Create(CultureInfo.InvariantCulture, $", density = \"{b.DensityKgM3:0.#} kg/m3\"");
                text.Append(CultureInfo.InvariantCulture, $"  {{ mass = \"{Gram(b.MassKg)}\", x = \"{Mm(b.XM)}\", z = \"{Mm(b.ZM)}\"{metal} }},\n");
            }

            text.Append("]\n");
        }

        if (hookSteps != 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"# every hook {Math.Abs(hookSteps)} {(Math.Abs(hookSteps) == 1 ? "size" : "sizes")} {(hookSteps > 0 ? "larger" : "smaller")} ({HookSizes.Name(0)} is the smallest known)\n");
        }

        return text.ToString();
    }

    private static string Gram(double kg) => (1e3 * kg).ToString("0.###", CultureInfo.InvariantCulture) + " g";

    private static string Mm(double m) => (1e3 * m).ToString("0.##", CultureInfo.InvariantCulture) + " mm";
}
