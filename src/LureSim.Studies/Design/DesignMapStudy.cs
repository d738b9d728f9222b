using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>Makes maps over two things that a builder can change. Every cell stands by itself, so it has the bits of a single run.</summary>
public static class DesignMapStudy
{
    // Six rhythms, 0.7 to 3.5 a second, in even ratios of 1.38; one start each, the nose to either side in turn.
    private const int Rhythms = 6;
    private const double SlowestPerS = 0.7, FastestPerS = 3.5;

    /// <summary>Floats and tows.</summary>
    /// <param name="lure">Lure as it is.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Map.</param>
    /// <param name="tow">Straight tow.</param>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">A number of the task makes no sense.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignMap Run(LureSpec lure, WaterState water, MapTask task, MarginTask tow, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check(lure);
        double[] columns = task.Columns.Values(), rows = task.Rows.Values();
        int done = 0;
        (double Column, double Row)[] places = [.. rows.SelectMany(r => columns.Select(c => (c, r)))];
        MapCell[] cells = ParallelRuns.Execute(places, Cell, task.Threads, () => progress?.Invoke(++done / (double)places.Length), stop);
        return new(lure, task, tow, columns, rows, cells);

        MapCell Cell((double Column, double Row) at)
        {
            stop.ThrowIfCancellationRequested();
            try
            {
                return MapCell.Of(DesignPoint.Of(task.At(lure, at.Column, at.Row), water, tow));
            }
            catch (ArgumentException e)
            {
                // A body out of its ranges cannot be weighed.
                return MapCell.Refused(e.Message.Split('\n')[0]);
            }
        }
    }

    /// <summary>Adds walk windows at every so many columns and rows, at every one where sizes of hooks vary: settled runs of a few rhythms, one start each.</summary>
    /// <param name="map">Map.</param>
    /// <param name="setup">Set-up; its lure does not enter.</param>
    /// <param name="retrieve">Retrieve, twitched.</param>
    /// <param name="step">Every which column and row, from half of it on.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">The retrieve is a steady pull, or the step is none.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignMap WithWindows(
        DesignMap map, Setup setup, RetrieveTask retrieve, int step, Func<Setup, RetrieveTask, StationaryOutcome>? run, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(retrieve);
        ArgumentOutOfRangeException.ThrowIfLessThan(step, 1);
        if (retrieve.IsTow)
        {
            throw new ArgumentException("a steady pull (retrieve.stroke = 0) has no rhythm", nameof(retrieve));
        }

        run ??= (s, t) => StationaryOutcome.Of(s, t, stop);
        double[] rhythms = [.. Enumerable.Range(0, Rhythms).Select(i => Math.Round(SlowestPerS * Math.Pow(FastestPerS / SlowestPerS, i / (Rhythms - 1.0)), 2))];
        int along = Step(map.Task.Columns), down = Step(map.Task.Rows);
        (int Column, int Row)[] places = [.. Places(map.Rows.Count, down).SelectMany(r => Places(map.Columns.Count, along).Select(c => (c, r)))];
        (int Column, int Row, int Rhythm)[] runs =
            [.. places.Where(p => map.At(p.Column, p.Row).Word == FloatWord.Floats).SelectMany(p => Enumerable.Range(0, Rhythms).Select(k => (p.Column, p.Row, k)))];
        WalkStart[] starts = WalkStart.Spread(3);
        int done = 0;
        StationaryOutcome[] outcomes = ParallelRuns.Execute(runs, One, map.Task.Threads, () => progress?.Invoke(++done / (double)runs.Length), stop);
        ILookup<(int, int), StationaryOutcome> found = runs.Zip(outcomes).ToLookup(p => (p.First.Column, p.First.Row), p => p.Second);
        return map with { Windows = new(along, down, rhythms, [.. places.Select(p => Window(map, p.Column, p.Row, rhythms, [.. found[p]]))]) };

        int Step(MapAxis axis) => axis.IsCounted ? 1 : Math.Min(step, axis.Count);

        StationaryOutcome One((int Column, int Row, int Rhythm) at)
        {
            LureSpec lure = map.Task.At(map.Lure, map.Columns[at.Column], map.Rows[at.Row]);
            return run(setup with { Lure = lure }, StationaryRun.Make(retrieve, rhythms[at.Rhythm], starts[at.Rhythm % 2 == 0 ? 0 : 2], new StationaryPlan()));
        }
    }

    private static IEnumerable<int> Places(int count, int step) => Enumerable.Range(0, count).Where(i => i % step == step / 2);

    private static WindowCell Window(DesignMap map, int column, int row, double[] rhythms, StationaryOutcome[] outcomes)
    {
        MapCell cell = map.At(column, row);
        if (outcomes.Length == 0)
        {
            return new(column, row, double.NaN, double.NaN, double.NaN, [], cell.Reason ?? "it lies over");
        }

        (int from, int length) = Longest([.. outcomes.Select(o => o.Pattern == WalkPattern.Alternating)]);
        double widest = outcomes.Where(o => o.Pattern == WalkPattern.Alternating).Select(o => o.Summary!.GlideWidthM).DefaultIfEmpty(double.NaN).Max();
        return length == 0
            ? new(column, row, double.NaN, double.NaN, double.NaN, [.. outcomes.Select(o => o.Pattern)])
            : new(column, row, rhythms[from], rhythms[from + length - 1], widest, [.. outcomes.Select(o => o.Pattern)]);
    }

    // First and length of the longest stretch; of equals the slower one.
    private static (int From, int Length) Longest(bool[] walks)
    {
        (int from, int length) = (0, 0);
        for (int i = 0; i < walks.Length; i++)
        {
            int n = walks.Skip(i).TakeWhile(w => w).Count();
            (from, length) = n > length ? (i, n) : (from, length);
        }

        return (from, length);
    }
}
