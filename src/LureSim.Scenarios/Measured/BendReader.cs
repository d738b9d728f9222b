using System.Globalization;
using LureSim.Model.Bend;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>Takes a bend test apart, line by line.</summary>
internal sealed class BendReader(string file, List<ScenarioFault> faults)
{
    private const double MostLoadN = 100.0, MostBounces = 200.0, CountS = 10.0, QuarterTurn = Math.PI / 2.0;
    private static readonly BendErrors Usual = new();
    private static readonly string[] NoWeight = ["", "none", "no weight", "bare", "0"];

    private readonly Dictionary<BendWord, (string Text, double Si)> _given = [];
    private readonly List<BounceReading> _bounces = [];
    private readonly List<(string Place, BendReading Row)> _rows = [];
    private readonly List<string> _units = [];
    private (BendWord Word, string Unit)[] _columns = [(BendWord.Weight, ""), (BendWord.Drop, ""), (BendWord.Angle, ""), (BendWord.Middle, "")];
    private string _place = "";

    /// <summary>Rows so far.</summary>
    public int Rows => _rows.Count;

    /// <summary>Reads a line.</summary>
    /// <param name="cells">Its cells, at least one.</param>
    /// <param name="number">Its number, from 1.</param>
    public void Read(string[] cells, int number)
    {
        _place = string.Create(CultureInfo.InvariantCulture, $"{file}({number})");
        string first = cells[0];
        if (BendWords.Find(first, out string unit) is BendWord word)
        {
            string[] filled = [.. cells.Where(c => c.Length > 0)];
            if (filled.All(c => BendWords.Find(c, out _) is not null) && (filled.Length > 1 || word >= BendWord.Weight))
            {
                _columns = [.. cells.Select(c => (BendWords.Find(c, out string u) ?? BendWord.Rod, u))];
            }
            else
            {
                Set(word, cells.Length > 1 ? cells[1] : "", unit, cells.Length > 2 ? cells[2] : "");
            }
        }
        else if (first.Length == 0 || char.IsNumber(first[0]) || first[0] is '.' or '-' or '+')
        {
            Row(cells);
        }
        else if (!first.Equals("what", StringComparison.OrdinalIgnoreCase))
        {
            string near = BendWords.NearestTo(first) is string known ? $"; nearest: {known}" : "";
            Fault("", $"\"{first}\" is not known at the start of a line{near}; a weight such as 100 g is due, or one of: {BendWords.Known}");
        }
    }

    /// <summary>The test; null after its faults were added.</summary>
    public BendFile? Finish()
    {
        _place = file;
        if (!_given.TryGetValue(BendWord.Length, out var length))
        {
            Fault("length", "missing; a line with the length of the rod is due, for example \"length, 7 ft\"");
            return null;
        }

        bool guessed = !_given.TryGetValue(BendWord.Clamped, out var clamped);
        var test = new BendTest(
            length.Si, guessed ? RodKeys.Grip.DefaultReading.Si : clamped.Si, [.. _rows.Select(r => r.Row)], IsFromLevel: Value(BendWord.From) == 1.0,
            Value(BendWord.Mass), Value(BendWord.Balance), [.. _bounces], Value(BendWord.Half),
            Usual with
            {
                DropM = Value(BendWord.DropError) ?? Usual.DropM,
                WeightShare = Value(BendWord.WeightError) ?? Usual.WeightShare,
                AngleRad = Value(BendWord.AngleError) ?? Usual.AngleRad,
            });
        string name = _given.TryGetValue(BendWord.Rod, out var rod) ? rod.Text : Path.GetFileNameWithoutExtension(file);
        int before = faults.Count;
        BendChecks.Run(file, test, [.. _rows.Select(r => r.Place)], faults);
        return faults.Count > before ? null : new(name, test, [.. _rows.Select(r => r.Place)], FamilyOfFile.Of(_units), guessed);
    }

    private double? Value(BendWord word) => _given.TryGetValue(word, out var given) ? given.Si : null;

    private void Set(BendWord word, string text, string unit, string more)
    {
        if (word == BendWord.Bounces)
        {
            Bounce(text, more);
            return;
        }

        if (text.Length == 0)
        {
            Fault(BendWords.Name(word), $"the value is missing; for example \"{BendWords.Name(word)}, {Example(word)}\"");
        }
        else if (_given.TryGetValue(word, out var known) && known.Text != text)
        {
            Fault(BendWords.Name(word), $"said twice, \"{known.Text}\" and \"{text}\"; one of them is due");
        }
        else if (Measure(word, CsvCells.WithUnit(text, unit)) is double si)
        {
            _given[word] = (text, si);
        }
    }

