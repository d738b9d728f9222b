using System.Globalization;

namespace LureSim.Validation.Page;

/// <summary>Works out a line of arithmetic as a pencil writes it: + - * / ^ brackets, pi, sqrt, ln, sinh, cosh.</summary>
/// <param name="text">Expression.</param>
internal sealed class Arithmetic(string text)
{
    private static readonly Dictionary<string, Func<double, double>> Functions = new()
    {
        ["sqrt"] = Math.Sqrt,
        ["ln"] = Math.Log,
        ["sinh"] = Math.Sinh,
        ["cosh"] = Math.Cosh,
    };

    private int _at;

    /// <summary>The value.</summary>
    /// <param name="text">Expression.</param>
    /// <exception cref="FormatException">It is none.</exception>
    public static double Of(string text)
    {
        var reader = new Arithmetic(text.Replace(" ", "", StringComparison.Ordinal));
        double value = reader.Sum();
        return reader.Rest.Length == 0 ? value : throw new FormatException($"'{reader.Rest}' left of '{text}'");
    }

    private string Rest => text[_at..];

    private double Sum()
    {
        double value = Product();
        while (true)
        {
            if (Takes('+'))
            {
                value += Product();
            }
            else if (Takes('-'))
            {
                value -= Product();
            }
            else
            {
                return value;
            }
        }
    }

    private double Product()
    {
        double value = Power();
        while (true)
        {
            if (Takes('*'))
            {
                value *= Power();
            }
            else if (Takes('/'))
            {
                value /= Power();
            }
            else
            {
                return value;
            }
        }
    }

    private double Power()
    {
        double value = Atom();
        return Takes('^') ? Math.Pow(value, Power()) : value;
    }

    private double Atom()
    {
        if (Takes('-'))
        {
            return -Atom();
        }

        string word = string.Concat(Rest.TakeWhile(char.IsAsciiLetter));
        _at += word.Length;
        if (word.Length > 0)
        {
            return word == "pi" ? Math.PI : Functions.TryGetValue(word, out Func<double, double>? f) ? f(Bracket()) : throw new FormatException($"'{word}' in '{text}'");
        }

        string digits = string.Concat(Rest.TakeWhile(c => char.IsAsciiDigit(c) || c == '.'));
        _at += digits.Length;
        return digits.Length > 0 ? double.Parse(digits, CultureInfo.InvariantCulture) : Bracket();
    }

    private double Bracket()
    {
        double value = Takes('(') ? Sum() : throw new FormatException($"'(' is missing before '{Rest}' in '{text}'");
        return Takes(')') ? value : throw new FormatException($"')' is missing before '{Rest}' in '{text}'");
    }

    private bool Takes(char c)
    {
        bool there = _at < text.Length && text[_at] == c;
        _at += there ? 1 : 0;
        return there;
    }
}
