using LureSim.Scenarios;
using LureSim.Studies.Fit;
using System.Diagnostics;
using Xunit.Abstractions;
namespace LureSim.Studies.Tests.Fit;
public sealed class FitProbe(ITestOutputHelper output)
{
    [Fact]
    public void Probe()
    {
        foreach (string name in (string[])["large-walker", "small-walker"])
        {
            string path = Path.Combine("/tmp/wt/fit/scenarios", name + ".toml");
            for (int seed = 1; seed <= 3; seed++)
            {
                var luck = new Random(seed);
                var pool = new MadeUpPool(path, u => u.Name is "lure.form_drag" or "lure.friction_speed" ? 0 : Math.Clamp(1.5 * (2 * luck.NextDouble() - 1), u.LeastZ, u.MostZ), seed);
                pool.Tows(true, 3, 0.15, 0.3, 0.5, 0.8).Tows(false, 3, 0.15, 0.3, 0.5, 0.8).Coasts(false, 2, 1.0).Coasts(true, 2, 1.0).Films(true, 3, 1.0).Films(false, 3, 1.0).Swings(true, 3).Bowl().Pushes(false, 4, 0.5);
                double cpu = Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;
                var watch = Stopwatch.StartNew();
                FitReport r = FitStudy.Run(pool.File(), pool.Source, [], 0, p => output.WriteLine($"   {watch.Elapsed.TotalSeconds:F1} {p:F3} cpu {Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds - cpu:F1}"), default).Demand();
                output.WriteLine($"{name} {seed}: {watch.Elapsed.TotalSeconds:F1} s cpu {Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds - cpu:F1} counted {r.Counted} square {r.Square:F1} free {r.Free:F1} scale {r.ErrorScale:F2} held {string.Join(",", r.Held.Select(h => h.Name))}");
                foreach (var v in r.Values)
                    output.WriteLine($"  {v.Unknown.Name,-24} truth {v.Unknown.At(pool.Truth[v.Unknown.Name]):F4} z {pool.Truth[v.Unknown.Name]:F2} fit {v.Value:F4} [{v.Low:F4} {v.High:F4}] left {v.LeftShare:F2} {v.Verdict}");
                foreach (var n in r.Next) output.WriteLine($"  next {n.Unknown.Name} {n.Test} {n.LeftShare:F2}");
                foreach (var o in r.Odd) output.WriteLine($"  odd {o.Reading.Place} {o.Reading.Quantity} {o.Surprise:F1}");
            }
        }
    }
}