    // Null after a fault.
    private double? Measure(BendWord word, string text)
    {
        QuantityValue value = word switch
        {
            BendWord.Rod => new(0.0, PlainText.Fault(text), null, QuantityKind.Text),
            BendWord.Length => ValueReader.ReadText(RodKeys.Length, text),
            BendWord.Clamped => ValueReader.ReadText(RodKeys.Grip, text),
            BendWord.Mass => ValueReader.ReadText(RodKeys.Mass, text),
            BendWord.From => From(text),
            BendWord.Weight => Within(text, QuantityKind.Force, 0.0, MostLoadN, "0 to 10 kg"),
            BendWord.Balance or BendWord.Drop or BendWord.Middle => Within(text, QuantityKind.Length, 0.0, RodKeys.Length.High, "0 to the length of the rod"),
            BendWord.Angle => Within(CsvCells.WithUnit(text, "deg"), QuantityKind.Angle, 0.0, QuarterTurn, "0 to 90 deg below the level"),
            BendWord.DropError => Within(text, QuantityKind.Length, 1e-4, 0.2, "0.1 mm to 20 cm"),
            BendWord.AngleError => Within(CsvCells.WithUnit(text, "deg"), QuantityKind.Angle, 1e-3, 0.6, "0.1 to 30 deg"),
            BendWord.WeightError => Within(text, QuantityKind.Ratio, 1e-4, 0.5, "0.01 to 50 %"),
            _ => Within(text, QuantityKind.Ratio, 0.5, MostBounces, "0.5 to 200"),
        };
        if (value.Error is not null)
        {
            Fault(BendWords.Name(word), value.Error);
        }

        _units.Add(value.Unit);
        return value.Error is null ? value.Si : null;
    }

    private void Row(string[] cells)
    {
        var row = new Dictionary<BendWord, double>();
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i].Length == 0)
            {
                continue;
            }

            if (i >= _columns.Length)
            {
                Fault("", string.Create(CultureInfo.InvariantCulture, $"{cells.Length} cells in a row of {_columns.Length} columns (the decimal mark is a point where commas stand between cells)"));
                return;
            }

            (BendWord word, string unit) = _columns[i];
            if (word < BendWord.Weight)
            {
                Set(word, cells[i], unit, "");
            }
            else if (Measure(word, CsvCells.WithUnit(cells[i], unit)) is double si)
            {
                row[word] = si;
            }
            else
            {
                return;
            }
        }

        double? Of(BendWord word) => row.TryGetValue(word, out double si) ? si : null;
        if (Of(BendWord.Weight) is double load)
        {
            _rows.Add((_place, new(load, Of(BendWord.Drop), Of(BendWord.Angle), Of(BendWord.Middle))));
        }
        else if (row.Count > 0)
        {
            Fault("weight", "the weight at the tip is missing in this row; 0 g is the bare rod");
        }
    }

    // "23 with 50 g", or "23" and "50 g" in the next cell; without a weight the bare rod.
    private void Bounce(string text, string more)
    {
        string[] parts = text.Split(" with ", 2);
        string weight = (parts.Length == 2 ? parts[1] : more).Trim();
        QuantityValue count = Within(parts[0].Trim(), QuantityKind.Ratio, 0.5, MostBounces, "0.5 to 200 in 10 s");
        QuantityValue mass = NoWeight.Contains(weight) ? new(0.0, null, null, QuantityKind.Mass) : Within(weight, QuantityKind.Mass, 0.0, 10.0, "0 to 10 kg");
        if ((count.Error ?? mass.Error) is string wrong)
        {
            Fault(BendWords.Name(BendWord.Bounces), $"{wrong}; for example \"bounces, 14 with 50 g\", counted in 10 s");
        }
        else
        {
            _bounces.Add(new(count.Si / CountS, mass.Si));
        }
    }

    private static QuantityValue From(string text) => text.ToLowerInvariant() switch
    {
        "level" => new(1.0, null, null, QuantityKind.Choice),
        "tip" or "unloaded" or "unloaded tip" or "tip at rest" => new(0.0, null, null, QuantityKind.Choice),
        _ => new(double.NaN, $"\"{text}\" is not known; level is due (drops count from the level of the grip), or tip (from where the bare tip hangs)", null, QuantityKind.Choice),
    };

    private static QuantityValue Within(string text, QuantityKind kind, double low, double high, string allowed)
    {
        QuantityValue value = Quantity.Read(text, kind);
        return value.Error is not null || (value.Si >= low && value.Si <= high) ? value : value with { Error = $"\"{text}\" is out of range; allowed: {allowed}" };
    }

    private static string Example(BendWord word) => word switch
    {
        BendWord.Rod => "my old one",
        BendWord.Length => "7 ft",
        BendWord.Mass => "4.2 oz",
        BendWord.Half => "9",
        BendWord.From => "level",
        BendWord.DropError => "5 mm",
        BendWord.WeightError => "2 %",
        BendWord.AngleError => "3 deg",
        _ => "12 in",
    };

    private void Fault(string key, string message) => faults.Add(new(_place, key, message));
}
