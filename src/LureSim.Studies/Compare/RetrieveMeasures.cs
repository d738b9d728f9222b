using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Compare;

/// <summary>What happens on the water, and at the handle: every row from the same retrieves.</summary>
public sealed class RetrieveMeasures : IMeasureSet
{
    /// <summary>Slowest rhythm that walks.</summary>
    public static readonly CompareMeasure Slowest = new("walk_from_per_s", "1/s", Better.Less, Humans.Tempo);

    /// <summary>Fastest rhythm that walks.</summary>
    public static readonly CompareMeasure Fastest = new("walk_to_per_s", "1/s", Better.More, Humans.Tempo);

    /// <summary>Fastest rhythm that walks and that the wrist keeps up.</summary>
    public static readonly CompareMeasure KeptUp = new("walk_kept_up_to_per_s", "1/s", Better.More, Humans.Tempo);

    /// <summary>Width of the walk at the set-up's own rhythm; 0 where it does not walk.</summary>
    public static readonly CompareMeasure Width = new("walk_width_m", "m", Better.More, Humans.Eye);

    /// <summary>Pull at the rod tip.</summary>
    public static readonly CompareMeasure Pull = new("tip_force_peak_N", "N", Better.Less, Humans.Torque);

    /// <summary>Wrist torque.</summary>
    public static readonly CompareMeasure Wrist = new("wrist_torque_rms_Nm", "N m", Better.Less, Humans.Torque);

    /// <summary>Line drag, felt as part of the pull.</summary>
    public static readonly CompareMeasure LineDrag = new("line_drag_mean_N", "N", Better.Less, Humans.Torque);

    /// <summary>Load on the nose, seen as its dip.</summary>
    public static readonly CompareMeasure NoseLoad = new("nose_down_load_N", "N", Better.Less, Humans.Eye);

    /// <summary>Line won by a turn of the handle with the retrieve's line out.</summary>
    public static readonly CompareMeasure TakeUp = new("take_up_per_turn_m", "m", Better.Neither, Humans.Tempo);

    /// <summary>Turns that gather what the twitches free.</summary>
    public static readonly CompareMeasure Turns = new("handle_turns_needed_per_s", "1/s", Better.Neither, Humans.Tempo);

    /// <summary>What a comfortable turn gathers in a twitch, less what the twitch frees; sensed as slack that piles up where it is negative.</summary>
    public static readonly CompareMeasure SlackBudget = new("slack_budget_per_twitch_m", "m", Better.More, null);

    /// <inheritdoc/>
    public IReadOnlyList<CompareMeasure> Measures { get; } = [Slowest, Fastest, KeptUp, Width, Pull, Wrist, LineDrag, NoseLoad, TakeUp, Turns, SlackBudget];

    /// <inheritdoc/>
    public double Work => 57.0;

    // The search sets mesh, length and starts of its runs itself, as that of cadence; but here turns of the handle are counted.
    private static readonly CadenceSource Rhythms = new(ComparePlan.Coarse);

    private static readonly KeySpec[] OfHandle =
        [ReelKeys.Kind, ReelKeys.Ratio, ReelKeys.SpoolDiameter, ReelKeys.TakeUp, SpoolKeys.SpoolWidth, SpoolKeys.SpoolPacking, SpoolKeys.LineOnSpool];

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario) => OfHandle.Contains(key) || Rhythms.Draws(key, scenario);

    /// <inheritdoc/>
    public Measured Run(IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        ArgumentNullException.ThrowIfNull(plan);
        return new RetrieveMeasured(this, WalkRuns.Run(setUps, plan, progress, stop), plan);
    }
}

/// <summary>Every set-up on the water.</summary>
public sealed class RetrieveMeasured : Measured
{
    internal RetrieveMeasured(RetrieveMeasures set, IReadOnlyList<WalkCase> cases, ComparePlan plan)
        : base(set.Measures, [.. set.Measures.Select(m => (IReadOnlyList<MeasureColumn>)[.. cases.Select(c => Column(m, c, plan))])], _ => plan.People(plan.WalkDraws)) =>
        Cases = cases;

