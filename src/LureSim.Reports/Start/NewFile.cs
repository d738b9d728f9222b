using System.Text;
using LureSim.Reports.Kit.Files;

namespace LureSim.Reports.Start;

/// <summary>Writes one file whole or not at all.</summary>
public static class NewFile
{
    /// <summary>Writes it beside its place, forces it to the disk and moves it there.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="text">What.</param>
    /// <param name="mayReplace">True where a file of that name may go.</param>
    /// <exception cref="OutputException">It cannot be written, or is there already.</exception>
    public static void Write(string path, string text, bool mayReplace)
    {
        ArgumentNullException.ThrowIfNull(path);
        string beside = $"{path}.{Guid.NewGuid():N}.new";
        try
        {
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(Encoding.UTF8.GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, mayReplace);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            Remove(beside);
            throw new OutputException(path, e);
        }
    }

    private static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            // The fault on its way says why nothing could be written there.
        }
    }
}
