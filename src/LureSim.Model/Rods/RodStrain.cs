namespace LureSim.Model.Rods;

/// <summary>Stretch of a bent rod's outer fibres, r M/EI, at the springs of its chain.</summary>
/// <remarks>The outer radius at the hand is half of <see cref="RodTaper.RootDiameterM"/>, a guess: the size of the strain is no better known than that, its
/// ratio between two shapes of one rod does not depend on it.</remarks>
internal sealed class RodStrain
{
    private readonly RodChain _chain;
    private readonly double[] _perTorque;

    /// <summary>Of a rod and its chain.</summary>
    public RodStrain(RodTaper taper, RodChain chain)
    {
        ArgumentNullException.ThrowIfNull(taper);
        ArgumentNullException.ThrowIfNull(chain);
        _chain = chain;
        _perTorque = new double[chain.Links];
        double place = 0.0;
        for (int j = 0; j < chain.Links; j++)
        {
            place += chain.LengthM[j];
            _perTorque[j] = 0.5 * taper.DiameterM(place) / taper.StiffnessNm2(place);
        }
    }

    /// <summary>Largest strain along a bent rod.</summary>
    public double Largest(RodShape shape)
    {
        double largest = 0.0;
        for (int j = 0; j < _perTorque.Length; j++)
        {
            double torque = _chain.SpringNm[j] * (shape.AngleRad[j + 1] - shape.AngleRad[j]);
            largest = Math.Max(largest, _perTorque[j] * Math.Abs(torque));
        }

        return largest;
    }
}
