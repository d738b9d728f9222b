// begin
using LureSim.Model.Assembly;
using LureSim.Model.Cast;

namespace LureSimExamples;

internal static class CastProgram
{
    public static void Main()
    {
        Setup setup = Tackle.Walker();
        double[] lengths = [1.8, 2.0, 2.2, 2.4];
        var distances = new double[lengths.Length];

        // Set-ups are immutable and runs share nothing: any number may run side by side, and give the bits of one run alone.
        Parallel.For(0, lengths.Length, i =>
        {
            Setup changed = setup with { Rod = setup.Rod with { LengthM = lengths[i] } };
            distances[i] = CastRunner.Run(changed, new CastTask()).Demand().DistanceM;
        });
        for (int i = 0; i < lengths.Length; i++)
        {
            Console.WriteLine($"{lengths[i]:F1} m rod: {distances[i]:F1} m");
        }
    }
}
// end
