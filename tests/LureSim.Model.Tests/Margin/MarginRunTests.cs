using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Tests.Lures;

namespace LureSim.Model.Tests.Margin;

/// <summary>Critical side force, one pull, and what is refused.</summary>
public sealed class MarginRunTests
{
    private static readonly MarginTask Task = new();

    [Fact]
    public void Above_the_critical_share_the_tow_is_kept_and_below_it_is_left()
    {
        double critical = Run(TestLures.Pencil()).CriticalShedding!.Value;
        Assert.InRange(critical, 0.01, 1.0);
        Assert.True(Leads(critical - 0.01).Leaves);
        Assert.False(Leads(critical + 0.01).Leaves);
        Assert.Equal(0.75 - critical, Run(TestLures.Pencil() with { SternShedding = 0.75 }).SheddingMargin!.Value, 1e-12);
    }

    [Fact]
    public void A_hull_without_hooks_needs_more()
    {
        LureSpec bare = TestLures.Pencil() with { Hooks = [.. TestLures.Pencil().Hooks.Select(h => h with { DragAreaM2 = 0.0, DragAreaAlongM2 = null })] };
        Assert.True(Run(bare).CriticalShedding > Run(TestLures.Pencil()).CriticalShedding + 0.1);
    }

    [Fact]
    public void Momentum_of_the_pull_is_in_hull_and_water_when_it_ends()
    {
        // Along its line, drag aside: J = (m + k1 rho V) u.
        LureSpec bare = TestLures.Pencil() with { Hooks = [], FormDragCd = 0.0, AxialDragFactor = 0.0 };
        MarginTask quick = Task with { AngleRad = 0.0, PullNs = 1e-3, PullS = 0.01, WatchS = 0.05, StepS = 1e-4 };
        PullResponse pull = MarginRun.Run(bare, TestLures.Water, quick).Demand().Pull;
        int n = pull.TimeS.Count - 1;
        double speed = (pull.XM[n] - pull.XM[n - 1]) / (pull.TimeS[n] - pull.TimeS[n - 1]);
        double mass = WalkHullBuilder.Build(bare, TestLures.Water).M11;
        Assert.Equal(1e-3 / mass, speed, 0.01 * speed);
    }

    [Fact]
    public void A_turn_counts_from_the_angle_that_it_lay_at()
    {
        PullResponse left = Run(TestLures.Pencil()).Pull;
        Assert.True(left.TurnDeg > 45.0);
        Assert.NotNull(left.TurnTimeS);
        Assert.Equal(left.TurnDeg, left.PastDeg + 45.0, 1e-9);
    }

    [Fact]
    public void Half_the_step_changes_a_turn_by_a_hundredth()
    {
        double whole = Run(TestLures.Pencil()).Pull.TurnDeg;
        double half = MarginRun.Run(TestLures.Pencil(), TestLures.Water, Task with { StepS = 0.5e-3 }).Demand().Pull.TurnDeg;
        Assert.Equal(half, whole, 0.01 * half);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentException>(() => MarginRun.Run(TestLures.Pencil(), TestLures.Water, Task with { HandHeightM = 4.0 }));
        Assert.ThrowsAny<ArgumentException>(() => MarginRun.Run(TestLures.Pencil(), TestLures.Water, Task with { SpeedMS = double.NaN }));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => MarginRun.Run(TestLures.Pencil(), TestLures.Water, Task, stop.Token));
    }

    private static TowMode Leads(double chi) => MarginRun.Towed(TestLures.Pencil() with { SternShedding = chi }, TestLures.Water, Task).Tow!.Modes[0];

    private static MarginResult Run(LureSpec lure) => MarginRun.Run(lure, TestLures.Water, Task).Demand();
}
