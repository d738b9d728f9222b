using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>The samples of measurements are what is computed, and fits find most of what they were made with.</summary>
public sealed class FitSampleTests
{
    private static double OfPool(FitUnknown unknown) => unknown.Name switch
    {
        "lure.stern_shedding" => -0.9,
        "lure.axial_drag_factor" => 0.5,
        "lure.added_mass_factor" => 0.5,
        "lure.roll_damping" => 0.7,
        "lure.hook_drag" => 0.6,
        "ballast up" => 0.6,
        _ => 0.0,
    };

    private static double OfWalk(FitUnknown unknown) => unknown.Name switch
    {
        "lure.stern_shedding" => 0.4,
        "lure.hook_drag" => 0.5,
        "retrieve.stroke" => 0.7,
        "retrieve.slack" => 0.4,
        _ => 0.0,
    };

    private static InventedSample Pool() => new(
        "pool-measured.csv", "large walker in a pool", "An hour in a pool",
        new MadeUpPool(Shipped.File("large-walker.toml"), OfPool, 7).Tows(true, 3, 0.3, 0.6).Tows(false, 3, 0.3, 0.6).Films(true, 2, 1.0).Films(false, 2, 1.0).Swings(true, 3).Bowl());

    private static InventedSample Walk() => new(
        "walk-measured.csv", "large walker under twitches", "Two pushes in a pool and a walk filmed from a bridge",
        new MadeUpPool(Shipped.File("large-walker.toml"), OfWalk, 11, true).Films(true, 2, 1.0).Walks(1, 6, 1.5), "; 1.5 twitches a second");

    [Fact]
    public void The_sample_of_a_pool_is_what_is_computed() => Pool().IsComputed();

    [Fact]
    public void The_sample_of_a_walk_is_what_is_computed() => Walk().IsComputed();

    [Fact]
    public void Its_fit_finds_most_of_what_a_pool_was_made_with()
    {
        IReadOnlyList<FitEstimate> told = Pool().Told();
        Assert.True(told.Count >= 7, $"{told.Count} told");
    }

    [Fact]
    public void Its_fit_finds_the_hand_that_a_walk_was_made_with() => Assert.Contains(Walk().Told(), v => v.Unknown.Name == "retrieve.stroke");
}
