using System.Runtime.CompilerServices;
using System.Text;

namespace LureSim.Reports.Tests.Support;

/// <summary>Text stored beside the test and reviewed in the diff. LURESIM_ACCEPT=1 writes it anew.</summary>
internal static class Expected
{
    public static void Matches(string file, string actual, [CallerFilePath] string test = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(test)!, file);
        if (Environment.GetEnvironmentVariable("LURESIM_ACCEPT") == "1")
        {
            File.WriteAllText(path, actual, new UTF8Encoding(false));
        }

        Assert.Equal(File.ReadAllText(path), actual);
    }
}
