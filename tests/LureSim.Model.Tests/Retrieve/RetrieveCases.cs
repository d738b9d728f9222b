using LureSim.Model.Hands;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Model.Tests.Cast;
using LureSim.Model.Tests.Lures;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Parts of a retrieve whose numbers the tests know.</summary>
internal static class RetrieveCases
{
    public static readonly ReelSpec Reel = new(ReelKind.Revolving, 7.1, 0.034, 50.0);

    public static readonly RodSpec Rod = new(2.13, 0.33, 3.0, 0.075);

    public static RetrieveParts Parts(RetrieveTask retrieve) => new(
        new("parts", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), Rod, Reel, CastCases.Braid, null, TestLures.Cigar()),
        retrieve with { Solver = new(Nodes: 8) });
}
