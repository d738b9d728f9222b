// begin
using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSimExamples;

internal static class WalkProgram
{
    public static void Main()
    {
        var task = new RetrieveTask(DistanceM: 15.0, CadencePerS: 2.0, StrokeM: 0.15) { TakeUp = new(SlackM: 0.12) };
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(Tackle.Walker(), task);
        if (!outcome.IsWhole)
        {
            Console.WriteLine($"failed after {outcome.Failure.LastGoodTimeS:F2} s: {outcome.Failure.Reason}");
            return;
        }

        RetrieveSummary walk = outcome.Result.Summary;
        Console.WriteLine($"pattern {walk.Pattern}");
        Console.WriteLine($"width {walk.WidthM:F3} m");
        Console.WriteLine($"advance {walk.AdvancePerTwitchM:F3} m per twitch");
    }
}
// end
