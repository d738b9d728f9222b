using System.Runtime.CompilerServices;
using System.Text;

namespace LureSim.Reports.Tests.Support;

/// <summary>Text stored beside the test and reviewed in the diff. LURESIM_ACCEPT=1 writes it anew.</summary>
internal static class Expected
{
    public static void Matches(string file, string actual, [CallerFilePath] string test = "") => Assert.Equal(Stored(file, actual, test), actual);

    /// <summary>What is stored, after it was written anew where that is asked for; empty where there is nothing.</summary>
    public static string Stored(string file, string actual, [CallerFilePath] string test = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(test)!, file);
        if (Environment.GetEnvironmentVariable("LURESIM_ACCEPT") == "1")
        {
            File.WriteAllText(path, actual, new UTF8Encoding(false));
        }

        return File.Exists(path) ? File.ReadAllText(path) : "";
    }

    /// <summary>Names of the files in a folder beside the test, without extension.</summary>
    public static string[] Names(string folder, [CallerFilePath] string test = "") =>
        [.. Directory.GetFiles(Path.Combine(Path.GetDirectoryName(test)!, folder)).Select(f => Path.GetFileNameWithoutExtension(f))];
}
