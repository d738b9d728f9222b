namespace LureSim.Validation.Invariants;

/// <summary>The energy account of whole retrieves.</summary>
public static class EnergyBalance
{
    private const string Coarse = "large-walker at 1 ms and 20 segments";

    [PublishedCheck]
    public static Check Retrieves()
    {
        (string Name, EnergyAudit Audit)[] runs =
        [
            .. Shipped.Files.Select(f => (Path.GetFileNameWithoutExtension(f), Run(f))),
            ("large-walker in a side wind of 8 m/s", Run(Shipped.Default, "air.wind=8 m/s", "air.wind_from=from left")),
            (Coarse, Run(Shipped.Default, "solver.step=1 ms", "solver.nodes=20")),
        ];
        return new(
            "I1", "Energy of rod, line, leader and lure over 6 s of twitches: nothing comes from nothing",
            "Conservation of energy: held energy less all work, as a share of the work of hand and wind",
            "Gain: 1e-3, far above what is found. Loss: the account's own trapezoid rule over the snaps, falling with the square of the step (ladder), so 2e-3 at 1 ms.",
            [
                .. runs.Select(r => new Row($"{r.Name}: highest gain", "-", 0.0, Math.Round(r.Audit.HighestResidualJ / r.Audit.EffortJ, 6), 1e-3, Tol.Absolute)),
                .. runs.Select(r => new Row($"{r.Name}: residual at the end", "-", 0.0, r.Audit.ResidualJ / r.Audit.EffortJ, r.Name == Coarse ? 2e-3 : 1e-3, Tol.Absolute)),
            ],
            new("dt, ms", "residual of large-walker with 20 segments over work",
                [.. new[] { 1.0, 0.5, 0.25, 0.125 }.Select(ms => (ms, Share(Run(Shipped.Default, FormattableString.Invariant($"solver.step={ms} ms"), "solver.nodes=20"))))],
                1.5, "order 2 of the trapezoid rule; a snap inside a step breaks it, of which there are some in every twitch"));
    }

    private static double Share(EnergyAudit audit) => Math.Abs(audit.ResidualJ) / audit.EffortJ;

    private static EnergyAudit Run(string file, params string[] overrides)
    {
        var bench = new WalkBench(Shipped.Read(file, overrides));
        var audit = new EnergyAudit(bench);
        return bench.Run(6.0, audit.Step) ? audit : throw new InvalidOperationException($"{file}: the step rule cannot be kept");
    }
}
