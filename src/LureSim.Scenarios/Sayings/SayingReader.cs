using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Sayings;

/// <summary>Reads the file of a saying (docs/sayings.md). Whether commands, figures and keys exist is looked at where they are known.</summary>
public static class SayingReader
{
    private const int MostSides = 12, MostStarts = 9, MostTests = 12, MostPlaces = 12, MostPages = 10_000;

    /// <summary>Reads a text.</summary>
    /// <param name="text">TOML.</param>
    /// <param name="file">Name for messages; without folder and ending the name of the saying.</param>
    /// <param name="directory">Folder that the names of scenario files start from; null for those that come with the program.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>Null where there are faults.</returns>
    public static Saying? Read(string text, string file, string? directory, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(faults);
        var found = new FaultList();
        Saying? saying = null;
        if (TomlTree.Read(text, new(file, 0), found) is Node root)
        {
            saying = Read(new SayingTable(root, "", found, "says", "why", "told", "base", "where", "test"), Path.GetFileNameWithoutExtension(file), found);
        }

        found.ToList().ToList().ForEach(faults.Add);
        return found.Count == 0 ? saying! with { Directory = directory } : null;
    }

    private static Saying Read(SayingTable root, string name, FaultList faults)
    {
        string says = root.Text("says", "the saying in a sentence of your own is due")?.Text ?? "", why = root.Text("why", "a sentence is due: what is compared, and why physics may have a say")?.Text ?? "";
        ToldBy told = Told(root);
        SaidText? own = root.Text("base");
        IReadOnlyList<SayingTable> where = root.Tables("where", "name", "base", "set"), tests = root.Tables("test", "name", "command", "figure", "column", "words", "set", "less", "more", "key", "values", "rods", "claim", "by", "starts");
        Counted(root, "where", where.Count, 0, MostPlaces);
        Counted(root, "test", tests.Count, 1, MostTests);
        SaidText none = new("", root.Place.ToString());
        SayingPlace[] places = where.Count == 0
            ? [new("", own ?? root.Text("base", "the name of a scenario file is due") ?? none, [])]
            : [.. where.Select(w => new SayingPlace(w.Text("name", "the place in a few words is due")?.Text ?? "", w.Text("base") ?? own ?? w.Text("base", "the name of a scenario file is due, here or before the tables") ?? none, w.Overrides("set")))];
        Distinct(where, [.. places.Select(p => p.Name)]);
        SayingTest[] all = [.. tests.Select(t => Test(t, tests.Count > 1))];
        Distinct(tests, [.. all.Select(t => t.Name)]);
        return new(name, says, why, told, places, all);
    }

    private static ToldBy Told(SayingTable root)
    {
        if (root.IsText("told"))
        {
            return new(0, 0, root.Text("told")?.Text ?? "");
        }

        if (root.Table("told", "for", "against") is not SayingTable counts)
        {
            if (!root.Has("told"))
            {
                root.Fault("told", "missing; due are pages that were seen, { for = 8, against = 0 }, or \"common practice, no source\"");
            }

            return new(0, 0, "");
        }

        var told = new ToldBy(counts.Count("for", 0, 0, MostPages), counts.Count("against", 0, 0, MostPages), "");
        if (told.For + told.Against == 0)
        {
            root.Fault("told", "no page at all; write \"common practice, no source\" where nobody counted");
        }

        return told;
    }

    private static SayingTest Test(SayingTable table, bool named)
    {
        SaidText none = new("", table.Place.ToString());
        string name = table.Text("name", named ? "each of several tests needs a name of a few words" : "")?.Text ?? "";
        SaidText command = table.Text("command", "the command whose summary is looked at is due, for example \"retrieve\"") ?? none;
        bool words = table.Has("words");
        if (words && table.Has("figure"))
        {
            table.Fault("figure", "goes with numbers, words with a column of words; one of the two is due");
        }
        else if (!words && table.Has("column"))
        {
            table.Fault("column", "goes with words");
        }

        SaidText figure = words ? table.Text("column") ?? none : table.Text("figure", "a column of the summary is due, or words") ?? none;
        string[] wanted = [.. table.Texts("words").Select(w => w.Text)];
        IReadOnlyList<SayingSide> sides = Sides(table);
        Claim claim = ReadClaim(table, figure.Text, words, sides.Count);
        return new(name, command, figure, wanted, table.Overrides("set"), sides, claim, table.Count("starts", 0, 1, MostStarts));
    }

