using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Design;

namespace LureSim.Cli.Design;

/// <summary>What <c>design</c> can be asked for.</summary>
internal sealed class DesignOptions
{
    private const double Degree = Math.PI / 180.0, SteepestDeg = 85.0, HighestM = 0.1, LightestKg = 1e-4, HeaviestKg = 1.0, NarrowestM = 0.005, WidestM = 2.0;
    private const int UsualTries = 90, MostTries = 2000, UsualDraws = 12, MostDraws = 1000, WindowStep = 3, MostStep = 20;

    private readonly Option<string?> _angle = Text("--angle", "Float angle wanted, nose up positive, for example \"12 deg\": where does the weight go?", "angle");
    private readonly Option<string?> _freeboard = Text("--freeboard", "Back amidships over the water wanted, for example \"4 mm\".", "length");
    private readonly Option<string?> _total = Text("--total-mass", "Mass with hooks wanted, for example \"18 g\".", "mass");
    private readonly Option<string?> _keep = Text("--keep", "What stays when the weight becomes heavier: total or body; without it the total, or the body where its material is known or a freeboard is wanted.", "what");
    private readonly Option<string?> _height = Text("--height", "Height of the weight: kept, or lowest, as low as a ball of it fits.", "how");
    private readonly Option<string?> _walk = Text("--walk", "Search for a walk: glide per twitch wanted, for example \"15 cm\".", "length");
    private readonly Option<string?> _rhythm = Text("--rhythm", "Rhythm of that walk, for example \"1.5 /s\"; without it retrieve.cadence.", "rhythm");
    private readonly Option<string?> _tries = Text("--tries", $"Lures that the search tries, 8 to {MostTries}; {UsualTries} without it.", "count");
    private readonly Option<string?> _draws = Text("--draws", $"Draws of the guesses behind each band, 0 to {MostDraws}; {UsualDraws} without it.", "count");
    private readonly Option<string?> _step = Text("--step", $"With --windows: every which place and row is tried, 1 to {MostStep}; {WindowStep} without it.", "count");

    /// <summary>Rhythms that walk.</summary>
    public Option<bool> Rhythms { get; } = new("--rhythms") { Description = "Also which rhythms walk, as cadence finds them." };

