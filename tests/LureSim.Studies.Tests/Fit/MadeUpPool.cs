using System.Globalization;
using System.Text;
using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Tests.Fit;

/// <summary>An hour in a pool with a lure whose numbers are known: what a file of it would say, errors as people make them.</summary>
internal sealed class MadeUpPool
{
    private const double Degree = Math.PI / 180.0;
    private readonly FitModel _model;
    private readonly FitCandidate _lures;
    private readonly Random _luck;
    private readonly StringBuilder _text = new();

    /// <summary>Takes a lure to the pool.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="truth">Its numbers in z, in the order of <see cref="FitModel.Unknowns"/>.</param>
    /// <param name="seed">Luck of the errors.</param>
    /// <param name="walks">True where it walks too, with a stroke and a slack that are numbers of it.</param>
    /// <param name="overrides">Overrides of the scenario.</param>
    public MadeUpPool(string scenario, Func<FitUnknown, double> truth, int seed, bool walks = false, IReadOnlyList<string>? overrides = null)
    {
        Source = ScenarioSource.Load(scenario, walks ? Activities.Pool | Activities.Retrieve : Activities.Pool);
        _model = new FitModel(Source, overrides ?? [], null, walks);
        Truth = _model.Unknowns.ToDictionary(u => u.Name, truth);
        _lures = _model.Candidate([.. _model.Unknowns.Select(u => Truth[u.Name])])!;
        _luck = new Random(seed);
        Line($"scenario, {Path.GetFileName(scenario)}");
    }

    /// <summary>The lure.</summary>
    public ScenarioSource Source { get; }

    /// <summary>Its numbers in z by name.</summary>
    public IReadOnlyDictionary<string, double> Truth { get; }

    /// <summary>Factor on every error.</summary>
    public double Noise { get; init; } = 1.0;

    /// <summary>The file so far.</summary>
    public string Text => _text.ToString();

    /// <summary>Reads it as a file.</summary>
    public FitFile File() => Read(Text, Source.Name);

