using System.Buffers;

namespace LureSim.Reports.Page;

/// <summary>A word of a command as it is typed in a shell.</summary>
public static class ShellWord
{
    private static readonly SearchValues<char> Plain = SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_./=:+,@%-");
    private static readonly SearchValues<char> Live = SearchValues.Create("\"\\$`!");

    /// <summary>The word, in double quotes where it needs them, so that it can be copied into bash, zsh, fish and PowerShell alike.</summary>
    /// <param name="word">Word.</param>
    public static string Of(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return word.Length > 0 && word.AsSpan().IndexOfAnyExcept(Plain) < 0 ? word
            : word.AsSpan().IndexOfAny(Live) < 0 ? $"\"{word}\""
            : $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";
    }
}
