using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Doubt;

namespace LureSim.Studies.Figures;

/// <summary>A command whose summary can stand in a row of a sweep, get bands, and be compared.</summary>
public interface IFigureSource
{
    /// <summary>Name of the command.</summary>
    public string Name { get; }

    /// <summary>Tables of a scenario that must be whole for it.</summary>
    public Activities Asks { get; }

    /// <summary>Columns that hold words; the first sorts the runs.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>Columns that hold numbers, unit at the end of the name.</summary>
    public IReadOnlyList<string> Numbers { get; }

    /// <summary>True when one run is a study of many, a hundred times as dear as a single one.</summary>
    public bool IsStudy { get; }

    /// <summary>Numbers that people ask for first.</summary>
    public IReadOnlyList<HeadlineFigure> Headlines { get; }

    /// <summary>Whether a key enters this command; one that does not, set or varied, is said so.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public bool Reads(KeySpec key, ScenarioResult scenario);

    /// <summary>Whether a guess is drawn and listed for this command: it enters, and moves the result itself.</summary>
    /// <param name="key">Key of the guess.</param>
    /// <param name="scenario">Valid scenario.</param>
    public bool Draws(KeySpec key, ScenarioResult scenario);

    /// <summary>Runs one scenario on the calling thread. A pure function: same scenario, same bits.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="ModelException">The model cannot finish.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public FigureRow Run(ScenarioResult scenario, CancellationToken stop);
}

/// <summary>A source of one list of figures.</summary>
/// <typeparam name="T">Result.</typeparam>
/// <param name="name">Name of the command.</param>
/// <param name="asks">Tables that must be whole.</param>
/// <param name="words">Columns of words.</param>
/// <param name="figures">Figures of a result.</param>
public abstract class FigureSource<T>(string name, Activities asks, IReadOnlyList<string> words, IReadOnlyList<Figure<T>> figures) : IFigureSource
{
    /// <inheritdoc/>
    public string Name => name;

    /// <inheritdoc/>
    public Activities Asks => asks;

    /// <inheritdoc/>
    public IReadOnlyList<string> Words => words;

    /// <inheritdoc/>
    public IReadOnlyList<string> Numbers { get; } = [.. figures.Select(f => f.Key)];

    /// <inheritdoc/>
    public virtual bool IsStudy => false;

    /// <inheritdoc/>
    public IReadOnlyList<HeadlineFigure> Headlines { get; } =
        [.. figures.Where(f => f.Headline is not null).Select(f => new HeadlineFigure(f.Key, f.Headline!.Words, f.Headline.Unit, f.Headline.Scale))];

    /// <inheritdoc/>
    public abstract bool Reads(KeySpec key, ScenarioResult scenario);

    /// <inheritdoc/>
    public virtual bool Draws(KeySpec key, ScenarioResult scenario) => Reads(key, scenario);

    /// <inheritdoc/>
    public abstract FigureRow Run(ScenarioResult scenario, CancellationToken stop);

    /// <summary>The row of a result.</summary>
    /// <param name="told">Its word in each column.</param>
    /// <param name="result">Result.</param>
    protected FigureRow Row(IReadOnlyList<string> told, T result) => new(null, told, [.. figures.Select(f => f.Of(result))]);
}

/// <summary>Summary of one run.</summary>
/// <param name="Failure">Why there is none, or null.</param>
/// <param name="Words">One per column of words.</param>
/// <param name="Numbers">One per column of numbers.</param>
public sealed record FigureRow(string? Failure, IReadOnlyList<string> Words, IReadOnlyList<double> Numbers)
{
    /// <summary>A run without summary.</summary>
    /// <param name="reason">Why.</param>
    public static FigureRow Failed(string reason) => new(reason, [], []);

    /// <summary>The row of a scenario that says itself why it cannot be run.</summary>
    /// <param name="scenario">With errors.</param>
    public static FigureRow Refused(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Failed(string.Join("; ", scenario.Errors.Select(e => e.Key.Length > 0 ? $"{e.Key}: {e.Message}" : e.Message)));
    }

    /// <summary>Runs one of many: whatever one run in a hundred thousand trips over, the others are worth their row.</summary>
    /// <param name="figures">What to run.</param>
    /// <param name="scenario">Valid or not.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static FigureRow Of(IFigureSource figures, ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(scenario);
        try
        {
            return scenario.IsValid ? figures.Run(scenario, stop) : Refused(scenario);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return Failed(e.Message);
        }
    }
}
