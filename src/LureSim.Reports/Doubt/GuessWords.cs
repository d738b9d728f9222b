using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>A guess with its range, in the units of the reader where the trade has a word for them, else in the unit of its key.</summary>
public static class GuessWords
{
    private const double DistanceFromM = 3.0;

    /// <summary>"grip (7.9 to 18 in)".</summary>
    /// <param name="name">Guess.</param>
    /// <param name="shown">Units.</param>
    public static string Of(GuessName name, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(shown);
        return name.Guess is GuessedKey guess && Quantity(guess) is ShownQuantity quantity && shown.Tells(quantity, guess.Low, guess.High)
            ? $"{guess.Key.Words} ({shown.OneFamily.Range(quantity, guess.Low, guess.High)})"
            : name.Label;
    }

    /// <summary>What a guess is told as, or null where the trade has no word for it.</summary>
    /// <param name="guess">Guess.</param>
    internal static ShownQuantity? Quantity(GuessedKey guess) => guess.Key.Kind switch
    {
        QuantityKind.Length => guess.High >= DistanceFromM ? ShownQuantity.Distance : ShownQuantity.Size,
        QuantityKind.Mass => ShownQuantity.Mass,
        QuantityKind.Force => ShownQuantity.Pull,
        QuantityKind.Speed => ShownQuantity.Speed,
        QuantityKind.Torque => ShownQuantity.Torque,
        _ => null,
    };
}
