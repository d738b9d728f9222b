namespace LureSim.Model;

/// <summary>One recorded quantity over time.</summary>
/// <param name="Name">Unit-suffixed name, for example <c>nose_tension_N</c>.</param>
/// <param name="Unit">Unit as printed on an axis.</param>
/// <param name="Meaning">One line.</param>
/// <param name="Values">One value per output time.</param>
public sealed record Channel(string Name, string Unit, string Meaning, ValueList<double> Values);

/// <summary>Channels on one time base; the first is <c>time_s</c>.</summary>
public sealed class Series(IReadOnlyList<Channel> channels)
{
    /// <summary>All channels, equal length.</summary>
    public IReadOnlyList<Channel> Channels { get; } = channels;

    /// <summary>Number of output times.</summary>
    public int Count => Channels[0].Values.Count;

    /// <summary>Values of the named channel; throws <see cref="KeyNotFoundException"/> if there is none.</summary>
    /// <param name="name">Channel name.</param>
    public ValueList<double> this[string name] =>
        Channels.FirstOrDefault(c => c.Name == name)?.Values ?? throw new KeyNotFoundException($"no channel '{name}'");
}
