using LureSim.Model.Lines.Chain;

namespace LureSim.Model.Tests.Lines.Chain;

public sealed class FilmBreakTests
{
    private const double Length = 2.7e-3;

    // The end nodes are not the film's: they stay as they are.
    [Fact]
    public void A_film_lets_go_below_two_capillary_lengths_and_is_whole_again_in_the_air()
    {
        double[] film = Film(1, 1, 1, 1, 1, 1);
        var state = new LineState(5);
        double[] heights = [-9.0, -1.9, -2.1, 0.5, -2.1, -9.0];
        for (int i = 0; i < heights.Length; i++)
        {
            state.Z[i] = heights[i] * Length;
        }

        FilmBreak.Update(film, state, 5, Length);
        Assert.Equal([1, 1, 0, 1, 0, 1], film.Take(6));

        // Drawn up again but still under water, what broke stays broken; over it, it is whole.
        (state.Z[2], state.Z[4]) = (-0.1 * Length, 0.1 * Length);
        FilmBreak.Update(film, state, 5, Length);
        Assert.Equal([1, 1, 0, 1, 1, 1], film.Take(6));
    }

    private static double[] Film(params double[] nodes) => [.. nodes, .. new double[16]];
}
