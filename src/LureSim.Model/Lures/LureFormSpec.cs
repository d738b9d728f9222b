namespace LureSim.Model.Lures;

/// <summary>What a body has different from the named shape that it starts from; null: as the shape has it (<see cref="HullShape"/>). Stations mind none of it.</summary>
/// <param name="NoseBluntness">p of the nose, 1.2 to 10: the section falls with 1 - |t|^p from the thickest place (t = 0) to the tip (t = 1); 2 an ellipse, more is blunter.</param>
/// <param name="TailBluntness">p of the tail, 1.2 to 10.</param>
/// <param name="ThickestPlace">Where the body is thickest, as a share of its length behind the nose, 0.15 to 0.85.</param>
/// <param name="BellyFlatness">Share of the loss of height that the belly line does not show: 0 belly and back alike, 1 belly line straight.</param>
public sealed record LureFormSpec(
    [property: Parameter("p nose", "", 1.2, 10.0)] double? NoseBluntness = null,
    [property: Parameter("p tail", "", 1.2, 10.0)] double? TailBluntness = null,
    [property: Parameter("thickest", "", 0.15, 0.85)] double? ThickestPlace = null,
    [property: Parameter("belly", "", 0.0, 1.0)] double? BellyFlatness = null) : ISpec;
