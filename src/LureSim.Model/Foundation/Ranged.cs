namespace LureSim.Model;

/// <summary>A value that is not known well: the one used and the range it may take.</summary>
/// <param name="Value">The value used.</param>
/// <param name="Low">Lower end of the range.</param>
/// <param name="High">Upper end of the range.</param>
public readonly record struct Ranged(double Value, double Low, double High);
