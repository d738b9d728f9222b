using System.Collections.Concurrent;

namespace LureSim.Model.Lures;

/// <summary>
/// Fejer's first rule on -1..1: strips at the midpoints in theta of x = -cos theta, bunched toward the ends, exact for
/// polynomials below degree n, and close on the root-like ends of a hull. Fejer 1933; Waldvogel 2006, BIT 46:195.
/// </summary>
internal sealed class StripRule
{
    private static readonly ConcurrentDictionary<int, StripRule> Cache = new();

    private StripRule(int n)
    {
        Node = new double[n];
        Weight = new double[n];
        for (int i = 0; i < n; i++)
        {
            double theta = (i + 0.5) * Math.PI / n;
            double sum = 0.0;
            for (int j = 1; j <= n / 2; j++)
            {
                sum += Math.Cos(2.0 * j * theta) / ((4.0 * j * j) - 1.0);
            }

            Node[i] = -Math.Cos(theta);
            Weight[i] = 2.0 / n * (1.0 - (2.0 * sum));
        }
    }

    /// <summary>Positions, rising.</summary>
    public double[] Node { get; }

    /// <summary>Widths; their sum is 2.</summary>
    public double[] Weight { get; }

    /// <summary>The rule with n strips.</summary>
    public static StripRule Of(int n) => Cache.GetOrAdd(n, static k => new StripRule(k));
}
