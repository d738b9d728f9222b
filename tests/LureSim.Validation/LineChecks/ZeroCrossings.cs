namespace LureSim.Validation.LineChecks;

/// <summary>Measures a frequency from the upward zero crossings of a signal, linear between samples.</summary>
internal sealed class ZeroCrossings
{
    private double first = double.NaN, last, timeBefore, valueBefore = double.NaN;
    private int count;

    /// <summary>omega between the first and the last upward crossing, rad/s; NaN with fewer than two.</summary>
    public double Omega => count > 1 ? 2.0 * Math.PI * (count - 1) / (last - first) : double.NaN;

    public void Add(double time, double value)
    {
        if (valueBefore < 0.0 && value >= 0.0)
        {
            last = timeBefore + ((time - timeBefore) * valueBefore / (valueBefore - value));
            first = count == 0 ? last : first;
            count++;
        }

        (timeBefore, valueBefore) = (time, value);
    }
}
