namespace LureSim.Browser;

/// <summary>The runtime wants an entry; the page calls <see cref="Engine"/>.</summary>
internal static class Program
{
    private static void Main()
    {
    }
}
