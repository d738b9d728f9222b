using System.Globalization;
using System.Text;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Starting;

/// <summary>Writes a scenario for people: small, every guess marked as one, with the words what to measure first.</summary>
/// <param name="title">Title.</param>
/// <param name="units">Units of guessed values.</param>
/// <param name="lure">Lure.</param>
/// <param name="massSaid">Mass as the person said it, or null.</param>
/// <param name="lengthSaid">Length as the person said it, or null.</param>
/// <param name="areHooksSaid">True where the person said the hooks.</param>
/// <param name="tables">The other tables, in the order of the file.</param>
internal sealed class ScenarioText(
    string title, FileUnits units, LureDraft lure, string? massSaid, string? lengthSaid, bool areHooksSaid, IReadOnlyList<TableDraft> tables)
{
    private const int CommentColumn = 40;

    /// <summary>Title.</summary>
    public string Title { get; } = title;

    /// <summary>Lure.</summary>
    public LureDraft Lure { get; } = lure;

    /// <summary>What was guessed.</summary>
    public IEnumerable<StartGuess> Guesses() =>
    [
        .. LureLines().Where(v => v.Why is not null).Select(v => new StartGuess(v.Key.Path, v.Text, v.Why!)),
        .. areHooksSaid ? [] : new[] { new StartGuess(LureKeys.Hooks.Path, HookWords(), "usual for this mass") },
        .. tables.SelectMany(t => t.Values).Where(v => v.Why is not null).Select(v => new StartGuess(v.Key.Path, v.Text, v.Why!)),
    ];

    /// <summary>The file.</summary>
    /// <param name="ballastXM">Where the ballast lies, m.</param>
    /// <param name="floats">How it floats; null while it is not known.</param>
    public string Write(double ballastXM, string? floats)
    {
        var text = new StringBuilder();
        text.Append("# Written by luresim start. What was not said is marked as a guess: change what you know better.\n");
        text.Append("# Measure first: weigh the lure with its hooks, take its length and thickness, and lay it in a glass of water.\n");
        text.Append("title = ").Append(TomlText.Quote(Title)).Append('\n');
        foreach (TableDraft table in tables.Where(t => t.Table != RetrieveKeys.Distance.Table))
        {
            Append(text, table);
        }

        AppendLure(text, ballastXM, floats);
        Append(text, tables.First(t => t.Table == RetrieveKeys.Distance.Table));
        return text.ToString();
    }

    private static void Append(StringBuilder text, TableDraft table)
    {
        if (table.Values.Count == 0 && table.File is null)
        {
            return;
        }

        text.Append("\n[").Append(table.Table).Append("]\n");
        if (table.File is not null)
        {
            text.Append("base = ").Append(TomlText.Quote(table.File)).Append('\n');
        }

        foreach (DraftValue value in table.Values)
        {
            Append(text, value);
        }
    }

    private static void Append(StringBuilder text, DraftValue value) => Append(text, Line(value), (value.Why, value.Key == RodKeys.Power) switch
    {
        (null, true) => "a class, which is a guess: luresim list rods shows what it stands for",
        (null, false) => null,
        _ => $"guess; {Small(value.Key.Meaning.TrimEnd('.'))}",
    });

    private static string Line(DraftValue value) => $"{value.Key.Name} = {TomlText.Quote(value.Text)}";

    private static void Append(StringBuilder text, string line, string? comment)
    {
        text.Append(line);
        if (comment is not null)
        {
            text.Append(' ', Math.Max(1, CommentColumn - line.Length)).Append("# ").Append(comment);
        }

        text.Append('\n');
    }

    private void AppendLure(StringBuilder text, double ballastXM, string? floats)
    {
        text.Append("\n[lure]\n");
        if (floats is not null)
        {
            text.Append("# ").Append(floats).Append("\n# Places: x from the middle of the body toward the nose, z up from its axis.\n");
        }

        foreach (DraftValue value in LureLines())
        {
            Append(text, Line(value), value.Why is null ? null : $"guess; {value.Why}");
        }

        text.Append(CultureInfo.InvariantCulture, $"tie = {{ x = \"{Mm(Lure.TieXM)}\", z = \"{Mm(Lure.TieZM)}\" }}\n");
        Append(text, "ballast = [", "guess; placed so that the lure rests as its kind does");
        string mass = Quantity.Show(Lure.Ballast.MassKg, QuantityKind.Mass, "g", 3);
        text.Append(CultureInfo.InvariantCulture, $"  {{ mass = \"{mass}\", x = \"{Mm(ballastXM)}\", z = \"{Mm(Lure.Ballast.ZM)}\" }},\n]\n");
        Append(text, "hooks = [", areHooksSaid ? null : "guess; usual for this mass");
        foreach (HookDraft hook in Lure.Hooks)
        {
            text.Append("  { ").Append(Hook(hook)).Append(" },\n");
        }

        text.Append("]\n");
    }

    private List<DraftValue> LureLines()
    {
        bool asPart = Lure.Scale == 1.0;
        string from = asPart ? $"as lures/{Lure.Part.Name}" : $"scaled from lures/{Lure.Part.Name}";
        var lines = new List<DraftValue>
        {
            new(LureKeys.Shape, Lure.Shape, null),
            new(LureKeys.Length, lengthSaid ?? units.Text(LureKeys.Length, Lure.LengthM), lengthSaid is null ? from : null),
            new(LureKeys.Diameter, units.Text(LureKeys.Diameter, Lure.DiameterM), from),
        };
        if (!double.IsNaN(Lure.HeightM))
        {
            lines.Add(new(LureKeys.Height, units.Text(LureKeys.Height, Lure.HeightM), from));
        }

        lines.Add(new(LureKeys.MassWithHooks, massSaid ?? units.Text(LureKeys.MassWithHooks, Lure.MassKg), massSaid is null ? from : null));
        return lines;
    }

    private string HookWords()
    {
        HookDraft[] hooks = [.. Lure.Hooks.Where(h => h.IsHook)];
        return string.Create(CultureInfo.InvariantCulture, $"{hooks.Length} {hooks[0].Type}{(hooks.Length > 1 ? "s" : "")} {hooks[0].Size}");
    }

    private static string Hook(HookDraft h) => h.IsHook
        ? $"type = \"{h.Type}\", size = \"{h.Size}\", x = \"{Mm(h.XM)}\", z = \"{Mm(h.ZM)}\""
        : string.Concat(
            $"mass = \"{Quantity.Show(h.MassKg, QuantityKind.Mass, "g", 3)}\", drag_area = \"{Quantity.Show(h.DragAreaM2, QuantityKind.Area, "cm2", 2)}\", ",
            $"density = \"{h.DensityText}\", x = \"{Mm(h.XM)}\", z = \"{Mm(h.ZM)}\"");

    private static string Small(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    // To a tenth of a millimetre; never "-0".
    private static string Mm(double m) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(1000.0 * m, 1) + 0.0:0.#} mm");
}
