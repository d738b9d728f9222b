using LureSim.Model.Lures;
using LureSim.Numerics;
using LureSim.Reports.Kit.Charts;
using OxyPlot;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>The lure of a loop from above, in pixels of a view that goes along with its mean way. The rod lies to the left, the angler's left is up.</summary>
internal sealed class WalkTrack
{
    private const double Degree = Math.PI / 180.0;

    // At least this many hull lengths across, and the lure a little right of the middle: the line comes in from the left.
    private const double HullsAcross = 7.0, Middle = 0.62, Rim = 1.12;
    private readonly LureBody _body;
    private readonly Attitude _pose;

    /// <summary>Lays a loop into a box.</summary>
    /// <param name="loop">Loop.</param>
    /// <param name="box">Where it is drawn, px.</param>
    public WalkTrack(WalkLoop loop, OxyRect box)
    {
        _body = LureBody.Of(loop.Result.Setup.Lure);
        double[] x = loop.Values("lure_x_m"), y = loop.Values("lure_y_m"), noseX = loop.Values("nose_x_m"), noseY = loop.Values("nose_y_m");
        double[] heading = loop.Values("heading_deg"), pitch = loop.Values("pitch_deg"), roll = loop.Values("roll_deg");
        Share = [.. x.Select((_, i) => loop.Share(i))];
        _pose = new Attitude(0.0, pitch.Average() * Degree, 0.0);
        (double wayX, double wayY) = (x[^1] - x[0], y[^1] - y[0]);
        double[] outer = [.. y.Select((v, i) => v - (Share[i] * wayY)), .. noseY.Select((v, i) => v - (Share[i] * wayY))];
        double hull = loop.Result.Hull.LengthM;
        ScalePxM = Math.Min(box.Height / (Rim * (outer.Max() - outer.Min() + hull)), box.Width / (HullsAcross * hull));
        double centreX = box.Left + (Middle * box.Width) - (ScalePxM * x.Select((v, i) => v - x[0] - (Share[i] * wayX)).Average());
        double centreY = box.Top + (0.5 * box.Height) + (ScalePxM * 0.5 * (outer.Max() + outer.Min()));
        Way = new(-ScalePxM * wayX, ScalePxM * wayY);
        ScreenPoint World(double ax, double ay) => new(centreX + (ScalePxM * (ax - x[0])), centreY - (ScalePxM * ay));
        Nose = [.. noseX.Select((v, i) => World(v, noseY[i]))];
        Centre = [.. x.Select((v, i) => World(v, y[i]) + (Way * Share[i]))];
        TurnDeg = [.. heading.Select(h => -(h + 180.0))];
        Vec3[] ties = [.. pitch.Select((p, i) => _body.Tie(new Attitude(0.0, p * Degree, roll[i] * Degree)))];
        DataPoint[] tie = [.. ties.Select((t, i) => LureBody.Place(x[i], y[i], -TurnDeg[i] * Degree, t.X, t.Y))];
        Tie = [.. tie.Select((t, i) => World(t.X, t.Y) + (Way * Share[i]))];
        double[] tipX = loop.Values("tip_x_m"), tipY = loop.Values("tip_y_m");
        LineDeg = [.. tie.Select((t, i) => Math.Atan2(tipY[i] - t.Y, t.X - tipX[i]) / Degree)];
    }

    /// <summary>Pixels per metre.</summary>
    public double ScalePxM { get; }

    /// <summary>Places in the loop, 0 to 1.</summary>
    public double[] Share { get; }

    /// <summary>How far the water moves through the view in one loop, px.</summary>
    public ScreenVector Way { get; }

    /// <summary>The nose in the water: in the view as it is at the start of the loop, px.</summary>
    public ScreenPoint[] Nose { get; }

    /// <summary>Centre of gravity in the view, px.</summary>
    public ScreenPoint[] Centre { get; }

    /// <summary>Line tie in the view, px.</summary>
    public ScreenPoint[] Tie { get; }

    /// <summary>Turn of <see cref="Hull"/>, clockwise on the screen, deg, not wrapped.</summary>
    public double[] TurnDeg { get; }

    /// <summary>Turn of a line that runs to the left from the tie so that it points at the rod tip, clockwise on the screen, deg.</summary>
    public double[] LineDeg { get; }

    /// <summary>Outline with its nose to the right, about the centre of gravity, at the mean pitch of the loop, px.</summary>
    public IEnumerable<ScreenPoint> Hull => _body.FromAbove(_pose).Select(p => new ScreenPoint(ScalePxM * p.X, -ScalePxM * p.Y));
}
