using System.Text;
using LureSim.Model.Trim;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Trim;

/// <summary>A lure at rest for the terminal.</summary>
public static class TrimText
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Title, table, sentences, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(string title, TrimResult trim, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(trim);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(title).Append("\n\n").Append(AlignedTable.Text(Rows(trim))).Append('\n');
        foreach (string sentence in (string[])[How(trim), Stands(trim), Dips(trim), Walks(trim)])
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.AppendNotes(notes, "trim.json");
        return text.ToString();
    }

    /// <summary>What the pictures say: how it lies and how surely.</summary>
    /// <param name="trim">Lure at rest.</param>
    public static string Headline(TrimResult trim)
    {
        ArgumentNullException.ThrowIfNull(trim);
        string lies = trim.IsUpright ? "" : $", lying over by {Trade.Fixed(trim.Rest.HeelRad / Degree, 0)} deg";
        return $"Floats {Angle(trim.Rest.TrimRad)}{lies}, {Millimetres(trim.DraftM)} deep";
    }

    private static IEnumerable<TableRow> Rows(TrimResult t) =>
    [
        new("trim", Angle(t.Rest.TrimRad), t.IsUpright ? "no heel" : $"heel {Trade.Fixed(t.Rest.HeelRad / Degree, 1)} deg"),
        Small("draft", t.DraftM),
        Small("freeboard amidships", t.FreeboardM),
        Small("nose over the water", t.Rest.NoseHeightM),
        Small("line tie over the water", t.Rest.TieHeightM),
        Small("GM across", t.Rest.GmTransverseM),
        new("rights itself up to", $"{Trade.Fixed(t.RightsItselfToDeg, 0)} deg", "of heel"),
        new("pull that dips the nose", Grams(t.DippingLoadN), "downward, at the line tie"),
        new("under water", $"{Trade.Fixed(100.0 * t.Rest.DisplacedVolumeM3 / t.Rest.HullVolumeM3, 0)} %", $"of {Trade.Digits(1e6 * t.Rest.HullVolumeM3)} cm3"),
        new("mass with hooks", $"{Trade.Digits(t.Rest.MassKg / 0.028349523125)} oz", $"{Trade.Digits(1000.0 * t.Rest.MassKg)} g"),
        new("centre of gravity", $"{Behind(t.Rest.CentreOfGravityXM)} the middle", $"{Millimetres(-t.Rest.CentreOfGravityZM)} under the axis"),
    ];

    private static string How(TrimResult t) =>
        $"It floats {Angle(t.Rest.TrimRad)}, {Millimetres(t.DraftM)} deep, with the nose {Over(t.Rest.NoseHeightM)} and the line tie {Over(t.Rest.TieHeightM)}.";

    private static string Stands(TrimResult t) => !t.IsUpright
        ? $"It has no upright position: it lies over at {Trade.Fixed(t.Rest.HeelRad / Degree, 0)} deg. Put weight lower."
        : t.RightsItselfToDeg >= 180.0
            ? $"It stands up by itself from any heel (GM {Millimetres(t.Rest.GmTransverseM)})."
            : $"It stands up by itself from heels up to {Trade.Fixed(t.RightsItselfToDeg, 0)} deg (GM {Millimetres(t.Rest.GmTransverseM)}).";

    private static string Dips(TrimResult t) => t.DippingLoadN is double n
        ? $"A downward pull of {Grams(n)} ({Trade.Digits(1000.0 * n)} mN) at the line tie brings the nose to the water; the first gram sinks the tie by {Trade.Digits(9.80665 / t.TieStiffnessNM)} mm."
        : $"The point of its nose lies in the water at rest already; the first gram at the line tie sinks it by {Trade.Digits(9.80665 / t.TieStiffnessNM)} mm.";

    private static string Walks(TrimResult t) => t.IsWithinWalk
        ? "Its walk can be computed with the hull in six degrees of freedom and with the planar one."
        : "Its walk is computed with the hull in six degrees of freedom; the planar one holds for flat floaters only.";

    private static TableRow Small(string name, double m) => new(name, $"{Trade.Digits(Trade.Inches(m))} in", Millimetres(m));

    private static string Angle(double rad) => Math.Abs(rad / Degree) < 0.05 ? "level"
        : $"{Trade.Fixed(Math.Abs(rad) / Degree, 1)} deg {(rad > 0.0 ? "tail-down" : "nose-down")}";

    private static string Over(double m) => $"{Millimetres(Math.Abs(m))} {(m >= 0.0 ? "over" : "under")} the water";

    private static string Behind(double x) => $"{Millimetres(Math.Abs(x))} {(x > 0.0 ? "ahead of" : "behind")}";

    private static string Millimetres(double m) => $"{Trade.Digits(1000.0 * m)} mm";

    private static string Grams(double? n) => n is double load ? $"{Trade.Digits(1000.0 * load / 9.80665)} gram-force" : "-";
}
