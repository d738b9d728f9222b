using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Reels;
using LureSim.Reports.Cadence;
using LureSim.Reports.Cast;
using LureSim.Reports.Cover;
using LureSim.Reports.Design;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Reports.Sweep;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Design;
using LureSim.Studies.Doubt;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Tests.Support;

/// <summary>Charts whose words are hard to place: long titles and names, ten rows, either family of units.</summary>
internal static class HardCharts
{
    public const string Title = "The old slanted walker with three trebles and a feather, on 30-lb braid of eight strands with a meter of thick fluorocarbon leader, "
        + "7 ft 4 in medium-heavy rod, low-profile reel, from the high bank in a cross wind";

    private const string Name = "7 ft 4 in medium-heavy fast, 14 lb nylon 0.38 mm, wetted, with a leader of 60 cm of fluorocarbon";

    private static readonly (ChangeKind Columns, ChangeKind Rows)[] Maps =
    [
        (ChangeKind.BallastAlong, ChangeKind.BallastMass), (ChangeKind.BallastAlong, ChangeKind.BallastUp), (ChangeKind.TieUp, ChangeKind.HookSize),
        (ChangeKind.HookSize, ChangeKind.TieAlong), (ChangeKind.Length, ChangeKind.Section),
    ];

    /// <summary>Name, and how it is built.</summary>
    public static IReadOnlyList<(string Name, Func<Chart> Build)> All { get; } =
    [
        .. Enum.GetValues<UnitChoice>().SelectMany(choice => In(new Shown(choice)).Select(c => ($"{c.Name}, {choice}", c.Build))),
    ];

    private static IEnumerable<(string Name, Func<Chart> Build)> In(Shown shown)
    {
        yield return ("cast_swing", () => SwingStrobe.Build(Cast(ReelKind.Revolving), shown));
        yield return ("cast_path", () => FlightPath.Build(Cast(ReelKind.Revolving), shown));
        yield return ("cast_path short", () => FlightPath.Build(Cast(ReelKind.Revolving, 6.0), shown));
        yield return ("cast_path far", () => FlightPath.Build(Cast(ReelKind.Revolving, 120.0), shown));
        yield return ("cast_speeds", () => CastSpeeds.Build(Cast(ReelKind.Revolving), shown));
        yield return ("cast_speeds fixed", () => CastSpeeds.Build(Cast(ReelKind.Fixed), shown));
        yield return ("cast_release", () => ReleaseChart.Build(Cast(ReelKind.Revolving), shown));
        yield return ("cast_energy", () => EnergyBars.Build(Cast(ReelKind.Revolving), shown));
        yield return ("cast_brake", () => BrakeChart.Build(new(Cast(ReelKind.Revolving), MadeUpCast.Brakes), shown));
        yield return ("cast_power", () => PowerTableChart.Build(MadeUpCast.Powers() with { Title = Title }, shown));
        yield return ("cast_across ten", () => CastAcrossChart.Build(Ten(), shown));
        yield return ("cast_match", () => MatchChart.Build(StoredCharts.Match() with { Title = Title }, shown));
        yield return ("cover", () => CoverChart.Build(MadeUpCover.Report() with { Title = Title }, shown));
        yield return ("cover hopeless", () => CoverChart.Build(MadeUpCover.Hopeless() with { Title = Title }, shown));
        yield return ("design_before_after", () => BeforeAfterChart.Build(Title, MadeUpTrim.Level(), MadeUpTrim.Result(), Name, shown));
        yield return ("design_pull", () => PullTurnChart.Build(Title, MadeUpMargin.Result(), shown));
        yield return ("design_margin", () => MarginMovesChart.Build(Title, MadeUpMargin.Own, MadeUpMargin.Changes, _ => Name)!);
        foreach ((ChangeKind columns, ChangeKind rows) in Maps)
        {
            yield return ($"design_float_map {columns} {rows}", () => DesignMapCharts.Angle(Title, MadeUpMargin.Map(rows, true, columns), shown));
            yield return ($"design_tow_map {columns} {rows}", () => DesignMapCharts.Tow(Title, MadeUpMargin.Map(rows, true, columns), shown));
        }

        foreach (StrikeStyle style in Enum.GetValues<StrikeStyle>())
        {
            yield return ($"strike_force {style}", () => StrikeForce.Build(Long(MadeUpStrike.About(MadeUpStrike.Result(style, 26.0, 45.0, slips: true))), shown));
            yield return ($"strike_force {style} near", () => StrikeForce.Build(Long(MadeUpStrike.About(MadeUpStrike.Result(style, 1.5, 3.0))), shown));
        }

        foreach (double peak in new[] { 0.0, 1.5, 26.0, 60.0, 200.0 })
        {
            yield return ($"strike_margins {peak}", () => MarginBars.Build(Long(MadeUpStrike.About(MadeUpStrike.Result(peakN: peak))), shown));
        }

        foreach ((string name, StrikeReport report) in new[] { ("", MadeUpStrike.Report()), (" empty", MadeUpStrike.Empty()), (" brittle", MadeUpStrike.Brittle()), (" weak", MadeUpStrike.TooWeak()), (" strong", MadeUpStrike.Strong()) })
        {
            yield return ($"drag_window{name}", () => DragWindowChart.Build(Long(report), shown));
            yield return ($"strike_distance{name}", () => StrikeDistance.Build(Long(report), shown));
        }

        yield return ("cadence", () => CadenceChart.Build(MadeUpCadence.TwoWindows() with { Setup = Long(MadeUpCadence.TwoWindows().Setup) }, shown));
        foreach (bool two in new[] { false, true })
        {
            yield return ($"across_windows {two}", () => AcrossWindows.Build(Renamed(MadeUpCadence.Across(numbers: true, two)), shown));
            yield return ($"across_glide {two}", () => AcrossGlide.Build(Renamed(MadeUpCadence.Across(numbers: true, two)), shown));
            yield return ($"across_trend {two}", () => AcrossTrend.Build(Renamed(MadeUpCadence.Across(numbers: true, two)), shown)!);
        }

        yield return ("cadence_map", () => CadenceMap.Build(MadeUpCadence.Map() with { Title = Title }, Title, shown));
        yield return ("doubt many", () => Doubt(noise: 0.001, shown));
        yield return ("doubt none", () => Doubt(noise: 1.0, shown));
        yield return ("rank many", () => RankChart.Build(MadeUpDoubt.Glide, Title, [.. Enumerable.Range(0, 40).Select(i => (Name, new GuessRank(0.02 * i, 0.02 * i, -0.001 * i, 0.001 * i)))], 0.2, shown));
    }

