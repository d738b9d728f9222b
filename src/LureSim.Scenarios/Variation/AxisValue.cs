namespace LureSim.Scenarios.Variation;

/// <summary>One value of an axis.</summary>
/// <param name="Label">As people read it: the text as given, or the value in the key's own unit.</param>
/// <param name="Si">Value, SI; NaN for words, lists and linked keys.</param>
/// <param name="Overrides">Texts <c>key=value</c> that set it, exact to the last bit.</param>
public sealed record AxisValue(string Label, double Si, IReadOnlyList<string> Overrides);
