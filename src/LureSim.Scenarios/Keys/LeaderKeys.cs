using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[leader]</c>; leave it out for a straight main line.</summary>
public static class LeaderKeys
{
    /// <summary>Keys shared with the main line.</summary>
    public static readonly LineKeySet Set = new("leader", mayBeAbsent: true, s => s.Leader?.Line);

    /// <summary>Length.</summary>
    public static readonly KeySpec Length = new("leader.length", QuantityKind.Length, "in", "Length of the leader; due where there is one.")
    {
        Parameter = Parameter.Of<LeaderSpec>(nameof(LeaderSpec.LengthM)),
        Lens = Lens.OfSetup(s => s.Leader?.LengthM ?? double.NaN),
    };

    /// <summary>Joint to the line tie.</summary>
    public static readonly KeySpec Knot = new("leader.knot", QuantityKind.Choice, "", "Joint to the line tie: a loop turns freely, a fixed knot turns the lure.")
    {
        Default = "loop",
        Choices = [new("loop", (int)TieKnot.Loop), new("fixed", (int)TieKnot.Fixed)],
        Lens = Lens.OfSetup(s => s.Leader is LeaderSpec l ? (int)l.Knot : double.NaN),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [.. Set.All, Length, Knot];
}
