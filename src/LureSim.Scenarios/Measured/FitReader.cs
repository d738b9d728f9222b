using System.Globalization;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>Takes a file of measurements apart, line by line.</summary>
internal sealed class FitReader(string file, List<ScenarioFault> faults)
{
    private static readonly FitWord[] Errors = [FitWord.AngleError, FitWord.PlaceError, FitWord.DriftError, FitWord.PeriodError, FitWord.LossError];
    private static readonly string[] Swings = ["roll", "bob", "nod"];

    // Words of a walk that are conditions, and no readings.
    private static readonly FitWord[] Conditions = [FitWord.Cadence, FitWord.Twitches, FitWord.Distance];

    private readonly Dictionary<FitWord, double> _shared = [];
    private readonly List<FitBlock> _blocks = [];
    private readonly List<string> _units = [];
    private Dictionary<FitWord, double> _settings = [];
    private List<FitRow> _rows = [];
    private (FitWord Word, string Unit)[] _columns = [];
    private FitKind? _kind;
    private string _place = "", _start = "";
    private string? _title, _scenario;
    private int _run = 1, _before;
    private double _time = double.NegativeInfinity;

    /// <summary>Reads a line.</summary>
    /// <param name="cells">Its cells, at least one.</param>
    /// <param name="number">Its number, from 1.</param>
    public void Read(string[] cells, int number)
    {
        _place = string.Create(CultureInfo.InvariantCulture, $"{file}({number})");
        string first = cells[0];
        if (FitWords.Find(first, out string unit) is FitWord word)
        {
            if (IsHeader(cells))
            {
                _columns = [.. cells.Select(c => c.Length == 0 ? (FitWord.Title, "") : (FitWords.Find(c, out string u)!.Value, u))];
            }
            else
            {
                Set(word, cells.Length > 1 ? cells[1] : "", unit, cells);
            }
        }
        else if (first.Length == 0 || char.IsNumber(first[0]) || first[0] is '.' or '-' or '+' || Swings.Contains(first.ToLowerInvariant()))
        {
            Row(cells);
        }
        else
        {
            string near = FitWords.NearestTo(first) is string known ? $"; nearest: {known}" : "";
            Fault("", $"\"{first}\" is not known at the start of a line{near}; a row of numbers is due, or one of: {FitWords.Known(_kind)}");
        }
    }

    /// <summary>All that was read; null after its faults were added.</summary>
    /// <param name="scenario">Scenario file to use, whatever the file says.</param>
    public FitFile? Finish(string? scenario)
    {
        CloseTest();
        if (_scenario is null && scenario is null)
        {
            faults.Add(new(file, "scenario", "missing; a line such as \"scenario, my-lure.toml\" is due (a file beside this one), or the option --scenario"));
            return null;
        }

        if (_blocks.Count == 0)
        {
            faults.Add(new(file, "test", $"it holds no test; a line such as \"test, tow\" and rows below it are due; tests: {FitWords.TestNames}"));
        }

        string used = scenario ?? Path.Combine(Path.GetDirectoryName(file) ?? "", _scenario!);
        return new(_title ?? Path.GetFileNameWithoutExtension(file), used, _shared.TryGetValue(FitWord.Mass, out double mass) ? mass : null, _blocks, FamilyOfFile.Of(_units));
    }

    // Two words or more and nothing else, or one that can only be a column.
    private static bool IsHeader(string[] cells)
    {
        string[] filled = [.. cells.Where(c => c.Length > 0)];
        return filled.Length > 1 && Array.TrueForAll(filled, c => FitWords.Find(c, out _) is FitWord w && FitWords.Of(w).Tests.Length > 0);
    }

    private void Set(FitWord word, string text, string unit, string[] cells)
    {
        if (word == FitWord.Run)
        {
            (_run, _time) = (_run + 1, double.NegativeInfinity);
        }
        else if (text.Length == 0)
        {
            Fault(FitWords.Name(word), $"the value is missing; for example \"{FitWords.Name(word)}, {Example(word)}\"");
        }
        else if (word == FitWord.Test)
        {
            Open(text);
        }
        else if (word is FitWord.Scenario or FitWord.Title)
        {
            Text(word, text);
        }
        else if (FitWords.Of(word).Tests is { Length: > 0 } tests && (_kind is not FitKind kind || !tests.Contains(kind)))
        {
            Fault(FitWords.Name(word), _kind is FitKind k ? $"not a word of the test {FitWords.Name(k)}; it belongs to {Trades(tests)}" : "it stands before the first test; a line such as \"test, tow\" is due first");
        }
        else if (Measure(word, CsvCells.WithUnit(text, unit)) is double si)
        {
            bool shared = word == FitWord.Mass || _kind is null;
            (shared ? _shared : _settings)[word] = si;
            if (!shared && IsReading(word))
            {
                _settings.Remove(word);
                _rows.Add(new(_place, _run, new Dictionary<FitWord, double> { [word] = si }));
            }

            if (cells.Skip(2).Any(c => c.Length > 0))
            {
                Fault(FitWords.Name(word), $"more than one value; \"{FitWords.Name(word)}, {Example(word)}\" is due (the decimal mark is a point where commas stand between cells)");
            }
        }
    }

