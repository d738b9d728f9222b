namespace LureSim.Reports.Kit.Files;

/// <summary>
/// Replaces the set of files in a folder by a staged one. The order makes a stop at any moment harmless: the list of the old set goes
/// first, then its files go aside, then the new files come, their list last. So old and new never lie side by side, a set with its list is
/// whole, and who finds an exchange half done can end it.
/// </summary>
internal sealed class SetExchange
{
    private readonly string _folder;
    private readonly string _earlier;
    private readonly Action<string>? _step;
    private string _at;

    /// <summary>An exchange in a folder.</summary>
    /// <param name="folder">Where the set lies.</param>
    /// <param name="staging">Hidden folder inside it.</param>
    /// <param name="step">Told each step before it is taken; for tests.</param>
    public SetExchange(string folder, string staging, Action<string>? step = null)
    {
        (_folder, _at, _step) = (folder, folder, step);
        (_earlier, Coming) = (Path.Combine(staging, "earlier"), Path.Combine(staging, "coming"));
    }

    /// <summary>Where a set lies that is complete and must come.</summary>
    public string Coming { get; }

    /// <summary>True when an exchange was begun and not ended.</summary>
    public bool IsPending => File.Exists(Path.Combine(Coming, SetList.FileName));

    /// <summary>Exchanges the sets, or ends an exchange that was begun.</summary>
    /// <exception cref="OutputException">A file cannot be moved; the old set is put back.</exception>
    public void Complete()
    {
        try
        {
            SetList coming = SetList.Read(Coming) ?? throw new IOException("the list of the staged files is damaged");
            SetAside(coming);
            MoveIn(coming);
            Disk.ForceNames(_folder);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            PutBack();
            throw new OutputException(_at, e);
        }
    }

    private void SetAside(SetList coming)
    {
        Directory.CreateDirectory(_earlier);
        Move(_folder, _earlier, SetList.FileName);
        SetList? old = SetList.Read(_earlier);

        // What is no longer staged has come already, before an earlier process ended.
        foreach ((string name, _) in coming.Files.Where(f => File.Exists(Path.Combine(Coming, f.Name))))
        {
            Move(_folder, _earlier, name);
        }

        // What only the old set has goes too, unless somebody has changed it since.
        foreach ((string name, _) in old?.Files.Where(o => coming.Files.All(c => c.Name != o.Name)) ?? [])
        {
            if (old!.IsAsWritten(_folder, name))
            {
                Move(_folder, _earlier, name);
            }
        }

        Disk.ForceNames(_folder);
    }

    private void MoveIn(SetList coming)
    {
        foreach ((string name, _) in coming.Files)
        {
            if (!Move(Coming, _folder, name) && !coming.IsAsWritten(_folder, name))
            {
                throw new FileNotFoundException("its new content is lost");
            }
        }

        Disk.ForceNames(_folder);
        Move(Coming, _folder, SetList.FileName);
    }

    private bool Move(string from, string to, string name)
    {
        string source = Path.Combine(from, name);
        _at = Path.Combine(_folder, name);
        if (!File.Exists(source))
        {
            return false;
        }

        _step?.Invoke(source);
        File.Move(source, Path.Combine(to, name), overwrite: from == _folder);
        return true;
    }

    private void PutBack()
    {
        try
        {
            SetList? coming = SetList.Read(Coming);
            foreach ((string name, _) in coming?.Files ?? [])
            {
                if (!File.Exists(Path.Combine(Coming, name)) && coming!.IsAsWritten(_folder, name))
                {
                    File.Delete(Path.Combine(_folder, name));
                }
            }

            string[] aside = [.. Directory.EnumerateFiles(_earlier).OrderBy(p => Path.GetFileName(p) == SetList.FileName)];
            foreach (string path in aside)
            {
                File.Move(path, Path.Combine(_folder, Path.GetFileName(path)));
            }

            Directory.Delete(Coming, recursive: true);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            // The next run in this folder finds the exchange half done and tries again.
        }
    }
}
