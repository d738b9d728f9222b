namespace LureSim.Studies.Fit;

/// <summary>A test of the protocol that could be made next.</summary>
public enum FitAdvice
{
    /// <summary>Tows with hooks.</summary>
    TowOn,

    /// <summary>Tows without.</summary>
    TowOff,

    /// <summary>Pushes filmed from above, with hooks.</summary>
    FilmOn,

    /// <summary>Pushes filmed, without.</summary>
    FilmOff,

    /// <summary>A roll.</summary>
    Roll,

    /// <summary>A bob.</summary>
    Bob,

    /// <summary>A nod.</summary>
    Nod,

    /// <summary>Angle and height of the nose in a bowl.</summary>
    Bowl,
}
