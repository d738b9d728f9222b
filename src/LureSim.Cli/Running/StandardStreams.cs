using System.Globalization;

namespace LureSim.Cli.Running;

/// <summary>
/// The streams that the process was given. One that was closed has a number that the next opened file would get, a journal for example:
/// it must not be written to.
/// </summary>
internal static class StandardStreams
{
    private const int Output = 1, Error = 2;

    // Set on every file that .NET opens, and on none that a process was given: O_CLOEXEC of Linux.
    private const long OwnFlag = 0x80000;

    /// <summary>The terminal of this process.</summary>
    public static Terminal Open() => new(
        WasGiven(Output) ? Console.Out : new ClosedWriter(),
        WasGiven(Error) ? Console.Error : new ClosedWriter(),
        WasGiven(Error) && !Console.IsErrorRedirected);

    private static bool WasGiven(int number)
    {
        const string folder = "/proc/self/fdinfo", flags = "flags:";
        if (!Directory.Exists(folder))
        {
            return true;
        }

        try
        {
            string line = File.ReadLines($"{folder}/{number.ToString(CultureInfo.InvariantCulture)}").First(l => l.StartsWith(flags, StringComparison.Ordinal));
            return (Convert.ToInt64(line[flags.Length..].Trim(), 8) & OwnFlag) == 0;
        }
        catch (FileNotFoundException)
        {
            return false;
        }
    }

    private sealed class ClosedWriter : TextWriter
    {
        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public override void Write(char value) => throw new IOException("it is closed");
    }
}