    /// <summary>Map.</summary>
    public Option<string?> Map { get; } = new("--map")
    {
        Description = $"Map over two of {string.Join(", ", MapAxis.Names)}, columns first, for example tie,hooks; one name alone goes over the place of the weight: how it floats and whether it comes straight.",
        HelpName = "axes",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>Windows of the map.</summary>
    public Option<bool> Windows { get; } = new("--windows") { Description = "With --map: also which rhythms walk, on a coarser grid; takes minutes." };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_angle, _freeboard, _total, _keep, _height, _walk, _rhythm, _tries, _draws, Rhythms, Map, Windows, _step])
        {
            command.Add(option);
        }

        command.Validators.Add(result =>
        {
            bool map = result.GetResult(Map) is not null, walk = result.GetResult(_walk) is not null;
            string? wrong = map && walk ? "--map and --walk exclude each other"
                : !map && (result.GetValue(Windows) || result.GetResult(_step) is not null) ? "--windows and --step go with --map alone"
                : !walk && (result.GetResult(_rhythm) is not null || result.GetResult(_tries) is not null || result.GetResult(_draws) is not null) ? "--rhythm, --tries and --draws go with --walk alone"
                : walk && (result.GetResult(_freeboard) is not null || result.GetResult(_total) is not null) ? "--walk goes with --angle, but with neither --freeboard nor --total-mass"
                : map && (result.GetResult(_angle) is not null || result.GetResult(_freeboard) is not null || result.GetResult(_total) is not null) ? "--map shows every angle and freeboard: it goes with no wish"
                : null;
            if (wrong is not null)
            {
                result.AddError(wrong);
            }
        });
    }

    /// <summary>How the lure is to float; null where nothing is wished.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public DesignWish? Wish(ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        double? angle = Angle(parsed, faults);
        double? freeboard = Number(parsed, _freeboard, QuantityKind.Length, "mm", -HighestM, HighestM, faults), total = Number(parsed, _total, QuantityKind.Mass, "g", LightestKg, HeaviestKg, faults);
        KeptMass? keeps = Keeps(parsed, faults);
        BallastHeight height = Height(parsed, faults);
        return angle is null && freeboard is null && total is null ? null : new(angle, freeboard, total, keeps, height);
    }

    /// <summary>The walk that is wanted and how it is sought; null where none is.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="ownPerS">Rhythm of the scenario.</param>
    /// <param name="seed">Seed of the scenario.</param>
    /// <param name="faults">Gets every fault.</param>
    public (WalkWish Wish, WalkPlan Plan)? Walk(ParseResult parsed, double ownPerS, ulong seed, ICollection<ScenarioFault> faults)
    {
        var rhythms = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.CadencePerS));
        double? glide = Number(parsed, _walk, QuantityKind.Length, "cm", NarrowestM, WidestM, faults);
        double rhythm = Number(parsed, _rhythm, QuantityKind.Frequency, "/s", rhythms.Low, rhythms.High, faults) ?? ownPerS;
        int tries = Counts.Read(parsed.GetValue(_tries), UsualTries, "--tries", 8, MostTries, faults), draws = Counts.Read(parsed.GetValue(_draws), UsualDraws, "--draws", 0, MostDraws, faults);
        return glide is double g ? (new(g, rhythm, Angle(parsed, faults)), new(tries, Draws: draws, Seed: seed)) : null;
    }

    /// <summary>True where a search is wanted.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    public bool WantsWalk(ParseResult parsed) => parsed.GetValue(_walk) is not null;

    /// <summary>Axes of the map, what stays, how the weight is held, and every which lure is tried for windows.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public (ChangeKind Columns, ChangeKind Rows, KeptMass? Keeps, BallastHeight Height, int Step) MapOf(ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        (ChangeKind columns, ChangeKind rows) = Axes(parsed.GetValue(Map) ?? MapAxis.NameOf(ChangeKind.BallastMass), faults);
        ChangeKind[] axes = [columns, rows];
        if (parsed.GetResult(_keep) is not null && !axes.Contains(ChangeKind.BallastMass))
        {
            faults.Add(new(_keep.Name, "", "the mass of the weight is no axis of this map"));
        }

        if (parsed.GetResult(_height) is not null && !axes.Contains(ChangeKind.BallastMass) && !axes.Contains(ChangeKind.BallastAlong))
        {
            faults.Add(new(_height.Name, "", "neither place nor mass of the weight is an axis of this map"));
        }

        return (columns, rows, Keeps(parsed, faults), Height(parsed, faults), Counts.Read(parsed.GetValue(_step), WindowStep, "--step", 1, MostStep, faults));
    }

    private (ChangeKind Columns, ChangeKind Rows) Axes(string given, ICollection<ScenarioFault> faults)
    {
        string[] names = given.Split(',', StringSplitOptions.TrimEntries);
        ChangeKind?[] kinds = [.. names.Length == 1 ? [ChangeKind.BallastAlong] : Array.Empty<ChangeKind?>(), .. names.Select(MapAxis.KindOf)];
        if (kinds is [ChangeKind columns, ChangeKind rows] && columns != rows)
        {
            return (columns, rows);
        }

        string wrong = kinds.Contains(null) ? "is none of its axes" : kinds.Length > 2 ? "is more than two axes" : "is one axis twice";
        faults.Add(new(Map.Name, "", $"\"{given}\" {wrong}; allowed: two of {string.Join(", ", MapAxis.Names)} with a comma, or one alone beside place"));
        return (ChangeKind.BallastAlong, ChangeKind.BallastMass);
    }

    private double? Angle(ParseResult parsed, ICollection<ScenarioFault> faults) =>
        Number(parsed, _angle, QuantityKind.Angle, "deg", -SteepestDeg * Degree, SteepestDeg * Degree, faults);

    private KeptMass? Keeps(ParseResult parsed, ICollection<ScenarioFault> faults) =>
        Word(parsed.GetValue(_keep), "--keep", [("total", KeptMass.Total), ("body", KeptMass.Body)], faults);

    private BallastHeight Height(ParseResult parsed, ICollection<ScenarioFault> faults) =>
        Word(parsed.GetValue(_height), "--height", [("kept", BallastHeight.Kept), ("lowest", BallastHeight.Lowest)], faults) ?? BallastHeight.Kept;

    private static T? Word<T>(string? given, string option, (string Name, T Value)[] words, ICollection<ScenarioFault> faults)
        where T : struct
    {
        int found = given is null ? -1 : Array.FindIndex(words, w => string.Equals(w.Name, given, StringComparison.OrdinalIgnoreCase));
        if (given is not null && found < 0)
        {
            faults.Add(new(option, "", $"\"{given}\" is none of its words; allowed: {string.Join(" or ", words.Select(w => w.Name))}"));
        }

        return found < 0 ? null : words[found].Value;
    }

    private static double? Number(ParseResult parsed, Option<string?> option, QuantityKind kind, string unit, double low, double high, ICollection<ScenarioFault> faults)
    {
        if (parsed.GetValue(option) is not string text)
        {
            return null;
        }

        QuantityValue read = Quantity.Read(text, kind);
        if (read.Error is not null)
        {
            faults.Add(new(option.Name, "", read.Error));
        }
        else if (!(read.Si >= low && read.Si <= high))
        {
            faults.Add(new(option.Name, "", $"\"{text}\" is out of range; allowed: {Quantity.Show(low, kind, unit)} to {Quantity.Show(high, kind, unit)}"));
        }

        return read.Si;
    }

    private static Option<string?> Text(string name, string description, string help) => new(name) { Description = description, HelpName = help };
}
