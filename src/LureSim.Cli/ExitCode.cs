namespace LureSim.Cli;

/// <summary>What the process tells the shell.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The input (arguments, scenario) or the output (folder, disk, stream) is at fault.</summary>
    public const int BadInput = 2;

    /// <summary>The model could not finish.</summary>
    public const int NotFinished = 3;

    /// <summary>Stopped by the person: 128 + SIGINT, as shells count.</summary>
    public const int Stopped = 130;
}