    /// <summary>One per set-up.</summary>
    public IReadOnlyList<WalkCase> Cases { get; }

    // Rows that need a search over rhythm have the draws that were searched.
    private static MeasureColumn Column(CompareMeasure measure, WalkCase c, ComparePlan plan)
    {
        People people = plan.People(plan.WalkDraws);
        bool window = measure == RetrieveMeasures.Slowest || measure == RetrieveMeasures.Fastest || measure == RetrieveMeasures.KeptUp;
        return new(Sample(measure, c.AsItStands, people, -1), [.. c.Draws.Take(window ? c.Searched : c.Draws.Count).Select((d, i) => Sample(measure, d, people, i))]);
    }

    private static MeasureSample Sample(CompareMeasure measure, WalkDraw draw, People people, int index)
    {
        double Person(Human what) => people.Of(what, index);
        if (draw.Window is CadenceWindow window)
        {
            double edge = measure == RetrieveMeasures.Slowest ? window.FromPerS : measure == RetrieveMeasures.Fastest ? window.ToPerS
                : measure == RetrieveMeasures.KeptUp ? Math.Min(window.ToPerS, draw.Rhythms!.Wrist.Likely.ToPerS) : double.NaN;
            if (double.IsFinite(edge))
            {
                // Nobody keeps a rhythm exactly, and the search knows an edge to its own bracket (evenly likely inside it).
                double kept = Person(Humans.Steadiness) * edge, bracket = draw.Rhythms!.Plan.EdgePerS / Math.Sqrt(12.0);
                return MeasureSample.Of(edge, Math.Sqrt((kept * kept) + (bracket * bracket)));
            }
        }

        return draw.Summary is RetrieveSummary summary ? AtOwnRhythm(measure, draw, summary, Person) : MeasureSample.None;
    }

    private static MeasureSample AtOwnRhythm(CompareMeasure measure, WalkDraw draw, RetrieveSummary s, Func<Human, double> person)
    {
        double watched = Math.Sqrt(person(Humans.Twitches)), eye = person(Humans.Sharpness) * draw.Task!.DistanceM;
        double takeUp = HandleTurn.TakeUpM(draw.Setup!.Reel, draw.Setup.Line, draw.Task.DistanceM), handle = person(Humans.Steadiness) / watched;
        double needed = s.HandleTurnsPerS * draw.Setup.Reel.TakeUpPerTurnM / takeUp;
        double budget = (person(Humans.Turns) * takeUp / draw.Task.CadencePerS) - s.AdvancePerTwitchM;

        // The hand feels the line only through a rod that it swings: against all of its torque, as a force at the tip.
        double hand = s.WristTorquePeakNm / draw.Setup.Rod.FreeLengthM;
        return measure switch
        {
            _ when measure == RetrieveMeasures.Width => MeasureSample.Of(draw.Walks ? s.WidthM : 0.0, Root((1.0 - s.Regularity) * s.WidthM / watched, eye)),
            _ when measure == RetrieveMeasures.Pull => new(s.TipForcePeakN, s.TipForcePeakN, hand, 0.0),
            _ when measure == RetrieveMeasures.Wrist => MeasureSample.Of(s.WristTorqueRmsNm),
            _ when measure == RetrieveMeasures.LineDrag => new(s.LineDragMeanN, s.LineDragMeanN, hand, 0.0),
            _ when measure == RetrieveMeasures.NoseLoad => new(s.NoseDownLoadN, s.NoseDipM, s.NoseDipM, eye),
            _ when measure == RetrieveMeasures.TakeUp => MeasureSample.Of(takeUp, handle * takeUp),
            _ when measure == RetrieveMeasures.Turns => MeasureSample.Of(needed, handle * needed),
            _ when measure == RetrieveMeasures.SlackBudget => new(budget, Math.Min(0.0, budget), 0.0, person(Humans.Slack)),
            _ => MeasureSample.None,
        };
    }

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
