namespace LureSim.Model.Lures;

/// <summary>The floating lure at one time.</summary>
/// <param name="X">Centre of gravity, m.</param>
/// <param name="Y">Centre of gravity, m.</param>
/// <param name="Psi">Heading: angle of the nose from +x, counter-clockwise seen from above, rad; pi is toward the rod.</param>
/// <param name="U">Surge velocity, forward, m/s.</param>
/// <param name="V">Sway velocity, to the lure's left, m/s.</param>
/// <param name="R">Yaw rate, rad/s.</param>
/// <param name="Zeta">Nose height over its rest height, m.</param>
/// <param name="W">Its rate, m/s.</param>
internal readonly record struct HullState(double X, double Y, double Psi, double U, double V, double R, double Zeta, double W);
