using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using LureSim.Benchmarks;

if (args is ["stop"])
{
    StopDelays.Print();
    return 0;
}

// In process: one short job per benchmark, a few minutes in all, and no project generated beside the solution.
IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
if (args.Length > 0)
{
    BenchmarkSwitcher.FromAssembly(typeof(RetrieveBenchmarks).Assembly).Run(args, config);
    return 0;
}

BenchmarkRunner.Run(typeof(RetrieveBenchmarks).Assembly, config);
return 0;
