using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Measured;

/// <summary>What a row of a test must hold.</summary>
internal static class FitChecks
{
    private static readonly FitWord[] Points = [FitWord.NoseX, FitWord.NoseY, FitWord.TailX, FitWord.TailY, FitWord.MiddleX, FitWord.MiddleY];

    private static readonly FitWord[] Counted = [FitWord.Advance, FitWord.Width, FitWord.HeadingSwing];

    /// <summary>Adds each fault of a test.</summary>
    /// <param name="block">Test.</param>
    /// <param name="faults">Gets them.</param>
    public static void Run(FitBlock block, List<ScenarioFault> faults)
    {
        foreach (FitRow row in block.Rows)
        {
            if (Wrong(block, row) is (FitWord word, string message))
            {
                faults.Add(new(row.Place, FitWords.Name(word), message));
            }
        }

        if (block.Kind == FitKind.Tow && block.Of(FitWord.Hand) is double hand && hand >= (block.Of(FitWord.Line) ?? 3.0))
        {
            faults.Add(new(block.Place, FitWords.Name(FitWord.Hand), "the hand is higher over the water than the line is long"));
        }

        if (block.Kind == FitKind.Walk)
        {
            Walk(block, faults);
        }
    }

    // Conditions of a walk stand in lines of their own, and hold for all of it.
    private static void Walk(FitBlock block, List<ScenarioFault> faults)
    {
        if (block.Of(FitWord.Distance) is double distance && (distance < RetrieveKeys.Distance.Low || distance > RetrieveKeys.Distance.High))
        {
            faults.Add(new(block.Place, FitWords.Name(FitWord.Distance), $"{RangeText.Of(RetrieveKeys.Distance)} from rod tip to lure are allowed"));
        }

        if (block.Of(FitWord.Twitches) is not null && block.Rows.GroupBy(r => r.Run).Count(g => g.Any(r => r.Of(FitWord.Time) is not null)) != 1)
        {
            faults.Add(new(block.Place, FitWords.Name(FitWord.Twitches), "counted on one film; for other films begin another \"test, walk\", without a film say \"cadence, 1.5 /s\""));
        }
    }

    private static (FitWord Word, string Message)? Wrong(FitBlock block, FitRow row)
    {
        bool Has(FitWord word) => block.Of(row, word) is not null;
        return block.Kind switch
        {
            FitKind.Tow when !Has(FitWord.Speed) => (FitWord.Speed, "missing in this row: how fast was it towed?"),
            FitKind.Tow when row.Of(FitWord.Sheer) is null && row.Of(FitWord.Swing) is null => (FitWord.Sheer, "missing in this row; an angle, the word straight, or a swing is due"),
            FitKind.Push when !Has(FitWord.Speed) => (FitWord.Speed, "missing in this row: about how fast was it let go?"),
            FitKind.Push when !Has(FitWord.Drift) => (FitWord.Drift, "missing in this row; without the angle between push and axis the way tells nothing"),
            FitKind.Push when row.Of(FitWord.Way) is null => (FitWord.Way, "missing in this row; a length or the word never is due"),
            FitKind.Walk when row.Of(FitWord.Time) is null => Array.Exists(Counted, c => row.Of(c) is not null)
                ? null : (FitWord.Time, "missing in this row; a time with places is due, or what was counted by eye: advance, width, heading swing"),
            FitKind.Coast or FitKind.Track when row.Of(FitWord.Time) is null => (FitWord.Time, "missing in this row"),
            FitKind.Track or FitKind.Walk => HalfPoint(row),
            FitKind.Swing when !Has(FitWord.What) => (FitWord.What, "missing in this row; roll, bob or nod is due"),
            FitKind.Swing when row.Of(FitWord.Period) is null && row.Of(FitWord.Loss) is null => (FitWord.Period, "missing in this row; a period, a loss or both are due"),
            _ => null,
        };
    }

    // x without y is no place.
    private static (FitWord Word, string Message)? HalfPoint(FitRow row)
    {
        for (int i = 0; i < Points.Length; i += 2)
        {
            if (row.Of(Points[i]) is null != (row.Of(Points[i + 1]) is null))
            {
                return (Points[i], "x and y are due together; leave both empty where the point cannot be seen");
            }
        }

        return null;
    }
}
