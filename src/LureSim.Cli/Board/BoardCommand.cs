using System.CommandLine;
using System.Text;
using LureSim.Reports.Board;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Board;

namespace LureSim.Cli.Board;

/// <summary><c>board</c>: the density of a weighed piece, and the slips that would explain a strange one.</summary>
internal static class BoardCommand
{
    private const double OffcutM = 0.1, OffcutTradeM = 4 * 0.0254, ShortestM = 1e-4, LongestM = 20.0, LightestKg = 1e-5, HeaviestKg = 1000.0;

    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new((terminal, _) => Create(terminal));

    private static Command Create(Terminal terminal)
    {
        Option<string> length = Due("--length", "Length: \"36 in\".", "length"), width = Due("--width", "Width: \"3 15/16 in\".", "length");
        Option<string> thickness = Due("--thickness", "Thickness: \"2 in\".", "length"), mass = Due("--mass", "Mass of exactly that piece: \"22.5 oz\".", "mass");
        var material = new Option<string?>("--material") { Description = $"What it is thought to be: {string.Join(", ", BodyMaterials.All.Select(m => m.Name))}.", HelpName = "word" };
        var offcut = new Option<string?>("--offcut") { Description = "Piece to check with: \"4 in\" of the length, or \"100 x 40 x 20 mm\".", HelpName = "size" };
        var json = new Option<bool>("--json") { Description = "Print JSON instead of text." };
        var command = new Command("board", "Turn a measured and weighed board into the density of a body, and question what cannot be.") { length, width, thickness, mass, material, offcut, json };
        command.SetAction(parsed =>
        {
            var faults = new List<string>();
            QuantityValue Read(Option<string> option, QuantityKind kind) => Measure(option.Name, parsed.GetValue(option)!, kind, faults);
            var piece = new BoardPiece(Read(length, QuantityKind.Length), Read(width, QuantityKind.Length), Read(thickness, QuantityKind.Length), Read(mass, QuantityKind.Mass));
            Choice? named = Material(parsed.GetValue(material), faults);
            double[] cut = Offcut(parsed.GetValue(offcut), piece, faults);
            if (faults.Count > 0)
            {
                faults.ForEach(f => terminal.Error.WriteLine($"board: {f}"));
                return ExitCode.BadInput;
            }

            Print(new(piece, named, cut), parsed.GetValue(json), terminal);
            return ExitCode.Done;
        });
        return command;
    }

    private static Option<string> Due(string name, string description, string help) => new(name) { Description = description, HelpName = help, Required = true };

    private static void Print(BoardReport report, bool json, Terminal terminal)
    {
        if (!json)
        {
            terminal.Out.Write(BoardText.Build(report, Shown.Both));
            return;
        }

        using var stream = new MemoryStream();
        BoardText.WriteJson(stream, report);
        terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
    }

    private static QuantityValue Measure(string name, string text, QuantityKind kind, List<string> faults)
    {
        QuantityValue value = Quantity.Read(text, kind);
        (double low, double high) = kind == QuantityKind.Mass ? (LightestKg, HeaviestKg) : (ShortestM, LongestM);
        string allowed = kind == QuantityKind.Mass ? "0.01 g to 1000 kg" : "0.1 mm to 20 m";
        if (value.Error is not null || !(value.Si >= low && value.Si <= high))
        {
            faults.Add($"{name}: {value.Error ?? $"\"{text}\" is out of range; allowed: {allowed}"}");
        }

        return value;
    }

    private static Choice? Material(string? word, List<string> faults)
    {
        Choice? material = word is null ? null : LureBuildKeys.Material.ChoiceOf(word);
        if (word is not null && material is null)
        {
            faults.Add($"--material: \"{word}\" is not known; allowed: {string.Join(", ", BodyMaterials.All.Select(m => m.Name))}");
        }

        return material;
    }

    // One measure is cut off the length; of three that share a unit only the last carries it.
    private static double[] Offcut(string? text, BoardPiece piece, List<string> faults)
    {
        if (text is null)
        {
            double usual = piece.Length.Unit is "in" or "ft" or "yd" ? OffcutTradeM : OffcutM;
            return [Math.Min(usual, piece.Length.Si), piece.Width.Si, piece.Thickness.Si];
        }

        string[] parts = text.Split(['x', 'X', '*', '\u00D7'], StringSplitOptions.TrimEntries);
        if (parts.Length is not (1 or 3))
        {
            faults.Add($"--offcut: \"{text}\" is neither a length nor three measures; for example \"4 in\" or \"100 x 40 x 20 mm\"");
            return [1.0, 1.0, 1.0];
        }

        string unit = new([.. parts[^1].Reverse().TakeWhile(c => !char.IsAsciiDigit(c)).Reverse()]);
        double[] m = [.. parts.Select(p => Measure("--offcut", p.Length > 0 && char.IsAsciiDigit(p[^1]) ? p + unit : p, QuantityKind.Length, faults).Si)];
        return m.Length == 3 ? m : [m[0], piece.Width.Si, piece.Thickness.Si];
    }
}
