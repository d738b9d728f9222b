namespace LureSim.Reports.Kit.Files;

/// <summary>Results cannot be written; the message is one line for the person at the terminal.</summary>
public sealed class OutputException : Exception
{
    /// <summary>Creates the error.</summary>
    /// <param name="path">Folder, file, or name of a stream.</param>
    /// <param name="cause">What the system said.</param>
    public OutputException(string path, Exception cause)
        : base($"cannot write to '{path}': {FirstLine(cause)}", cause)
    {
    }

    /// <summary>Creates the error from a whole message.</summary>
    /// <param name="message">One line: what cannot be written, why, what to do.</param>
    public OutputException(string message)
        : base(message)
    {
    }

    /// <summary>Whether an exception is the system's refusal rather than a mistake of the program.</summary>
    /// <param name="e">Exception.</param>
    internal static bool IsSystem(Exception e) =>
        e is IOException or UnauthorizedAccessException or NotSupportedException or System.Security.SecurityException || IsTooLong(e);

    // A file that grows past what its file system or its owner's limit allows: .NET blames an argument, in this method. A program compiled ahead of
    // time remembers no methods, but the names in its trace.
    private static bool IsTooLong(Exception e) =>
        e is ArgumentOutOfRangeException { ParamName: "value" } && e.StackTrace?.TrimStart().Split('\n')[0].Contains($".{nameof(RandomAccess)}.", StringComparison.Ordinal) == true;

    // "Access is denied" hides the system's own words one level down.
    private static string FirstLine(Exception cause) => cause.GetBaseException().Message.ReplaceLineEndings("\n").Split('\n')[0];
}
