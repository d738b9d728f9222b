namespace LureSim.References.Ode;

/// <summary>Coefficients of the 5(4) pair with seven stages, the last of which is the first of the next step.</summary>
/// <remarks>J. R. Dormand and P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19, RK5(4)7M; interpolant: E. Hairer, S. P. Norsett,
/// G. Wanner, Solving Ordinary Differential Equations I, II.6, eq. 6.12 and code DOPRI5 (both from memory; the order conditions
/// are tested).</remarks>
internal static class DormandPrinceTableau
{
    public const double C2 = 1.0 / 5.0, C3 = 3.0 / 10.0, C4 = 4.0 / 5.0, C5 = 8.0 / 9.0;

    public const double A21 = 1.0 / 5.0;
    public const double A31 = 3.0 / 40.0, A32 = 9.0 / 40.0;
    public const double A41 = 44.0 / 45.0, A42 = -56.0 / 15.0, A43 = 32.0 / 9.0;
    public const double A51 = 19372.0 / 6561.0, A52 = -25360.0 / 2187.0, A53 = 64448.0 / 6561.0, A54 = -212.0 / 729.0;
    public const double A61 = 9017.0 / 3168.0, A62 = -355.0 / 33.0, A63 = 46732.0 / 5247.0, A64 = 49.0 / 176.0,
        A65 = -5103.0 / 18656.0;

    /// <summary>Fifth-order weights; also the row of the seventh stage.</summary>
    public const double B1 = 35.0 / 384.0, B3 = 500.0 / 1113.0, B4 = 125.0 / 192.0, B5 = -2187.0 / 6784.0, B6 = 11.0 / 84.0;

    /// <summary>Fifth-order minus fourth-order weights.</summary>
    public const double E1 = 71.0 / 57600.0, E3 = -71.0 / 16695.0, E4 = 71.0 / 1920.0, E5 = -17253.0 / 339200.0,
        E6 = 22.0 / 525.0, E7 = -1.0 / 40.0;

    /// <summary>Fourth-degree term of the interpolant.</summary>
    public const double D1 = -12715105075.0 / 11282082432.0, D3 = 87487479700.0 / 32700410799.0,
        D4 = -10690763975.0 / 1880347072.0, D5 = 701980252875.0 / 199316789632.0, D6 = -1453857185.0 / 822651844.0,
        D7 = 69997945.0 / 29380423.0;
}
