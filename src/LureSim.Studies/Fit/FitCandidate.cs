using LureSim.Model.Assembly;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Fit;

/// <summary>What a set of numbers makes: a lure to lay on the water with and without hooks, and what is done with it under twitches.</summary>
/// <param name="On">With hooks.</param>
/// <param name="Off">With putty in their place.</param>
/// <param name="SetupOn">Set-up with hooks.</param>
/// <param name="SetupOff">Set-up with putty in their place.</param>
/// <param name="Retrieve">Retrieve; null where the scenario was not read for one.</param>
internal sealed record FitCandidate(PoolTrial On, PoolTrial Off, Setup SetupOn, Setup SetupOff, RetrieveTask? Retrieve)
{
    /// <summary>On the water.</summary>
    /// <param name="hooksOn">Whether the hooks are on.</param>
    public PoolTrial Trial(bool hooksOn) => hooksOn ? On : Off;

    /// <summary>With rod, line and hand.</summary>
    /// <param name="hooksOn">Whether the hooks are on.</param>
    public Setup Setup(bool hooksOn) => hooksOn ? SetupOn : SetupOff;
}
