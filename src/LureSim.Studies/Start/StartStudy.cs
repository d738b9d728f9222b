using System.Globalization;
using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Starting;
using LureSim.Studies.Trim;

namespace LureSim.Studies.Start;

/// <summary>
/// Makes the scenario of a plan: finds the place of the ballast at which the lure rests as its kind does, and reads the file back. Scaling alone
/// keeps the attitude but for the hooks, whose sizes go in steps.
/// </summary>
public static class StartStudy
{
    /// <summary>How far from its kind's attitude a lure may rest, rad: 3 deg, what a hook of the next size does.</summary>
    public const double BandRad = 3.0 * Degree;

    private const double Degree = Math.PI / 180.0;

    // Ends of the search in lengths of the body, and halvings of it: to some hundredths of a millimetre, finer than the file.
    private const double Aftmost = -0.44, Foremost = 0.30;
    private const int Halvings = 16;

    // Nobody sees a tenth of a degree.
    private const double NearRad = 0.1 * Degree;

    // A body far from the size of its part is seldom of the same proportions; rounded, nobody has counted.
    private const double LeastScale = 0.75, MostScale = 1.35;
    private const double DeepShare = 0.92, HighShare = 0.55;

    // Beyond rounding, a lure that does not float is too heavy for its length; else its hooks outweigh it.
    private const double HeavierThanUsual = 1.01;

    /// <summary>Makes the scenario.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="name">Name of the file.</param>
    /// <param name="folder">Folder of the file.</param>
    /// <param name="stop">Stops the search.</param>
    /// <returns>The scenario, or null with the faults.</returns>
    public static (StartResult? Result, IReadOnlyList<ScenarioFault> Faults) Make(StartPlan plan, string name, string folder, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ScenarioResult scaled = Read(plan.Toml(plan.BallastXM), name, folder);
        if (!scaled.IsValid)
        {
            return (null, Faults(plan, scaled));
        }

        WaterState water = WaterModel.Evaluate(scaled.Setup!.Water);
        double promised = TrimRad(PartFacts.Lure(plan.LurePart), WaterModel.Evaluate(new()), stop);
        try
        {
            double x = BallastX(scaled.Setup.Lure, water, promised, stop);
            TrimResult trim = TrimSource.AtRest(Read(plan.Toml(x), name, folder), stop);
            if (!trim.IsUpright || Math.Abs(trim.Rest.TrimRad - promised) > BandRad)
            {
                return (null, [new("start", "", Unreached(plan, trim, promised))]);
            }

            string toml = plan.Toml(x, $"The lure should rest {Angle(trim.Rest.TrimRad)} in still water.");
            ScenarioResult whole = Read(toml, name, folder);
            return (new(plan, toml, whole, trim, promised, [.. whole.Notes.Select(n => n.Message), .. Remarks(plan, trim)]), []);
        }
        catch (ModelException e)
        {
            return (null, [new("start", "", $"no attitude was found in which this lure floats ({e.Message}); another mass, length or size of hooks is due")]);
        }
    }

    /// <summary>An angle of trim in words.</summary>
    /// <param name="rad">Trim, rad.</param>
    public static string Angle(double rad)
    {
        double deg = Math.Round(Math.Abs(rad) / Degree);
        return deg == 0.0 ? "level" : string.Create(CultureInfo.InvariantCulture, $"{deg:F0} deg {(rad > 0.0 ? "tail-down" : "nose-down")}");
    }

    private static ScenarioResult Read(string toml, string name, string folder) => ScenarioSource.FromText(toml, name, folder).Resolve();

    // Trim falls as the weight goes forward; the ends decide where the wanted one cannot be had.
    private static double BallastX(LureSpec lure, WaterState water, double wantedRad, CancellationToken stop)
    {
        double aft = Aftmost * lure.LengthM, fore = Foremost * lure.LengthM, x = lure.Ballast[0].XM;
        for (int i = 0; i < Halvings; i++)
        {
            double trim = TrimRad(lure with { Ballast = [lure.Ballast[0] with { XM = x }] }, water, stop);
            if (Math.Abs(trim - wantedRad) < NearRad)
            {
                return x;
            }

            (aft, fore) = trim > wantedRad ? (Math.Max(aft, x), fore) : (aft, Math.Min(fore, x));
            x = 0.5 * (aft + fore);
        }

        return x;
    }

    private static double TrimRad(LureSpec lure, WaterState water, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        return Trimming.Rest(lure, water).TrimRad;
    }

    private static IReadOnlyList<ScenarioFault> Faults(StartPlan plan, ScenarioResult read) =>
        !read.Errors.Any(e => e.Key == LureKeys.MassWithHooks.Path || e.Key == LureKeys.Ballast.Path) ? [.. read.Errors.Select(e => new ScenarioFault("start", e.Key, e.Message))]
        : plan.MassKg > HeavierThanUsual * plan.UsualMassKg ? [new("start", "", Sinks(plan))]
        : [new("start", "", $"hooks and ballast alone weigh as much as a lure of {Weight(plan.MassKg)}; smaller --hooks or a heavier lure is due")];

    private static string Sinks(StartPlan plan) => string.Concat(
        $"a lure of {Weight(plan.MassKg)} that is {Span(plan.LengthM)} long would sink; of this kind, that mass is about {Span(plan.UsualLengthM)} long, ",
        $"and that length weighs about {Weight(plan.UsualMassKg)}");

    private static string Weight(double kg) => Both(kg, QuantityKind.Mass, "oz", "g");

    private static string Span(double m) => Both(m, QuantityKind.Length, "in", "cm");

    private static string Both(double si, QuantityKind kind, string trade, string metric) =>
        $"{Quantity.Show(si, kind, trade, 3)} ({Quantity.Show(si, kind, metric, 3)})";

    private static string Unreached(StartPlan plan, TrimResult trim, double promised) => trim.IsUpright
        ? $"a lure of the kind {plan.Kind} rests {Angle(promised)}, but with this mass, length and hooks its ballast brings it no nearer than {Angle(trim.Rest.TrimRad)}; other hooks or another length are due"
        : "this lure would lie over on its side; lighter hooks or another mass and length are due";

    private static List<string> Remarks(StartPlan plan, TrimResult trim)
    {
        var remarks = new List<string>(plan.Remarks);
        double under = trim.Rest.DisplacedVolumeM3 / trim.Rest.HullVolumeM3;
        if (plan.Scale is < LeastScale or > MostScale)
        {
            remarks.Add(string.Create(
                CultureInfo.InvariantCulture, $"its lengths are {plan.Scale:0.0#} times those of lures/{plan.LurePart.Name}; so far from it, measure length and thickness before you trust the rest"));
        }

        if (under is > DeepShare or < HighShare)
        {
            remarks.Add(string.Create(
                CultureInfo.InvariantCulture, $"for its length the lure is {(under > DeepShare ? "heavy" : "light")}: {100.0 * under:F0} % of it is under water; a round lure of this kind has three quarters"));
        }

        return remarks;
    }
}
