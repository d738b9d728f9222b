using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Sweeps;

/// <summary>A sweep of 500 short, coarse runs on one thread, never interrupted: what every other way of running it must equal.</summary>
public sealed class SweepFixture : IDisposable
{
    public const int Runs = 500;

    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("luresim-");

    public SweepFixture()
    {
        Session session = Session.Run([.. Arguments(At("whole")), "--threads", "1"]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Out));
        Table = File.ReadAllBytes(Path.Combine(At("whole"), "sweep.csv"));
    }

    public byte[] Table { get; }

    public void Dispose() => _root.Delete(recursive: true);

    public string At(string name) => Path.Combine(_root.FullName, name);

    public string NewFolder() => At(Path.GetRandomFileName());

    /// <summary>The sweep's arguments; some runs are refused (a lure too heavy to float) and stand as rows.</summary>
    public static string[] Arguments(string folder) =>
    [
        "sweep", Session.Scenario("small-walker"), "--vary", "retrieve.cadence=1 /s:3 /s:50", "--vary", "rod.length=6 ft,6 ft 6 in,7 ft,7 ft 6 in,8 ft",
        "--vary", "lure.mass=10 g,30 g", "--set", "retrieve.duration=0.5 s", "--set", "solver.nodes=4", "--set", "solver.step=1 ms", "--out", folder, "--quiet",
    ];

    public static byte[] TableIn(string folder) => File.ReadAllBytes(Path.Combine(folder, "sweep.csv"));
}
