using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>Running integrals of <see cref="Immersion"/>.</summary>
/// <param name="attitude">Attitude.</param>
internal struct ImmersionSums(Attitude attitude)
{
    private readonly Vec3 _forward = attitude.Forward;
    private readonly Vec3 _left = attitude.Left;
    private double _volume;
    private Vec3 _moment;
    private double _area;
    private double _areaX;
    private double _areaXX;
    private double _areaY;
    private double _areaYY;

    /// <summary>Adds the piece of the hull between two positions.</summary>
    public void AddPiece(IHull hull, WaterLine water, double from, double to, int strips)
    {
        double half = 0.5 * (to - from);
        double middle = 0.5 * (to + from);
        if (half <= 0.0 || hull.WettingAt(middle, water.Ny, water.Nz, water.Level(middle)) == Wetting.Dry)
        {
            return;
        }

        StripRule rule = StripRule.Of(strips);
        for (int i = 0; i < strips; i++)
        {
            double x = middle + (half * rule.Node[i]);
            Add(x, half * rule.Weight[i], hull.Cut(x, water.Ny, water.Nz, water.Level(x)), water.Cos);
        }
    }

    /// <summary>The integrals as centroid and second moments.</summary>
    public readonly Immersion Result()
    {
        Vec3 centre = _volume > 0.0 ? (1.0 / _volume) * _moment : Vec3.Zero;
        double x = _area > 0.0 ? _areaX / _area : 0.0;
        double y = _area > 0.0 ? _areaY / _area : 0.0;
        return new Immersion(
            _volume, centre, _area, x, _areaXX - (_area * x * x), _areaYY - (_area * y * y));
    }

    private void Add(double x, double width, SectionCut cut, double cosTrim)
    {
        double volume = cut.AreaM2 * width;
        _volume += volume;
        _moment += volume * new Vec3(x, cut.CentroidYM, cut.CentroidZM);
        if (cut.ChordM > 0.0)
        {
            var middle = new Vec3(x, cut.ChordMidYM, cut.ChordMidZM);
            double area = cut.ChordM * width / cosTrim;
            double along = Vec3.Dot(_forward, middle);
            double across = Vec3.Dot(_left, middle);
            _area += area;
            _areaX += area * along;
            _areaXX += area * along * along;
            _areaY += area * across;
            _areaYY += area * ((across * across) + (cut.ChordM * cut.ChordM / 12.0));
        }
    }
}
