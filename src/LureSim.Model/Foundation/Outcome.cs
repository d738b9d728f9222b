using System.Diagnostics.CodeAnalysis;

namespace LureSim.Model;

/// <summary>Why a model could not go on.</summary>
/// <param name="Reason">One sentence.</param>
/// <param name="LastGoodTimeS">Last time with finite state, s.</param>
public sealed record Failure(string Reason, double LastGoodTimeS);

/// <summary>What a run gave: its result, or why it failed and what it had until then. The one way in which a run fails; bad input is an
/// <see cref="ArgumentException"/>, a wish to stop an <see cref="OperationCanceledException"/>.</summary>
/// <typeparam name="T">Type of the result.</typeparam>
/// <param name="Result">The result; after a failure what there is of it, or nothing.</param>
/// <param name="Failure">Why it failed, or null.</param>
public sealed record Outcome<T>(T? Result, Failure? Failure = null)
{
    /// <summary>True when the run reached its end.</summary>
    [MemberNotNullWhen(true, nameof(Result))]
    [MemberNotNullWhen(false, nameof(Failure))]
    public bool IsWhole => Failure is null;

    /// <summary>The whole result.</summary>
    /// <exception cref="ModelException">The run failed.</exception>
    public T Demand() => IsWhole ? Result : throw new ModelException(Failure.Reason, Failure.LastGoodTimeS);

    /// <summary>The result, or what a failed run had of it.</summary>
    /// <exception cref="ModelException">The run failed with nothing to show.</exception>
    public T DemandAny() => Result ?? Demand();
}

/// <summary>Makes outcomes.</summary>
internal static class Outcome
{
    /// <summary>Runs to the end or to the model's end.</summary>
    public static Outcome<T> Of<T>(Func<T> run)
    {
        try
        {
            return new(run());
        }
        catch (ModelException e)
        {
            return new(default, new(e.Message, e.LastGoodTimeS));
        }
    }
}
