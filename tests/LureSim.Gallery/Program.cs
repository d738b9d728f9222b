namespace LureSim.Gallery;

/// <summary>Draws plots/ and writes docs/gallery.md, or with --check says which of them is stale.</summary>
internal static class Program
{
    private const string Usage = "usage: dotnet run -c Release --project tests/LureSim.Gallery [-- --check | --dear | --accept | NAME.png ...]";

    private static int Main(string[] args)
    {
        string root = Root();
        string[] options = [.. args.Where(a => a.StartsWith('-'))], names = [.. args.Except(options)];
        string[] unknown = [.. options.Except(["--check", "--dear", "--accept"]), .. names.Except(Pictures.All.Select(p => p.File))];
        if (unknown.Length > 0 || options.Length > 1)
        {
            Console.Error.WriteLine(unknown.Length > 0 ? $"{string.Join(", ", unknown)}: unknown; {Usage}" : Usage);
            return 2;
        }

        using var workshop = new Workshop(root);
        return options switch
        {
            ["--check"] => Check(root, workshop),
            ["--accept"] => Accept(root, workshop),
            _ => Draw(root, workshop, [.. Pictures.All.Where(p => names.Length > 0 ? names.Contains(p.File) : p.Probe is null || options is ["--dear"])]),
        };
    }

    private static int Draw(string root, Workshop workshop, IReadOnlyList<Picture> pictures)
    {
        var seals = new Seals(root);
        foreach (Picture picture in pictures)
        {
            byte[] drawn = workshop.Draw(picture);
            File.WriteAllBytes(Place(root, picture), drawn);
            if (picture.Probe is not null)
            {
                seals.Put(picture, drawn, workshop);
            }

            Console.WriteLine($"plots/{picture.File}");
        }

        File.WriteAllText(Path.Combine(root, GalleryPage.Place), GalleryPage.Write(Pictures.All));
        Console.WriteLine(GalleryPage.Place);
        return 0;
    }

    // For a change that is known to leave dear pictures as they are.
    private static int Accept(string root, Workshop workshop)
    {
        var seals = new Seals(root);
        foreach (Picture picture in Pictures.All.Where(p => p.Probe is not null))
        {
            seals.Put(picture, File.ReadAllBytes(Place(root, picture)), workshop);
            Console.WriteLine($"sealed as it is: plots/{picture.File}");
        }

        return 0;
    }

    private static int Check(string root, Workshop workshop)
    {
        var seals = new Seals(root);
        var stale = new List<string>();
        foreach (Picture picture in Pictures.All)
        {
            byte[]? stored = File.Exists(Place(root, picture)) ? File.ReadAllBytes(Place(root, picture)) : null;
            bool same = stored is not null
                && (picture.Probe is null ? Sameness.Of(picture.File, stored, workshop.Draw(picture)) : seals.Fits(picture, stored, workshop));
            if (!same)
            {
                stale.Add(picture.Probe is null ? $"plots/{picture.File} is stale" : $"plots/{picture.File} may be stale: what it rests on has changed (-- {picture.File} draws it, which takes minutes)");
            }
        }

        string page = Path.Combine(root, GalleryPage.Place);
        if (!File.Exists(page) || File.ReadAllText(page) != GalleryPage.Write(Pictures.All))
        {
            stale.Add($"{GalleryPage.Place} is stale");
        }

        stale.ForEach(Console.WriteLine);
        Console.WriteLine(stale.Count == 0 ? "plots/ and docs/gallery.md are up to date" : "to draw: dotnet run -c Release --project tests/LureSim.Gallery");
        return stale.Count == 0 ? 0 : 1;
    }

    private static string Place(string root, Picture picture) => Path.Combine(root, "plots", picture.File);

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