    // A bowl and a walk counted by eye have lines "what, value" for readings.
    private bool IsReading(FitWord word) => FitWords.Of(word).Tests.Length > 0 && (_kind == FitKind.Bowl || (_kind == FitKind.Walk && !Conditions.Contains(word)));

    private void Open(string name)
    {
        CloseTest();
        if (FitWords.TestOf(name) is not FitKind kind)
        {
            Fault("test", $"\"{name}\" is not known; due: {FitWords.TestNames}");
            return;
        }

        (_kind, _start, _columns, _settings, _rows, _run, _time, _before) = (kind, _place, FitWords.ColumnsOf(kind), [], [], 1, double.NegativeInfinity, faults.Count);
    }

    private void CloseTest()
    {
        if (_kind is not FitKind kind)
        {
            return;
        }

        // A row that was refused was told already.
        if (_rows.Count == 0 && faults.Count == _before)
        {
            faults.Add(new(_start, "test", $"the test {FitWords.Name(kind)} holds no rows"));
        }

        foreach (FitWord error in Errors.Where(e => _shared.ContainsKey(e)))
        {
            _settings.TryAdd(error, _shared[error]);
        }

        var block = new FitBlock(kind, _start, _settings, _rows);
        FitChecks.Run(block, faults);
        _blocks.Add(block);
    }

    private void Text(FitWord word, string text)
    {
        if (PlainText.Fault(text) is string wrong)
        {
            Fault(FitWords.Name(word), wrong);
        }
        else if (word == FitWord.Title)
        {
            _title = text;
        }
        else
        {
            _scenario = text;
        }
    }

    private void Row(string[] cells)
    {
        if (_kind is null)
        {
            Fault("", "a row of numbers before the first test; a line such as \"test, tow\" is due first");
            return;
        }

        var row = new Dictionary<FitWord, double>();
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

            (FitWord word, string unit) = _columns[i];
            if (word == FitWord.Title)
            {
                Fault("", $"\"{cells[i]}\" stands in a column without a name");
                return;
            }

            if (Measure(word, CsvCells.WithUnit(cells[i], unit)) is not double si)
            {
                return;
            }

            row[word] = si;
        }

        if (row.TryGetValue(FitWord.Time, out double time))
        {
            if (time <= _time)
            {
                Fault("time", FormattableString.Invariant($"{time} s after {_time} s; times rise, and a line \"run, 2\" is due before another run"));
                return;
            }

            _time = time;
        }

        if (row.Count > 0)
        {
            _rows.Add(new(_place, _run, row));
        }
    }

    // Null after a fault.
    private double? Measure(FitWord word, string text)
    {
        FitWordRow row = FitWords.Of(word);
        string plain = text.ToLowerInvariant();
        (string Word, double Value)[] words = word switch
        {
            FitWord.Sheer => [("straight", double.NaN)],
            FitWord.Way => [("never", double.PositiveInfinity)],
            FitWord.Hooks => [("on", 1.0), ("off", 0.0), ("yes", 1.0), ("no", 0.0)],
            FitWord.What => [.. Swings.Select((s, i) => (s, (double)i))],
            _ => [],
        };
        int found = Array.FindIndex(words, w => w.Word == plain);
        if (found >= 0)
        {
            return words[found].Value;
        }

        if (word is FitWord.Hooks or FitWord.What)
        {
            Fault(FitWords.Name(word), $"\"{text}\" is not known; {(word == FitWord.Hooks ? "on or off" : row.Allowed)} is due");
            return null;
        }

        QuantityValue value = Quantity.Read(CsvCells.WithUnit(text, row.Bare), row.Kind);
        string? wrong = value.Error ?? (value.Si >= row.Low && value.Si <= row.High ? null : $"\"{text}\" is out of range; allowed: {row.Allowed}");
        if (wrong is not null)
        {
            Fault(FitWords.Name(word), wrong);
            return null;
        }

        _units.Add(value.Unit);
        return value.Si;
    }

    private static string Trades(FitKind[] tests) => string.Join(" and ", tests.Select(FitWords.Name));

    private static string Example(FitWord word) => word switch
    {
        FitWord.Scenario => "my-lure.toml",
        FitWord.Title => "my old walker",
        FitWord.Test => "tow",
        FitWord.Hooks => "off",
        FitWord.Mass => "21.5 g",
        FitWord.Line or FitWord.TowDistance => "3 m",
        FitWord.Hand => "30 cm",
        FitWord.Cadence => "1.5 /s",
        FitWord.Twitches => "12",
        FitWord.Distance => "12 m",
        _ => FitWords.Of(word).Kind switch
        {
            QuantityKind.Length => "3 mm",
            QuantityKind.Angle => "3 deg",
            QuantityKind.Ratio => "2 %",
            QuantityKind.Time => "0.5 s",
            _ => "0.5 m/s",
        },
    };

    private void Fault(string key, string message) => faults.Add(new(_place, key, message));
}
