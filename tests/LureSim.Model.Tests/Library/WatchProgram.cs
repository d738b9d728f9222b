// begin
using LureSim.Model.Retrieve;

namespace LureSimExamples;

internal static class WatchProgram
{
    public static void Main()
    {
        int steps = 0;
        double largest = 0.0, when = 0.0, deepest = 0.0;

        // The view shows the running solver and is good until this returns: copy what is to be kept.
        void See(RetrieveView step)
        {
            steps++;
            if (step.NosePullN > largest)
            {
                (largest, when) = (step.NosePullN, step.TimeS);
            }

            foreach (double z in step.LineZM)
            {
                deepest = Math.Min(deepest, z);
            }
        }

        RetrieveRun.Run(Tackle.Walker(), new RetrieveTask(DurationS: 8.0, StrokeM: 0.15), observer: See).Demand();
        Console.WriteLine($"steps {steps}");
        Console.WriteLine($"largest nose pull {largest:F2} N at {when:F3} s");
        Console.WriteLine($"deepest line point {-1e3 * deepest:F1} mm");
    }
}
// end
