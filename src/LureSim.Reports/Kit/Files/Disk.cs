using System.Runtime.InteropServices;
using System.Text;

namespace LureSim.Reports.Kit.Files;

/// <summary>What the system must be asked for so that a power cut takes nothing back.</summary>
internal static class Disk
{
    /// <summary>Forces the names in a folder to the disk. A system that cannot do that is left to its own ways.</summary>
    /// <param name="folder">Folder.</param>
    public static void ForceNames(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        // .NET opens no folders, so the three calls are made directly.
        int handle = Open(Encoding.UTF8.GetBytes(folder + '\0'), 0);
        if (handle >= 0)
        {
            _ = Force(handle);
            _ = Close(handle);
        }
    }

    [DllImport("libc", EntryPoint = "open")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open(byte[] path, int readOnly);

    [DllImport("libc", EntryPoint = "fsync")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Force(int handle);

    [DllImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int handle);
}
