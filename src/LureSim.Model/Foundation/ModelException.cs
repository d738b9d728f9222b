namespace LureSim.Model;

/// <summary>A run that cannot go on: the model, not the input, is at its end (exit code 3).</summary>
public sealed class ModelException : Exception
{
    /// <summary>Creates the error.</summary>
    /// <param name="message">One sentence: part, node, step and stiffest rate.</param>
    /// <param name="lastGoodTimeS">Last time with finite state, s.</param>
    public ModelException(string message, double lastGoodTimeS)
        : base(message) => LastGoodTimeS = lastGoodTimeS;

    /// <summary>Last time with finite state, s.</summary>
    public double LastGoodTimeS { get; }
}
