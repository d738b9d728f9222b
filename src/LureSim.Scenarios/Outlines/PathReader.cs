using System.Globalization;

namespace LureSim.Scenarios.Outlines;

/// <summary>Path data of SVG (W3C, SVG 1.1, section 8.3): M L H V C S Q T A Z, absolute and relative, as curves; one list for each piece.</summary>
internal sealed class PathReader
{
    private readonly string _text;
    private readonly List<List<Curve>> _pieces = [];
    private List<Curve> _piece = [];
    private Spot _at, _start, _bend;
    private char _last;
    private int _i;

    private PathReader(string text) => _text = text;

    /// <summary>Reads path data.</summary>
    /// <param name="text">Attribute <c>d</c>.</param>
    /// <param name="pieces">Its pieces; one that draws nothing is left out.</param>
    /// <returns>Null, or what is wrong.</returns>
    public static string? Read(string text, out List<List<Curve>> pieces)
    {
        var reader = new PathReader(text);
        pieces = reader._pieces;
        try
        {
            reader.ReadAll();
            return null;
        }
        catch (FormatException e)
        {
            return string.Create(CultureInfo.InvariantCulture, $"its path data cannot be read at character {reader._i + 1}: {e.Message}");
        }
    }

    private void ReadAll()
    {
        char command = '\0';
        for (SkipBlanks(); _i < _text.Length; SkipBlanks())
        {
            char c = _text[_i];
            if (char.IsAsciiLetter(c))
            {
                command = c;
                _i++;
            }
            else if (command is '\0' or 'Z' or 'z')
            {
                throw new FormatException("a command is due");
            }
            else
            {
                // Further pairs after a move are lines.
                command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
            }

            if (_last == '\0' && command is not ('M' or 'm'))
            {
                throw new FormatException("a path begins with M");
            }

            Draw(command);
            _last = char.ToUpperInvariant(command);
        }

        EndPiece();
    }

    private void Draw(char command)
    {
        Spot origin = char.IsAsciiLetterLower(command) ? _at : default;
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                EndPiece();
                _start = _at = origin + Pair();
                break;
            case 'Z':
                LineTo(_start);
                EndPiece();
                break;
            case 'L':
                LineTo(origin + Pair());
                break;
            case 'H':
                LineTo(new(origin.X + Number(), _at.Y));
                break;
            case 'V':
                LineTo(new(_at.X, origin.Y + Number()));
                break;
            case 'C':
                CurveTo(origin + Pair(), origin + Pair(), origin + Pair());
                break;
            case 'S':
                CurveTo(_last is 'C' or 'S' ? (2.0 * _at) - _bend : _at, origin + Pair(), origin + Pair());
                break;
            case 'Q':
                QuadraticTo(origin + Pair(), origin + Pair());
                break;
            case 'T':
                QuadraticTo(_last is 'Q' or 'T' ? (2.0 * _at) - _bend : _at, origin + Pair());
                break;
            case 'A':
                Arc(new(Number(), Number()), Math.PI / 180.0 * Number(), Flag(), Flag(), origin + Pair());
                break;
            default:
                _i--;
                throw new FormatException($"'{command}' is no command");
        }
    }

    private void EndPiece()
    {
        if (_piece.Count > 0)
        {
            _pieces.Add(_piece);
            _piece = [];
        }
    }

    private void LineTo(Spot to) => Add(Curve.Line(_at, to));

    private void CurveTo(Spot first, Spot second, Spot to)
    {
        Add(new(_at, first, second, to));
        _bend = second;
    }

    private void QuadraticTo(Spot bend, Spot to)
    {
        Add(Curve.Quadratic(_at, bend, to));
        _bend = bend;
    }

    private void Arc(Spot radii, double turned, bool large, bool sweep, Spot to)
    {
        foreach (Curve curve in ArcCurves.Of(_at, radii, turned, large, sweep, to))
        {
            Add(curve);
        }
    }

    private void Add(Curve curve)
    {
        if (curve.A != curve.D || curve.B != curve.A || curve.C != curve.A)
        {
            _piece.Add(curve);
        }

        _at = curve.D;
    }

    private Spot Pair()
    {
        double x = Number();
        return new(x, Number());
    }

    private bool Flag()
    {
        SkipBlanks();
        return _i < _text.Length && _text[_i] is '0' or '1' ? _text[_i++] == '1' : throw new FormatException("0 or 1 is due");
    }

    private double Number()
    {
        SkipBlanks();
        int end = NumberText.End(_text, _i);
        if (!double.TryParse(_text.AsSpan(_i, end - _i), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
        {
            throw new FormatException("a number is due");
        }

        _i = end;
        return number;
    }

    private void SkipBlanks()
    {
        while (_i < _text.Length && (char.IsWhiteSpace(_text[_i]) || _text[_i] == ','))
        {
            _i++;
        }
    }
}

/// <summary>Numbers of SVG, which may stand without anything between them: <c>10-5</c>, <c>.5.5</c>.</summary>
internal static class NumberText
{
    /// <summary>Where the number that begins at i ends.</summary>
    public static int End(string text, int i)
    {
        bool dot = false, exponent = false;
        for (int start = i; i < text.Length; i++)
        {
            char c = text[i];
            bool sign = c is '+' or '-' && (i == start || text[i - 1] is 'e' or 'E');
            if (c is 'e' or 'E' && !exponent && i + 1 < text.Length && (char.IsAsciiDigit(text[i + 1]) || text[i + 1] is '+' or '-'))
            {
                exponent = true;
            }
            else if (c == '.' && !dot && !exponent)
            {
                dot = true;
            }
            else if (!sign && !char.IsAsciiDigit(c))
            {
                break;
            }
        }

        return i;
    }
}
