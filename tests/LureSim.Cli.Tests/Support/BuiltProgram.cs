using System.Diagnostics;

namespace LureSim.Cli.Tests.Support;

/// <summary>The built program as a process of its own, for what only a process can meet: signals, limits, closed streams.</summary>
internal static class BuiltProgram
{
    /// <summary>What a shell types to start it.</summary>
    public static string Line { get; } = $"dotnet '{Path.Combine(AppContext.BaseDirectory, "luresim.dll")}'";

    /// <summary>Runs a line of a shell to its end.</summary>
    public static Session Shell(string line, string? folder = null)
    {
        using Process shell = Start(line, folder);
        Task<string> error = shell.StandardError.ReadToEndAsync();
        string output = shell.StandardOutput.ReadToEnd();
        shell.WaitForExit();
        return new(shell.ExitCode, output, error.Result);
    }

    /// <summary>Starts a line of a shell.</summary>
    public static Process Start(string line, string? folder = null) => Process.Start(new ProcessStartInfo("bash", ["-c", line])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        WorkingDirectory = folder ?? "",
    })!;
}
