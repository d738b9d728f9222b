using System.Diagnostics;
using System.Text;

namespace LureSim.Cli.Tests.Support;

/// <summary>The built program as a process of its own, for what only a process can meet: signals, limits, closed streams. The variable LURESIM_PROGRAM names
/// another build of it, compiled ahead of time for example; then <see cref="Session"/> runs that one, too.</summary>
internal static class BuiltProgram
{
    /// <summary>Another build to test, or null for the one beside the tests.</summary>
    public static string? Other { get; } = Environment.GetEnvironmentVariable("LURESIM_PROGRAM") is { Length: > 0 } path ? Whole(path) : null;

    /// <summary>What a shell types to start it.</summary>
    public static string Line { get; } = Other is string path ? $"'{path}'" : $"dotnet '{Path.Combine(AppContext.BaseDirectory, "luresim.dll")}'";

    /// <summary>Runs a line of a shell to its end.</summary>
    public static Session Shell(string line, string? folder = null) => ToEnd(Start(line, folder));

    /// <summary>Starts a line of a shell.</summary>
    public static Process Start(string line, string? folder = null) => Start(new("bash", ["-c", line]) { WorkingDirectory = folder ?? "" });

    /// <summary>Runs another build to its end; lines of progress, which tell the time, are left out.</summary>
    public static Session Run(string program, string[] args)
    {
        Session session = ToEnd(Start(new ProcessStartInfo(program, args)));
        return session with { Error = string.Concat(session.Error.Split('\n').Where(l => !l.EndsWith(" s left", StringComparison.Ordinal)).Select(l => l + "\n"))[..^1] };
    }

    // Tests run in a folder of their own, where a relative path means another file.
    private static string Whole(string path) => Path.IsPathFullyQualified(path) && File.Exists(path) ? path
        : throw new InvalidOperationException($"LURESIM_PROGRAM wants the whole path of a program, and '{path}' is none");

    private static Process Start(ProcessStartInfo start)
    {
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        (start.StandardOutputEncoding, start.StandardErrorEncoding) = (Encoding.UTF8, Encoding.UTF8);
        return Process.Start(start)!;
    }

    private static Session ToEnd(Process process)
    {
        using (process)
        {
            Task<string> error = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return new(process.ExitCode, output, error.Result);
        }
    }
}
