namespace LureSim.Validation.LineChecks;

/// <summary>Measures a frequency from the upward zero crossings of a signal, linear between samples.</summary>
internal sealed class ZeroCrossings
{
    private double _first = double.NaN, _last, _timeBefore, _valueBefore = double.NaN;
    private int _count;

    /// <summary>omega between the first and the last upward crossing, rad/s; NaN with fewer than two.</summary>
    public double Omega => _count > 1 ? 2.0 * Math.PI * (_count - 1) / (_last - _first) : double.NaN;

    public void Add(double time, double value)
    {
        if (_valueBefore < 0.0 && value >= 0.0)
        {
            _last = _timeBefore + ((time - _timeBefore) * _valueBefore / (_valueBefore - value));
            _first = _count == 0 ? _last : _first;
            _count++;
        }

        (_timeBefore, _valueBefore) = (time, value);
    }
}
