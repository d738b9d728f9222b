namespace LureSim.Model.Lines.Chain;

/// <summary>What outer forces and losses do to the line at the end of a step.</summary>
/// <param name="FluidW">Power of water and air on the nodes, wind and material running past included, W.</param>
/// <param name="WindW">Power of the drag in the wind's own motion, W: its size is part of the effort.</param>
/// <param name="WeightW">Power of weight, buoyancy and surface film, W.</param>
/// <param name="StretchW">Power that the damping of the stretch takes, W, not above 0 but for the rounding of directions.</param>
/// <param name="ReelW">Power of the reel that shortens the segments, W.</param>
/// <param name="AddedJ">Energy of motion that the water around the nodes has gained in the step, J.</param>
internal readonly record struct LinePower(double FluidW, double WindW, double WeightW, double StretchW, double ReelW, double AddedJ);