    private static CastResult Cast(ReelKind reel, double distance = 32.0)
    {
        CastResult cast = MadeUpCast.Result(reel, distance);
        return cast with { Setup = Long(cast.Setup) };
    }

    private static StrikeReport Long(StrikeReport report) => report with { Strike = report.Strike with { Setup = Long(report.Strike.Setup) } };

    private static Setup Long(Setup setup) => setup with { Title = Title };

    private static CastAcross Ten()
    {
        CastAcross four = MadeUpCast.Across();
        return four with
        {
            Title = Title,
            Law = "rod mass ~ length^1.5 (guess, 1 to 2), the same load rating (guess, load ~ length^-n, n 0 to 2)",
            Cases = [.. Enumerable.Range(0, 10).Select(i => four.Cases[i % 4] with { Label = $"{i}: {Name}" })],
        };
    }

    private static AcrossResult Renamed(AcrossResult result) => result with
    {
        Title = Title,
        Cases = [.. result.Cases.Select(c => c with { Values = [.. c.Values.Select(v => v with { Label = $"{v.Label}: {Name}" })] })],
    };

    private static Chart Doubt(double noise, Shown shown)
    {
        DoubtStudy study = MadeUpDoubt.Study();
        ScreenReport screen = study.Screen! with
        {
            Noise = [noise],
            Effects = [.. Enumerable.Range(0, 20).Select(i => new GuessEffect[] { new(i == 19 ? 0.0 : 0.01 * i, -0.008 * i, i == 19 ? 0.5 : 0.012 * i, 0.0) })],
        };
        return DoubtChart.Build(study.Report, screen, MadeUpDoubt.Glide, [.. Enumerable.Range(0, 20).Select(i => new GuessName($"k{i}", $"{Name} (0.{i} to 1.{i} N m)"))], shown)!;
    }
}
