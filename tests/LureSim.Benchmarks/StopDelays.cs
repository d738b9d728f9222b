using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Batches;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Figures;
using LureSim.Studies.Sweep;
using LureSim.Studies.Trim;

namespace LureSim.Benchmarks;

/// <summary>How long each kind of work goes on after a wish to stop. Measured, not asserted: a busy machine adds its own waits, so the CPU time
/// of the whole process in the same span stands beside the clock's.</summary>
internal static class StopDelays
{
    // Early, in the middle of a step count nobody chose, and late; the work is repeated until it is stopped.
    private static readonly int[] AfterMs = [100, 230, 370, 610, 1000];

    /// <summary>Measures and prints all.</summary>
    public static void Print()
    {
        ScenarioSource source = ScenarioSource.Load(Path.GetFullPath(Path.Combine(Folder(), "..", "..", "scenarios", "small-walker.toml")));
        ScenarioResult shown = source.Resolve();
        Setup setup = shown.Setup!;
        CastTask cast = shown.Cast!;
        RetrieveTask retrieve = source.Resolve(["retrieve.duration=60 s"]).Retrieve!;
        MeasuredCast[] casts = [.. new[] { 30.0, 32.0, 34.0 }.Select(d => new MeasuredCast($"{d} m", setup, cast, d))];
        Console.WriteLine("after a wish to stop        highest clock ms   highest CPU ms   each, clock ms");
        Tell("retrieve", stop => RetrieveRun.Run(setup, retrieve, new(null, stop)));
        Tell("cast", stop => CastRunner.Run(setup, cast, new(null, stop)));
        Tell("cast with brakes", stop => CastStudy.Run(setup, cast, 2, new(null, stop)));
        Tell("match of three casts", stop => MatchStudy.Fit(casts, 2, null, stop));
        Tell("cadence", stop => CadenceStudy.Run(setup, retrieve, new CadencePlan(Threads: 2), SustainedTorque.Of(shown), stop: stop));
        Tell("trim", stop => new TrimSource().Run(shown, stop));
        foreach (IFigureSource figures in new IFigureSource[] { new RetrieveSource(), new CastSource(), new TrimSource() })
        {
            Tell($"sweep of {figures.Name}", stop => Sweep(source, figures, stop));
        }
    }

    private static void Sweep(ScenarioSource source, IFigureSource figures, CancellationToken stop)
    {
        IReadOnlyList<Axis> axes = AxisReader.ReadAll(["lure.mass=9 g:11 g:100"], "--vary", []);
        var plan = new SweepPlan(source, [], axes, SweepPoints.OfGrid(axes), figures, null);
        Batch.Execute(Enumerable.Range(0, plan.Count), 2, i => plan.Run(i, stop), (_, _) => { }, stop);
    }

    private static void Tell(string name, Action<CancellationToken> work)
    {
        Delay(work, 1500);
        (double Clock, double Cpu)[] delays = [.. AfterMs.Select(after => Delay(work, after))];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-26}  {delays.Max(d => d.Clock),16:F1}   {delays.Max(d => d.Cpu),14:F1}   {string.Join(" ", delays.Select(d => d.Clock.ToString("F1", CultureInfo.InvariantCulture)))}"));
    }

    private static (double Clock, double Cpu) Delay(Action<CancellationToken> work, int afterMs)
    {
        using var stop = new CancellationTokenSource();
        (long asked, TimeSpan cpu) = (0, default);
        var asker = new Thread(() =>
        {
            Thread.Sleep(afterMs);
            (asked, cpu) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            stop.Cancel();
        });
        asker.Start();
        try
        {
            while (true)
            {
                work(stop.Token);
            }
        }
        catch (OperationCanceledException)
        {
            long thrown = Stopwatch.GetTimestamp();
            TimeSpan used = Environment.CpuUsage.TotalTime;
            asker.Join();
            return (Stopwatch.GetElapsedTime(asked, thrown).TotalMilliseconds, (used - cpu).TotalMilliseconds);
        }
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
