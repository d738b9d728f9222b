namespace LureSim.Validation.Page;

/// <summary>Writes docs/validation.md, or with --check says whether the file on disk is what this build computes.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        bool check = args is ["--check"];
        if (!check && args.Length > 0)
        {
            Console.Error.WriteLine("usage: dotnet run -c Release --project tests/LureSim.Validation [-- --check]");
            return 2;
        }

        string path = Path.Combine(Root(), "docs", "validation.md");
        string page = ValidationPage.Write(AllChecks());
        if (!check)
        {
            File.WriteAllText(path, page);
            Console.WriteLine($"wrote {path}");
            return 0;
        }

        bool same = File.Exists(path) && File.ReadAllText(path) == page;
        Console.WriteLine(same ? "docs/validation.md is up to date" : "docs/validation.md is stale: dotnet run -c Release --project tests/LureSim.Validation");
        return same ? 0 : 1;
    }

    private static List<Check> AllChecks() =>
        [.. PublishedChecks.Methods().Values.Select(m => (Check)m.Invoke(null, null)!)];

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "LureSim.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
