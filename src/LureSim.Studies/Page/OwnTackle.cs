using System.Globalization;
using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Across;

namespace LureSim.Studies.Page;

/// <summary>Line, leader and rod of a file in the words of the trade.</summary>
public static class OwnTackle
{
    /// <summary>The file's own thing of a group, in words.</summary>
    /// <param name="group">What.</param>
    /// <param name="file">The file.</param>
    public static string Name(ChangeGroup group, PageFile file)
    {
        Setup s = file.Here.Setup!;
        return group switch
        {
            ChangeGroup.Line => Named(file, "line", s.Line),
            ChangeGroup.Leader => s.Leader is LeaderSpec l ? $"{Text(file, "leader.length")} of {Named(file, "leader", l.Line)}" : "no leader",
            _ => Text(file, "rod.length"),
        };
    }

    /// <summary>A value of the file as it is written.</summary>
    /// <param name="file">The file.</param>
    /// <param name="path">Key.</param>
    public static string Text(PageFile file, string path) => OwnValue.Text(file.Own!, path) ?? "";

    // By label where the file says it, else by number, else by diameter.
    private static string Named(PageFile file, string table, LineSpec line)
    {
        string material = line.Material.ToString().ToLowerInvariant();
        string label = Text(file, $"{table}.label"), number = Given(file, $"{table}.number");
        return label.Length > 0 ? $"{Pounds(label)} {material}"
            : number.Length > 0 ? $"{number} {material}"
            : string.Create(CultureInfo.InvariantCulture, $"{1e3 * line.DiameterM:0.##} mm {material}");
    }

    private static string Given(PageFile file, string path) =>
        file.Own!.Values.FirstOrDefault(v => v.Key.Path == path) is { Mark: ValueMark.Given } ? Text(file, path) : "";

    internal static string Pounds(string label) => label.Replace(" lb", "-lb", StringComparison.Ordinal);
}
