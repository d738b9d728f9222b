namespace LureSim.Scenarios.Starting;

/// <summary>What a person typed to have a scenario written: every text as typed, null where nothing was said.</summary>
public sealed record StartRequest
{
    /// <summary>Kind of lure, with its mass or length if they stand there.</summary>
    public string Words { get; init; } = "";

    /// <summary>Mass of the lure as sold, hooks included.</summary>
    public string? Mass { get; init; }

    /// <summary>Length of the lure's body.</summary>
    public string? Length { get; init; }

    /// <summary>Hooks: size, and how many points.</summary>
    public string? Hooks { get; init; }

    /// <summary>Rod: words, the name of a part, or of a file.</summary>
    public string? Rod { get; init; }

    /// <summary>Reel, likewise.</summary>
    public string? Reel { get; init; }

    /// <summary>Main line, likewise.</summary>
    public string? Line { get; init; }

    /// <summary>Leader, likewise; "none" for none.</summary>
    public string? Leader { get; init; }

    /// <summary>Height of the hand, or where the person stands.</summary>
    public string? Height { get; init; }

    /// <summary>Water: fresh or sea, temperature.</summary>
    public string? Water { get; init; }

    /// <summary>Plants where the lure is fished.</summary>
    public string? Cover { get; init; }

    /// <summary>Casting style, effort, skill.</summary>
    public string? Style { get; init; }
}