    /// <summary>Reads a text as if it stood in a file.</summary>
    public static FitFile Read(string text, string scenario)
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("fit").FullName, "made-up.csv");
        System.IO.File.WriteAllText(path, text);
        var faults = new List<ScenarioFault>();
        FitFile? file = FitFile.Read(path, scenario, faults);
        Directory.Delete(Path.GetDirectoryName(path)!, true);
        Assert.Empty(faults);
        return file!;
    }

    /// <summary>Tows, each speed so many times; what looks straight is written so, what fishtails by its swing.</summary>
    public MadeUpPool Tows(bool on, int times, params double[] speeds)
    {
        Block("tow", on);
        Line("speed, sheer, swing");
        foreach (double speed in speeds)
        {
            TowRow row = Lure(on).Tow(_model.Task, speed, default);
            for (int i = 0; i < times; i++)
            {
                double sheer = Math.Abs(row.SheerDeg + Error(3.0)), swing = row.SwingDeg + Error(3.0 * Math.Sqrt(2.0));
                Line(row.Course == TowCourse.Fishtails ? $"{N(speed)} m/s, , {N(Math.Max(swing, 0.0))}" : sheer < 3.0 ? $"{N(speed)} m/s, straight" : $"{N(speed)} m/s, {N(sheer)}");
            }
        }

        return this;
    }

    /// <summary>Pushes: drift and way until turned.</summary>
    public MadeUpPool Pushes(bool on, int times, double speed)
    {
        Block("push", on);
        Line($"speed, {N(speed)} m/s");
        Line("drift, way");
        for (int i = 0; i < times; i++)
        {
            double drift = 2.0 + (4.0 * _luck.NextDouble());
            PushResult push = Lure(on).Push(_model.Task with { PushSpeedMS = speed, PushDriftRad = drift * Degree }, true, default);
            Line($"{N(Math.Max(0.2, drift + Error(1.0)))} deg, {(push.TurnM is double way ? $"{N(100.0 * Math.Max(0.01, way + Error(0.01)))} cm" : "never")}");
        }

        return this;
    }

    /// <summary>Coast-downs without drift.</summary>
    public MadeUpPool Coasts(bool on, int times, double seconds)
    {
        Block("coast", on);
        Line("time (s), distance (mm)");
        for (int run = 1; run <= times; run++)
        {
            Line(run > 1 ? $"run, {run}" : "");
            SwimResult swim = Lure(on).Swim(new(0.3 + (0.4 * _luck.NextDouble()), 0.0, 0.0, seconds), _model.Task.StepS, default);
            double from = _luck.NextDouble();
            for (double t = 0.0; t <= seconds; t += 1.0 / 15.0)
            {
                Line($"{N(t)}, {N(1000.0 * (from + SwimTrace.At(swim.TimeS, swim.WayM, t) + Error(0.003)))}");
            }
        }

        return this;
    }

    /// <summary>Films of pushes with drift, nose and tail; every tenth place hidden.</summary>
    public MadeUpPool Films(bool on, int times, double seconds)
    {
        Block("track", on);
        Line("time (s), nose x (cm), nose y (cm), tail x (cm), tail y (cm)");
        for (int run = 1; run <= times; run++)
        {
            Line(run > 1 ? $"run, {run}" : "");
            double[] t = [.. Enumerable.Range(0, (int)(15.0 * seconds) + 1).Select(i => i / 15.0)];
            TrackMark[] marks = [.. t.SelectMany(s => (TrackMark[])[new(s, 1.0, false), new(s, 1.0, true), new(s, -1.0, false), new(s, -1.0, true)])];
            double[] own = [0.35 + (0.3 * _luck.NextDouble()), (_luck.NextDouble() < 0.5 ? 1.0 : -1.0) * (2.0 + (5.0 * _luck.NextDouble())) * Degree, 0.4 * (_luck.NextDouble() - 0.5)];
            double[] seen = new TrackRun(on, marks, _model.Task.StepS) { Readings = [] }.Unlaid(Lure(on), own, default);
            (double sin, double cos) = Math.SinCos(6.0 * _luck.NextDouble());
            double x0 = _luck.NextDouble(), y0 = _luck.NextDouble();
            for (int i = 0; i < t.Length; i++)
            {
                string Point(int k) => _luck.NextDouble() < 0.1 ? ", , " : $", {N(100.0 * (x0 + (cos * seen[k]) - (sin * seen[k + 1]) + Error(0.003)))}, {N(100.0 * (y0 + (sin * seen[k]) + (cos * seen[k + 1]) + Error(0.003)))}";
                Line($"{N(t[i])}{Point(4 * i)}{Point((4 * i) + 2)}");
            }
        }

        return this;
    }

    /// <summary>Swings.</summary>
    public MadeUpPool Swings(bool on, int times)
    {
        Block("swings", on);
        foreach ((string name, double error, SwingResult swing) in ((string, double, SwingResult)[])
            [("roll", 0.02, Lure(on).Roll(_model.Task, default)), ("bob", 0.05, Lure(on).Bob(_model.Task, default)), ("nod", 0.05, Lure(on).Nod(_model.Task, default))])
        {
            for (int i = 0; i < times && swing.PeriodS is double; i++)
            {
                Line($"{name}, {N(swing.PeriodS!.Value * (1.0 + Error(error)))} s, {N(100.0 * Math.Clamp(swing.LossShare!.Value + Error(0.05), 0.0, 1.0))} %");
            }
        }

        return this;
    }

    /// <summary>How it floats.</summary>
    public MadeUpPool Bowl()
    {
        RestResult rest = _lures.On.Rest();
        Line("test, float");
        Line($"angle, {N((rest.TrimRad / Degree) + Error(1.0))} deg");
        Line($"nose height, {N((1000.0 * rest.NoseHeightM) + Error(1.0))} mm");
        return this;
    }

    /// <summary>Films of the walk from above, 15 pictures a second, nose and tail, every tenth place hidden, axes anywhere and y down.</summary>
    public MadeUpPool Walks(int films, int pairs, double cadence, double errorM = 0.01, bool says = false)
    {
        Line("test, walk");
        Line(says ? $"cadence, {N(cadence)} /s" : "");
        Line("time (s), nose x (cm), nose y (cm), tail x (cm), tail y (cm)");
        WalkTest test = Walk(cadence, Walk(cadence, 0.25).Compute(_lures, [], default)![0]);
        RestResult rest = _lures.On.Rest();
        for (int run = 1; run <= films; run++)
        {
            Line(run > 1 ? $"run, {run}" : "");

            // Not the start that the fit computes from; the hand has found what it takes up, and goes on for 18 s more.
            Model.Series series = StationaryOutcome.Whole(_lures.SetupOn, test.Task(_lures.Retrieve!, new StationaryPlan(ToTheEnd: true), run), default).Demand().Series;
            double from = 18.0 + _luck.NextDouble();
            (double sin, double cos) = Math.SinCos(6.0 * _luck.NextDouble());
            Dictionary<string, double[]> channels = ((string[])["time_s", "lure_x_m", "lure_y_m", "heading_deg"]).ToDictionary(c => c, c => series[c].ToArray());
            double Now(string channel, double t) => SwimTrace.At(channels["time_s"], channels[channel], t);
            for (double t = 0.0; t <= 2.0 * pairs / cadence; t += 1.0 / 15.0)
            {
                double x = Now("lure_x_m", from + t), y = Now("lure_y_m", from + t), psi = Math.PI + (Now("heading_deg", from + t) * Degree);
                string Point(double ahead)
                {
                    double px = x + (ahead * Math.Cos(psi)), py = y + (ahead * Math.Sin(psi));
                    return _luck.NextDouble() < 0.1 ? ", , " : $", {N(100.0 * ((cos * px) - (sin * py) + Error(errorM)))}, {N(-100.0 * ((sin * px) + (cos * py) + Error(errorM)))}";
                }

                Line($"{N(t)}{Point(rest.NoseAheadM)}{Point(rest.TailAheadM)}");
            }
        }

        return this;
    }

    /// <summary>What an eye counts of the walk from the shore.</summary>
    public MadeUpPool WalkByEye(int times, double cadence)
    {
        double[] seen = Walk(cadence, 0.25).Compute(_lures, [], default)!;
        Line("test, walk");
        Line($"cadence, {N(cadence)} /s");
        Line("advance, width, heading swing");
        for (int i = 0; i < times; i++)
        {
            Line($"{N(100.0 * (seen[0] + Error(0.03)))} cm, {N(100.0 * (seen[1] + Error(0.03)))} cm, {N((seen[2] / Degree) + Error(15.0))}");
        }

        return this;
    }

    // A walk whose hand begins at an advance.
    private static WalkTest Walk(double cadence, double advance) => new(true, cadence, null)
    {
        Readings = [.. ((FitQuantity[])[FitQuantity.Advance, FitQuantity.PathWidth, FitQuantity.HeadingSwing]).Select(q => new FitReading(FitKind.Walk, q, "", true, cadence, q == FitQuantity.Advance ? advance : 0.0, 1.0))],
    };

    private PoolTrial Lure(bool on) => _lures.Trial(on);

    private void Block(string test, bool on)
    {
        Line($"test, {test}");
        Line($"hooks, {(on ? "on" : "off")}");
    }

    // Box and Muller.
    private double Error(double sigma) => Noise * sigma * Math.Sqrt(-2.0 * Math.Log(1.0 - _luck.NextDouble())) * Math.Cos(2.0 * Math.PI * _luck.NextDouble());

    private void Line(string line) => _text.Append(line).Append('\n');

    private static string N(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
