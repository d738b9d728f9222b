using LureSim.Studies.Doubt;

namespace LureSim.Reports.Kit.Text;

/// <summary>The units in which a figure of a summary is told: its key says its SI unit.</summary>
internal static class FigureUnit
{
    // Longer than a lure, a rod and a leader together: told as a distance.
    private const double DistanceFromM = 3.0;

    // The longest ending that fits counts.
    private static readonly (string End, ShownQuantity? Quantity, string Name)[] Ends =
    [
        ("_per_s", null, "/s"), ("_per_m", ShownQuantity.PerDistance, ""), ("_m_s", ShownQuantity.Speed, ""), ("_rad_s", null, "rad/s"), ("_m", ShownQuantity.Size, ""),
        ("_N", ShownQuantity.Pull, ""), ("_Nm", ShownQuantity.Torque, ""), ("_Ns", ShownQuantity.Impulse, ""), ("_J", ShownQuantity.Energy, ""), ("_kg", ShownQuantity.Mass, ""), ("_m3", ShownQuantity.Volume, ""), ("_N_m", ShownQuantity.Stiffness, ""),
        ("_deg", null, "deg"), ("_s", null, "s"), ("_W", null, "W"), ("_Hz", null, "Hz"), ("_rpm", null, "rpm"),
    ];

    /// <summary>The units of a figure, one or two.</summary>
    /// <param name="shown">Choice.</param>
    /// <param name="key">Key of the figure.</param>
    /// <param name="largestSi">Largest size told, in the unit of the key.</param>
    public static ShownUnit[] Of(Shown shown, string key, double largestSi) => Find(key) is not ({ } end, var quantity, var name)
        ? [Plain("")]
        : quantity is not ShownQuantity q ? [Plain(name)]
        : shown.Units(q == ShownQuantity.Size && Math.Abs(largestSi) >= DistanceFromM ? ShownQuantity.Distance : q, largestSi);

    /// <summary>The one unit of an axis or a column.</summary>
    /// <param name="shown">Choice.</param>
    /// <param name="figure">Figure.</param>
    /// <param name="largestSi">Largest size shown, in the unit of its key.</param>
    public static ShownUnit Of(Shown shown, HeadlineFigure figure, double largestSi) => Of(shown.OneFamily, figure.Key, largestSi)[0];

    /// <summary>A key as words without its unit: "glide width".</summary>
    /// <param name="key">Key of the figure.</param>
    public static string Words(string key) => key[..^(Find(key).End?.Length ?? 0)].Replace('_', ' ');

    private static (string? End, ShownQuantity? Quantity, string Name) Find(string key) =>
        Ends.Where(e => key.EndsWith(e.End, StringComparison.Ordinal)).OrderBy(e => e.End.Length).LastOrDefault();

    private static ShownUnit Plain(string name) => new(name, 1.0, 4);
}
