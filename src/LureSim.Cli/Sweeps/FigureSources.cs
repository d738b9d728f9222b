using LureSim.Studies.Cadence;

namespace LureSim.Cli.Sweeps;

/// <summary>Every command whose summary a sweep can tabulate. A new one is a class and one line here.</summary>
public static class FigureSources
{
    /// <summary>All; the first is the default.</summary>
    public static IReadOnlyList<IFigureSource> All { get; } = [new RetrieveFigures(), new CadenceFigures(new CadencePlan()), new CastFigures()];

    /// <summary>The one of a name, or null.</summary>
    /// <param name="name">Name of a command.</param>
    public static IFigureSource? Find(string name) => All.FirstOrDefault(s => s.Name == name);
}
