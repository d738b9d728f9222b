using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Crawl;

/// <summary>What a crawl needs by statics, with the lure where it starts and the line straight: pulled slowly, without weight of line and lure's inertia.</summary>
/// <param name="WeightN">m g of the lure with its hooks, N.</param>
/// <param name="LineAngleRad">a, line over the level at the lure, rad.</param>
/// <param name="PullN">Pull at the lure that starts it and keeps it going (static and sliding friction alike): mu m g / (cos a + mu sin a), N.</param>
/// <param name="TipPullN">The same at the rod tip where all line over the plants lies on them: dT/ds = f + mu_p kappa T, N. What the rod lifts off costs nothing.</param>
/// <param name="StretchM">Stretch of the line under those pulls, m.</param>
/// <param name="RodGiveM">Way that the rod gives under the pull at its tip, along the line, m.</param>
/// <param name="LeastStrokeM">Stroke of the rigid tip that moves the lure from a tight line, m: stretch and give over the share of the stroke that draws along the line. Infinite where none does.</param>
public sealed record CrawlStatics(double WeightN, double LineAngleRad, double PullN, double TipPullN, double StretchM, double RodGiveM, double LeastStrokeM)
{
    /// <summary>Of a set-up.</summary>
    /// <param name="setup">Set-up with a mat.</param>
    /// <param name="task">Crawl.</param>
    /// <exception cref="ArgumentException">A value is out of range, or there is no mat.</exception>
    public static CrawlStatics Of(Setup setup, CrawlTask task) => Of(new CrawlParts(setup, task));

    /// <summary>Of parts at their start.</summary>
    /// <param name="parts">Parts.</param>
    internal static CrawlStatics Of(CrawlParts parts)
    {
        Setup setup = parts.Setup;
        CoverSpec cover = setup.Cover;
        SlidingContact contact = parts.Contact;
        WristSwing swing = parts.Line.Swing;
        var toTip = new Vec3(-parts.StartXM, 0.0, swing.TipHeightM - contact.TouchHeightM + contact.SinkM);
        Vec3 along = toTip.Unit();
        double weight = contact.MassKg * Physics.GravityMS2, angle = Math.Atan2(along.Z, -along.X);
        double pull = PullAt(contact, angle);
        double lying = Math.Min(cover.LineOverM, toTip.Length) - Math.Min(cover.OpeningM, Math.Max(0.0, Math.Min(cover.LineOverM, toTip.Length) - parts.Task.ToOpeningM));
        (double tip, double area) = OverPlants(pull, cover.DragNM, cover.LineFriction * cover.TurnRadM, lying);
        double stretch = (area + (tip * (toTip.Length - lying))) / setup.Line.AxialStiffnessN;
        stretch += setup.Leader is { } leader ? pull * leader.LengthM * ((1.0 / leader.Line.AxialStiffnessN) - (1.0 / setup.Line.AxialStiffnessN)) : 0.0;
        double slope = Vec3.Dot(along, swing.Along), give = tip * Compliance(parts.Line.Step.Rod.Modes) * (1.0 - (slope * slope));
        double drawn = Vec3.Dot(along, swing.Pull);
        return new(weight, angle, pull, tip, stretch, give, drawn > 0.0 ? (stretch + give) / drawn : double.PositiveInfinity);
    }

    /// <summary>mu m g / (cos a + mu sin a), N: a pull from above takes weight off the plants.</summary>
    /// <param name="contact">Lure and plants.</param>
    /// <param name="angleRad">a, rad.</param>
    internal static double PullAt(SlidingContact contact, double angleRad) =>
        contact.Friction * contact.MassKg * Physics.GravityMS2 / (Math.Cos(angleRad) + (contact.Friction * Math.Sin(angleRad)));

    /// <summary>Tension behind a length of line drawn over plants, and its integral along it: dT/ds = f + b T.</summary>
    /// <param name="tensionN">T before it, N.</param>
    /// <param name="holdNM">f, N/m.</param>
    /// <param name="turnPerM">b = mu_p kappa, 1/m.</param>
    /// <param name="lengthM">Length, m.</param>
    internal static (double TensionN, double AreaNm) OverPlants(double tensionN, double holdNM, double turnPerM, double lengthM)
    {
        double turn = turnPerM * lengthM;
        if (turn < 1e-6)
        {
            return (tensionN + (holdNM * lengthM), lengthM * (tensionN + (0.5 * holdNM * lengthM)));
        }

        double still = holdNM / turnPerM, grown = (tensionN + still) * Math.Exp(turn);
        return (grown - still, ((grown - tensionN - still) / turnPerM) - (still * lengthM));
    }

    private static double Compliance(RodModeSet modes)
    {
        double sum = 0.0;
        foreach (double stiffness in modes.StiffnessNM)
        {
            sum += 1.0 / stiffness;
        }

        return sum;
    }
}
