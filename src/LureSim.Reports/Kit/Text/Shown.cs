namespace LureSim.Reports.Kit.Text;

/// <summary>
/// How quantities are told to people: SI values in, text out. Forces read as the weight that a spring scale or a drag rating shows, never in newtons;
/// torques as the weight held out at a reach. Thread-safe; holds no state.
/// </summary>
/// <param name="Choice">Whose units.</param>
public sealed record Shown(UnitChoice Choice)
{
    /// <summary>Either family.</summary>
    public static Shown Both { get; } = new(UnitChoice.Both);

    private bool IsMetric => Choice != UnitChoice.Trade;

    /// <summary>A value: "9.4 in", "24 cm" or "9.4 in (24 cm)". One too small for the digits it deserves is "less than 0.01 in".</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="si">Value in SI, finite.</param>
    public string Text(ShownQuantity quantity, double si)
    {
        ShownUnit[] units = Units(quantity, si);
        double least = units.Max(u => u.LeastSi);
        return Tells(quantity, si) ? Joined(units, u => u.Text(si)) : "less than " + Joined(units, u => u.Text(least));
    }

    /// <summary>A range: "7.5 to 9.4 in (19 to 24 cm)".</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="low">Low end, SI, finite.</param>
    /// <param name="high">High end, SI, finite.</param>
    /// <param name="between">Word between them.</param>
    public string Range(ShownQuantity quantity, double low, double high, string between = "to") =>
        Joined(Units(quantity, Math.Max(Math.Abs(low), Math.Abs(high))), u => $"{u.Digits(low)} {between} {u.Text(high)}");

    /// <summary>Whether none of the values is lost in rounding.</summary>
    /// <param name="quantity">What they are.</param>
    /// <param name="si">Values in SI, finite, at least one.</param>
    public bool Tells(ShownQuantity quantity, params double[] si) =>
        Array.TrueForAll(Units(quantity, si.Max(Math.Abs)), u => si.All(v => v == 0.0 || u.Digits(v) != "0"));

    /// <summary>Several values: "0.5, 1.0 ft/s (0.15, 0.30 m/s)".</summary>
    /// <param name="quantity">What they are.</param>
    /// <param name="si">Values in SI, finite, at least one.</param>
    public string List(ShownQuantity quantity, IReadOnlyList<double> si)
    {
        ArgumentNullException.ThrowIfNull(si);
        return Joined(Units(quantity, si.Max(Math.Abs)), u => $"{string.Join(", ", si.Select(u.Digits))} {u.Name}");
    }

    /// <summary>A length of the lure's size.</summary>
    /// <param name="m">Length, m.</param>
    public string Size(double m) => Text(ShownQuantity.Size, m);

    /// <summary>A length along the water or of line.</summary>
    /// <param name="m">Length, m.</param>
    public string Distance(double m) => Text(ShownQuantity.Distance, m);

    /// <summary>A force as the weight that a spring scale reads.</summary>
    /// <param name="n">Force, N.</param>
    public string Pull(double n) => Text(ShownQuantity.Pull, n);

    /// <summary>A torque of the wrist as the weight held out at a reach.</summary>
    /// <param name="nm">Torque, N m.</param>
    public string Torque(double nm) => Text(ShownQuantity.Torque, nm);

    /// <summary>Speed of a lure.</summary>
    /// <param name="mS">Speed, m/s.</param>
    public string Speed(double mS) => Text(ShownQuantity.Speed, mS);

    /// <summary>Mass.</summary>
    /// <param name="kg">Mass, kg.</param>
    public string Mass(double kg) => Text(ShownQuantity.Mass, kg);

    /// <summary>Energy.</summary>
    /// <param name="j">Energy, J.</param>
    public string Energy(double j) => Text(ShownQuantity.Energy, j);

    /// <summary>The one unit of an axis, of a picture, or of a column: the trade's where only that is wanted, else the metric one.</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="largestSi">Largest size shown, SI.</param>
    public ShownUnit Unit(ShownQuantity quantity, double largestSi) => UnitTable.Of(quantity, IsMetric, largestSi);

    /// <summary>The units of a value, one column each: the trade's, the metric one, or both.</summary>
    /// <param name="quantity">What it is.</param>
    /// <param name="largestSi">Largest size shown, SI.</param>
    public ShownUnit[] Units(ShownQuantity quantity, double largestSi) => Choice == UnitChoice.Both
        ? [UnitTable.Of(quantity, metric: false, largestSi), UnitTable.Of(quantity, metric: true, largestSi)]
        : [Unit(quantity, largestSi)];

    /// <summary>The same choice in one family: what a title of a picture says beside its axes.</summary>
    public Shown OneFamily => Choice == UnitChoice.Both ? new(UnitChoice.Metric) : this;

    /// <summary>A row of a table.</summary>
    /// <param name="name">Words.</param>
    /// <param name="quantity">What the value is.</param>
    /// <param name="si">Value in SI, finite.</param>
    internal TableRow Row(string name, ShownQuantity quantity, double si) =>
        Tells(quantity, si) ? Row(name, quantity, si, u => u.Text(si)) : new(name, Text(quantity, si), string.Empty);

    /// <summary>A row of a table with words of its own.</summary>
    /// <param name="name">Words.</param>
    /// <param name="quantity">What the values are.</param>
    /// <param name="largestSi">Largest size told, SI.</param>
    /// <param name="text">Tells them in a unit.</param>
    internal TableRow Row(string name, ShownQuantity quantity, double largestSi, Func<ShownUnit, string> text)
    {
        ShownUnit[] units = Units(quantity, largestSi);
        return new(name, text(units[0]), units.Length > 1 ? text(units[1]) : string.Empty);
    }

    internal static string Joined(ShownUnit[] units, Func<ShownUnit, string> text) =>
        units.Length == 1 ? text(units[0]) : $"{text(units[0])} ({text(units[1])})";
}