    private static IReadOnlyList<SayingSide> Sides(SayingTable table)
    {
        bool two = table.Has("less") || table.Has("more"), list = table.Has("key") || table.Has("values"), rods = table.Has("rods");
        if ((two ? 1 : 0) + (list ? 1 : 0) + (rods ? 1 : 0) > 1)
        {
            table.Fault("claim", "less and more, key and values, and rods exclude each other");
            return [];
        }

        if (two)
        {
            return [Side(table, "less"), Side(table, "more")];
        }

        if (!list && !rods)
        {
            return [new("", [])];
        }

        SaidText? key = rods ? null : table.Text("key", "the key whose values are listed is due");
        IReadOnlyList<SaidText> values = table.Texts(rods ? "rods" : "values");
        if (values.Count is < 2 or > MostSides)
        {
            table.Fault(rods ? "rods" : "values", $"{values.Count} values; 2 to {MostSides} are due, from less to more");
        }

        return [.. values.Select(v => rods ? new SayingSide(v.Text, [], v) : new SayingSide(v.Text, [new($"{key?.Text}={v.Text}", v.Place)]))];
    }

    private static SayingSide Side(SayingTable table, string name)
    {
        if (table.Table(name, "name", "set", "rod") is not SayingTable side)
        {
            if (!table.Has(name))
            {
                table.Fault(name, "missing; less and more go together");
            }

            return new(name, []);
        }

        return new(side.Text("name", "the side in a few words is due")?.Text ?? name, side.Overrides("set"), side.Text("rod"));
    }

    private static Claim ReadClaim(SayingTable table, string figure, bool words, int sides)
    {
        SaidText text = table.Text("claim", $"due: {Choices}") ?? new("no difference", table.Place.ToString());
        (QuantityKind kind, double si) = words ? (QuantityKind.Ratio, 1.0) : FigureKind.Of(figure);
        (string Words, ClaimKind Kind) plain = Claim.Plain.FirstOrDefault(p => p.Words == text.Text), limited = Claim.Limits.FirstOrDefault(l => text.Text.StartsWith(l.Words, StringComparison.Ordinal));
        (double share, double value) = Notice(table, kind, si, words || FigureKind.IsShare(figure));
        if (limited.Words is not null)
        {
            if (table.Has("by"))
            {
                table.Fault("by", "goes with claims that compare; this one sets a limit");
            }

            return new(limited.Kind, text, Number(table, "claim", text.Text[limited.Words.Length..], kind, si), share, value, false);
        }

        if (plain.Words is null)
        {
            table.Fault("claim", $"\"{text.Text}\" is none; due: {Choices}");
        }
        else if (sides < 2)
        {
            table.Fault("claim", $"\"{text.Text}\" compares; less and more, or key and values, are due");
        }
        else if (plain.Kind != ClaimKind.NoDifference && (plain.Kind is ClaimKind.Higher or ClaimKind.Lower) != table.Has("less"))
        {
            table.Fault("claim", table.Has("less") ? $"\"{text.Text}\" goes with a list of values; two sides are \"more is higher\", \"more is lower\" or \"no difference\""
                : $"\"{text.Text}\" goes with less and more; a list \"rises\", \"falls\" or shows \"no difference\"");
        }

        return new(plain.Words is null ? ClaimKind.NoDifference : plain.Kind, text, double.NaN, share, value, table.Has("by"));
    }

    private static string Choices => string.Join(", ", Claim.Plain.Select(p => p.Words).Concat(Claim.Limits.Select(l => l.Words + "VALUE")));

    // A share of the first side's value; of shares and words points.
    private static (double Share, double Value) Notice(SayingTable table, QuantityKind kind, double si, bool points)
    {
        if (!table.Has("by"))
        {
            return points ? (double.NaN, Claim.UsualNotice) : (Claim.UsualNotice, double.NaN);
        }

        string text = table.Text("by")?.Text ?? "10 %";
        double value = Number(table, "by", text, text.EndsWith('%') ? QuantityKind.Ratio : kind, text.EndsWith('%') ? 1.0 : si);
        if (value < 0.0)
        {
            table.Fault("by", $"\"{text}\" is below zero; the least difference that is noticed is due");
        }

        return text.EndsWith('%') && !points ? (value, double.NaN) : (double.NaN, value);
    }

    private static double Number(SayingTable table, string name, string text, QuantityKind kind, double si)
    {
        QuantityValue value = Quantity.Read(text, kind);
        if (value.Error is string error)
        {
            table.Fault(name, error);
            return 0.0;
        }

        return value.Si / si;
    }

    private static void Counted(SayingTable root, string name, int count, int least, int most)
    {
        if (count < least || count > most)
        {
            root.Fault(name, count < least ? $"missing; at least one [[{name}]] is due" : $"{count} of them; at most {most}");
        }
    }

    private static void Distinct(IReadOnlyList<SayingTable> tables, string[] names)
    {
        for (int i = 1; i < names.Length; i++)
        {
            if (names[i].Length > 0 && names.Take(i).Contains(names[i]))
            {
                tables[i].Fault("name", $"\"{names[i]}\" is given twice; names tell what came out");
            }
        }
    }
}
