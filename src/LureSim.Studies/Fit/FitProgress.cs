namespace LureSim.Studies.Fit;

/// <summary>Steps of a search are not known beforehand: each brings a fifteenth of what is left.</summary>
internal sealed class FitProgress(Action<double> report)
{
    private double _share;

    /// <summary>A step is done.</summary>
    public void Done()
    {
        _share += (1.0 - _share) / 15.0;
        report(_share);
    }
}
