using LureSim.Model;
using LureSim.Model.Fish;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[fish]</c>. What is not given follows from its mass.</summary>
public static class FishKeys
{
    /// <summary>Mass.</summary>
    public static readonly KeySpec Mass = new("fish.mass", QuantityKind.Mass, "kg", "Mass of the fish; pounds and ounces may stand together, 3 lb 4 oz.")
    {
        Words = "mass of the fish",
        Due = "a mass is due in lb, oz, kg or g, for example \"3 lb 4 oz\" or \"1.5 kg\"",
        Default = "1.5 kg",
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.MassKg)),
        Lens = Lens.OfSetup(s => s.Fish.MassKg, Activities.Strike),
    };

    /// <summary>What it does.</summary>
    public static readonly KeySpec Way = new(
        "fish.way", QuantityKind.Choice, "", "What it does once it feels the hook: hang still, swim away, or swim toward you; fast is a hook in something that does not yield, the upper bound of every force.")
    {
        Default = "runs",
        Choices = [new("stays", (int)FishWay.Stays), new("runs", (int)FishWay.Runs), new("comes", (int)FishWay.Comes), new("fast", (int)FishWay.Fast)],
        Lens = Lens.OfSetup(s => (int)s.Fish.Way, Activities.Strike),
    };

    /// <summary>Thrust.</summary>
    public static readonly KeySpec Pull = new("fish.pull", QuantityKind.Force, "N", "Thrust of the fish at rest; nobody has measured it: without it a guess, 0.8 of its weight.")
    {
        Words = "pull of the fish",
        HasNoDefault = true,
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.PullN)),
        Lens = Lens.OfSetup(s => s.Fish.PullN, Activities.Strike),
    };

    /// <summary>Speed.</summary>
    public static readonly KeySpec Speed = new("fish.speed", QuantityKind.Speed, "m/s", "Speed at which the fish has no thrust left for pulling.")
    {
        Words = "top speed of the fish",
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.SpeedMS)),
        Lens = Lens.OfSetup(s => s.Fish.SpeedMS, Activities.Strike),
    };

    /// <summary>Reaction.</summary>
    public static readonly KeySpec Reaction = new("fish.reaction", QuantityKind.Time, "s", "Time from the first pull until the fish swims.")
    {
        Words = "time until the fish swims",
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.ReactionS)),
        Lens = Lens.OfSetup(s => s.Fish.ReactionS, Activities.Strike),
    };

    /// <summary>Drag.</summary>
    public static readonly KeySpec DragArea = new("fish.drag_area", QuantityKind.Area, "cm2", "Drag area CdA of the fish drawn head first; without it a guess from its mass.")
    {
        Words = "water drag of the fish",
        HasNoDefault = true,
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.DragAreaM2)),
        Lens = Lens.OfSetup(s => s.Fish.DragAreaM2, Activities.Strike),
    };

    /// <summary>Height.</summary>
    public static readonly KeySpec Depth = new("fish.depth", QuantityKind.Length, "cm", "Height of its body from back to belly; without it from its mass.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<FishSpec>(nameof(FishSpec.DepthM)),
        Lens = Lens.OfSetup(s => s.Fish.DepthM, Activities.Strike),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Mass, Way, Pull, Speed, Reaction, DragArea, Depth];
}
