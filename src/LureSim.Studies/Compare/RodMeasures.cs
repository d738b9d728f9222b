using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Rods;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Across;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Compare;

/// <summary>What a rod is in the hand, whatever the lure does: room under its tip, swing weight, tip-heaviness.</summary>
public sealed class RodMeasures : IMeasureSet
{
    /// <summary>Tip over the water at rest.</summary>
    public static readonly CompareMeasure Clearance = new("tip_clearance_m", "m", Better.More, Humans.Eye);

    /// <summary>Tip over the water at the lowest of the stroke.</summary>
    public static readonly CompareMeasure LowClearance = new("tip_clearance_low_m", "m", Better.More, Humans.Eye);

    /// <summary>Moment of inertia about the hand.</summary>
    public static readonly CompareMeasure SwingWeight = new("swing_weight_kg_m2", "kg m2", Better.Less, Humans.Inertia);

    /// <summary>Static torque of the free length, rod as it is held.</summary>
    public static readonly CompareMeasure TipHeaviness = new("tip_heaviness_Nm", "N m", Better.Less, Humans.Weight);

    private static readonly RetrieveSource Retrieves = new();

    /// <inheritdoc/>
    public IReadOnlyList<CompareMeasure> Measures { get; } = [Clearance, LowClearance, SwingWeight, TipHeaviness];

    /// <inheritdoc/>
    public double Work => 0.5;

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Table == RodKeys.Length.Table && RetrieveSource.Enters(key, scenario);
    }

    /// <inheritdoc/>
    public Measured Run(IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        ArgumentNullException.ThrowIfNull(plan);
        var design = new GuessDesign(plan.CastDraws, plan.Seed);
        People people = plan.People(plan.CastDraws);
        bool rods = CompareStudy.RodsDiffer(setUps);
        (int SetUp, int Draw, bool Tested)[] jobs =
        [
            .. Enumerable.Range(0, setUps.Count).SelectMany(s => Enumerable.Range(-1, plan.CastDraws + 1).Select(d => (s, d, false))),
            .. Enumerable.Range(0, rods ? setUps.Count : 0).SelectMany(s => Enumerable.Range(0, plan.CastDraws).Select(d => (s, d, true))),
        ];
        int done = 0;
        MeasureSample[][] found = ParallelRuns.Execute(jobs, One, plan.Threads, () => progress?.Invoke((double)Interlocked.Increment(ref done) / jobs.Length), stop);
        IReadOnlyList<MeasureSample> Draws(int row, int setUp, bool tested) =>
            [.. jobs.Zip(found).Where(j => j.First.SetUp == setUp && j.First.Tested == tested && j.First.Draw >= 0).Select(j => j.Second[row])];
        MeasureSample AsItStands(int row, int setUp) => found[Array.IndexOf(jobs, (setUp, -1, false))][row];
        return new Measured(
            Measures, [.. Measures.Select((_, row) => (IReadOnlyList<MeasureColumn>)[.. setUps.Select((_, s) => new MeasureColumn(AsItStands(row, s), Draws(row, s, false)))])], _ => people,
            !rods ? null : Measures.Select((m, row) => (m, row)).ToDictionary(m => m.m, m => (IReadOnlyList<IReadOnlyList<MeasureSample>>)[.. setUps.Select((_, s) => Draws(m.row, s, true))]));

        MeasureSample[] One((int SetUp, int Draw, bool Tested) job)
        {
            stop.ThrowIfCancellationRequested();
            DrawnSetUp setUp = setUps[job.SetUp].SetUp;
            Scenario? drawn = job.Draw < 0 ? setUp.Here.Scenario : setUp.Draw(design, Retrieves, job.Draw, job.Tested ? ComparePlan.IsOfBendTest : null);
            return drawn is { Retrieve: { } task } ? Sample(drawn.Setup, task.StrokeM, people.Of(Humans.RodAngle, job.Draw)) : [.. Measures.Select(_ => MeasureSample.None)];
        }
    }

    private MeasureSample[] Sample(Setup setup, double strokeM, double angleScatterRad)
    {
        try
        {
            TipClearance tip = TipClearance.Of(setup.Angler, setup.Rod, strokeM);
            RodFeel feel = RodFeel.Of(setup.Rod);
            double held = setup.Rod.FreeLengthM * angleScatterRad;
            return [MeasureSample.Of(tip.RestM, held), MeasureSample.Of(tip.LowM, held), MeasureSample.Of(feel.InertiaKgM2), MeasureSample.Of(feel.TipTorqueNm(setup.Angler.RodElevationRad))];
        }
        catch (ModelException)
        {
            // A drawn rod that its own weight bends down: no value in this draw.
            return [.. Measures.Select(_ => MeasureSample.None)];
        }
    }
}
