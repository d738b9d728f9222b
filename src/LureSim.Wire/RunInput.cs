using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>One run as it is handed over: all numbers resolved, nothing left to look up. Equal runs give the same bits.</summary>
/// <param name="Setup">Set-up.</param>
/// <param name="Task">Retrieve.</param>
public sealed record RunInput(Setup Setup, RetrieveTask Task)
{
    /// <summary>Demands every number inside its range and parts that fit together.</summary>
    /// <exception cref="ArgumentException">A value is missing or out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        ArgumentNullException.ThrowIfNull(Setup);
        ArgumentNullException.ThrowIfNull(Task);
        Setup.Check();
        Task.Check();
    }
}
