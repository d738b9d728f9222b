namespace LureSim.Model.Lures;

/// <summary>A hull from given sections, linear between them.</summary>
internal sealed class StationHull : HullForm
{
    private readonly HullStation[] _stations;

    /// <summary>Creates the hull.</summary>
    /// <param name="lengthM">L, m; the stations should reach -L/2 and L/2, beyond the last one its section goes on.</param>
    /// <param name="stations">At least two, x rising.</param>
    /// <exception cref="ArgumentException">Fewer than two, x not rising, or a negative half-axis.</exception>
    public StationHull(double lengthM, IReadOnlyList<HullStation> stations)
        : base(lengthM)
    {
        ArgumentNullException.ThrowIfNull(stations);
        LureSpecCheck.DemandStations(stations);
        _stations = [.. stations];
    }

    /// <inheritdoc/>
    public override HullSection SectionAt(double x)
    {
        // The first station from the second on that is not behind x, or the last.
        int i = 1, last = _stations.Length - 1;
        while (i < last)
        {
            int middle = (i + last) / 2;
            (i, last) = _stations[middle].XM < x ? (middle + 1, last) : (i, middle);
        }

        HullStation a = _stations[i - 1];
        HullStation b = _stations[i];
        double w = Math.Clamp((x - a.XM) / (b.XM - a.XM), 0.0, 1.0);
        return new HullSection(
            a.HalfBreadthM + (w * (b.HalfBreadthM - a.HalfBreadthM)),
            a.HalfHeightM + (w * (b.HalfHeightM - a.HalfHeightM)),
            a.CentreZM + (w * (b.CentreZM - a.CentreZM)));
    }
}
