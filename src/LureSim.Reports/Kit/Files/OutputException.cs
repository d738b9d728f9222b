namespace LureSim.Reports.Kit.Files;

/// <summary>Results cannot be written; the message is one line for the person at the terminal.</summary>
public sealed class OutputException : Exception
{
    /// <summary>Creates the error.</summary>
    /// <param name="path">Folder or file.</param>
    /// <param name="cause">What the system said.</param>
    public OutputException(string path, Exception cause)
        : base($"cannot write to '{path}': {FirstLine(cause)}", cause)
    {
    }

    private static string FirstLine(Exception cause) => cause.Message.ReplaceLineEndings("\n").Split('\n')[0];
}
