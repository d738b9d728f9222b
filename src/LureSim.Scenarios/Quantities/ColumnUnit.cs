namespace LureSim.Scenarios.Quantities;

/// <summary>The SI unit of a kind as the end of a column's name: <c>rod.length_m</c>, <c>retrieve.cadence_per_s</c>.</summary>
public static class ColumnUnit
{
    /// <summary>A name with its unit; plain numbers and words have none.</summary>
    /// <param name="name">Name without unit.</param>
    /// <param name="kind">Kind of the values.</param>
    public static string Append(string name, QuantityKind kind) => Of(kind) is { Length: > 0 } unit ? $"{name}_{unit}" : name;

    private static string Of(QuantityKind kind) => kind switch
    {
        QuantityKind.Frequency => "per_s",
        QuantityKind.Torque => "Nm",
        QuantityKind.Inertia => "kgm2",
        QuantityKind.TorquePerSpeed => "Nms",
        QuantityKind.TorquePerSpeedSquared => "Nms2",
        _ => Units.SiName(kind).Replace('/', '_'),
    };
}
