namespace LureSim.Studies.Strike;

/// <summary>Finds the drag window of a strike.</summary>
public static class DragStudy
{
    /// <summary>A loose drag, N: half a pound, which a light pull of the hand moves (a choice).</summary>
    public const double LooseN = 2.2;
}
