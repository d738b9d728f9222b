using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>What one turn of the handle wins with line out.</summary>
public static class HandleTurn
{
    /// <summary>Line won per handle turn, m: 2 pi R ratio, with R of the line that is still on the spool. A fixed spool counts as full: its line lies
    /// wide, and the radius hardly falls.</summary>
    /// <param name="reel">Reel.</param>
    /// <param name="line">Line on it.</param>
    /// <param name="outM">Line that has left, m, not negative; more than there is counts as all.</param>
    public static double TakeUpM(ReelSpec reel, LineSpec line, double outM)
    {
        ArgumentNullException.ThrowIfNull(reel);
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfNegative(outM);
        if (reel.Kind == ReelKind.Fixed)
        {
            return reel.TakeUpPerTurnM;
        }

        WoundLine wound = WoundLine.On(reel, line);
        return reel.TakeUpPerTurnM * wound.RadiusM(Math.Min(outM, wound.LengthM)) / wound.OuterRadiusM;
    }
}
