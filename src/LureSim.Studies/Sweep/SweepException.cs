namespace LureSim.Studies.Sweep;

/// <summary>Parts of a sweep do not fit; the message is one line for the person at the terminal.</summary>
/// <param name="message">What does not fit, and what to do.</param>
public sealed class SweepException(string message) : Exception(message);
