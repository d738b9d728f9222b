using LureSim.Model;
using LureSim.Model.Margin;
using LureSim.Studies.Design;

namespace LureSim.Studies.Page;

/// <summary>How the lure of a file floats and what would change it, for its page.</summary>
/// <param name="Report">Design without the hooks that it would carry, or null.</param>
/// <param name="Fault">Why there is none, or null.</param>
internal sealed record PageFloat(DesignReport? Report, string? Fault)
{
    /// <summary>Computes it, on one thread.</summary>
    /// <param name="file">The file whose lure it is.</param>
    /// <param name="withChanges">False leaves out what changes and errors of building do.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static PageFloat Of(PageFile file, bool withChanges, CancellationToken stop)
    {
        try
        {
            DesignReport report = DesignStudy.Afloat(file.Here, new MarginTask(), stop);
            return new(withChanges ? DesignStudy.WithChanges(report, file.Here, threads: 1, stop) : report, null);
        }
        catch (Exception e) when (e is ArgumentException or ModelException)
        {
            // What no single key could tell: a lure that finds no attitude. One that sinks is refused with its file.
            return new(null, e.Message.Split('\n')[0]);
        }
    }
}
