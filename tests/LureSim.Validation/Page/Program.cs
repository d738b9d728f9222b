namespace LureSim.Validation.Page;

/// <summary>Writes docs/validation.md, or with --check says whether the file on disk is what this build computes, or prints the checks that are named.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        bool check = args is ["--check"];
        if (!check && args.Length > 0)
        {
            return Print(args);
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

    private static int Print(string[] names)
    {
        if (names.Where(n => !PublishedChecks.Methods().ContainsKey(n)).ToArray() is { Length: > 0 } unknown)
        {
            Console.Error.WriteLine($"no check is called {string.Join(", ", unknown)}; usage: dotnet run -c Release --project tests/LureSim.Validation [-- --check | CLASS.METHOD ...]");
            return 2;
        }

        Array.ForEach(names, n => Console.WriteLine(ValidationPage.Entry((Check)PublishedChecks.Methods()[n].Invoke(null, null)!)));
        return 0;
    }

    private static List<Check> AllChecks() =>
        [.. PublishedChecks.Methods().Values.Select(m => (Check)m.Invoke(null, null)!)];

    /// <summary>Folder of the project.</summary>
    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "LureSim.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
