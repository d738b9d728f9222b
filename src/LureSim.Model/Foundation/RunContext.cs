namespace LureSim.Model;

/// <summary>What a run needs to know about the world around it; no result depends on it.</summary>
/// <param name="Progress">Gets the share done, 0 to 1, about a hundred times; may be null.</param>
/// <param name="Stop">Stops the run with an <see cref="OperationCanceledException"/>; looked at in every step.</param>
public readonly record struct RunContext(Action<double>? Progress = null, CancellationToken Stop = default);
