using LureSim.Model.Assembly;

namespace LureSim.Model.Retrieve;

/// <summary>Follows the channels of a run twitch by twitch, and tells when the walk has settled.</summary>
internal sealed class SettleWatch
{
    private readonly double _periodS;
    private readonly double _middle;
    private readonly double _surgeMassKg;
    private readonly double _lengthM;
    private readonly List<TwitchEnd> _ends = [];
    private int _rows;
    private int _from;

    private SettleWatch(RetrieveParts parts, int warmUpTwitches)
    {
        _periodS = parts.Twitch.PeriodS;
        _middle = 0.5 * (warmUpTwitches + Math.Floor((parts.Task.DurationS / _periodS) + 1e-9));
        (_surgeMassKg, _lengthM) = (parts.Hull.M11, parts.Hull.LengthM);
    }

    /// <summary>Whether it has settled.</summary>
    public bool IsSettled { get; private set; }

    /// <summary>A watch for a run that ends when the walk has settled; null for any other, on a steady pull, and where twitches are shorter than
    /// the output step.</summary>
    /// <param name="parts">Parts of the run.</param>
    /// <param name="warmUpTwitches">Twitches that the whole run leaves out at its start.</param>
    public static SettleWatch? Of(RetrieveParts parts, int warmUpTwitches)
    {
        RetrieveTask task = parts.Task;
        return task.EndsWhenSettled && !task.IsTow && task.Solver.OutputStepS < parts.Twitch.PeriodS ? new(parts, warmUpTwitches) : null;
    }

    /// <summary>Called after each recorded row.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="table">Rows so far.</param>
    public void Look(double time, ChannelTable table)
    {
        int to = _rows++;
        double start = _ends.Count * _periodS;
        if (time < start + _periodS - 1e-9)
        {
            return;
        }

        // One row earlier, so that a crossing into the first row is seen.
        int before = Math.Max(0, _from - 1);
        Series rows = table.ToSeries(before);
        int last = to - before - 1;
        _ends.Add(new(TwitchReader.ReadOne(rows, _from - before, last + 1, start), rows["slack_m"][last], rows["take_up_m_s"][last]));
        _from = to;
        IsSettled = WalkSettling.IsSettled(_ends, _middle, _surgeMassKg, _lengthM);
    }
}
