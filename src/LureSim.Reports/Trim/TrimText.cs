using System.Text;
using LureSim.Model.Trim;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Trim;

/// <summary>A lure at rest for the terminal.</summary>
public static class TrimText
{
    private const double Degree = Math.PI / 180.0;

    // A tenth of an inch: small against every lure, so that the load grows in proportion.
    private const double SunkM = 0.00254;

    /// <summary>Title, table, sentences, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(string title, TrimResult trim, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(trim);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(title).Append("\n\n").Append(AlignedTable.Text(Rows(trim, notes.Shown))).Append('\n');
        foreach (string sentence in (string[])[How(trim, notes.Shown), Stands(trim, notes.Shown), Dips(trim, notes.Shown), Walks(trim)])
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.AppendNotes(notes, "trim.json");
        return text.ToString();
    }

    /// <summary>What the pictures say: how it lies and how surely.</summary>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="shown">Units.</param>
    public static string Headline(TrimResult trim, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(trim);
        ArgumentNullException.ThrowIfNull(shown);
        string lies = trim.IsUpright ? "" : $", lying over by {Trade.Fixed(trim.Rest.HeelRad / Degree, 0)} deg";
        return $"Floats {Angle(trim.Rest.TrimRad)}{lies}, {shown.Size(trim.DraftM)} deep";
    }

    private static IEnumerable<TableRow> Rows(TrimResult t, Shown shown) =>
    [
        new("trim", Angle(t.Rest.TrimRad), t.IsUpright ? "no heel" : $"heel {Trade.Fixed(t.Rest.HeelRad / Degree, 1)} deg"),
        shown.Row("draft", ShownQuantity.Size, t.DraftM),
        shown.Row("freeboard amidships", ShownQuantity.Size, t.FreeboardM),
        shown.Row("nose over the water", ShownQuantity.Size, t.Rest.NoseHeightM),
        shown.Row("line tie over the water", ShownQuantity.Size, t.Rest.TieHeightM),
        shown.Row("GM across", ShownQuantity.Size, t.Rest.GmTransverseM),
        new("rights itself up to", $"{Trade.Fixed(t.RightsItselfToDeg, 0)} deg", "of heel"),
        t.DippingLoadN is double load ? shown.Row("pull that dips the nose", ShownQuantity.Pull, load) : new("pull that dips the nose", "none", "its point is under water at rest"),
        new("under water", $"{Trade.Fixed(100.0 * t.Rest.DisplacedVolumeM3 / t.Rest.HullVolumeM3, 0)} %", $"of {shown.Text(ShownQuantity.Volume, t.Rest.HullVolumeM3)}"),
        shown.Row("mass with hooks", ShownQuantity.Mass, t.Rest.MassKg),
        new("centre of gravity", $"{shown.Size(Math.Abs(t.Rest.CentreOfGravityXM))} {(t.Rest.CentreOfGravityXM > 0.0 ? "ahead of" : "behind")} the middle", Under(t.Rest.CentreOfGravityZM, shown)),
    ];

    private static string Under(double z, Shown shown) => $"{shown.Size(Math.Abs(z))} {(z > 0.0 ? "over" : "under")} the axis";

    private static string How(TrimResult t, Shown shown) =>
        $"It floats {Angle(t.Rest.TrimRad)}, {shown.Size(t.DraftM)} deep, with the nose {Over(t.Rest.NoseHeightM, shown)} and the line tie {Over(t.Rest.TieHeightM, shown)}.";

    /// <summary>How surely it stands up by itself: a sentence or two.</summary>
    /// <param name="t">Lure at rest.</param>
    /// <param name="shown">Units.</param>
    internal static string Stands(TrimResult t, Shown shown) => !t.IsUpright
        ? $"It has no upright position: it lies over at {Trade.Fixed(t.Rest.HeelRad / Degree, 0)} deg. Put weight lower."
        : $"It stands up by itself from {(t.RightsItselfToDeg >= 180.0 ? "any heel" : $"heels up to {Trade.Fixed(t.RightsItselfToDeg, 0)} deg")}; GM, which tells how stiffly, is {shown.Size(t.Rest.GmTransverseM)}.";

    private static string Dips(TrimResult t, Shown shown)
    {
        string sinks = $"to sink the tie by {shown.Size(SunkM)} takes {shown.Pull(SunkM * t.TieStiffnessNM)}";
        return t.DippingLoadN is double n
            ? $"A downward pull of {shown.Pull(n)} at the line tie brings the nose to the water; {sinks}."
            : $"The point of its nose lies in the water at rest already; {sinks}.";
    }

    private static string Walks(TrimResult t) => t.IsWithinWalk
        ? "Its walk can be computed with the hull in six degrees of freedom and with the planar one."
        : "Its walk is computed with the hull in six degrees of freedom; the planar one holds for flat floaters only.";

    /// <summary>An angle of the axis over the water: "2.8 deg tail-down", "level".</summary>
    /// <param name="rad">Trim, nose up positive, rad.</param>
    internal static string Angle(double rad) => Math.Abs(rad / Degree) < 0.05 ? "level"
        : $"{Trade.Fixed(Math.Abs(rad) / Degree, 1)} deg {(rad > 0.0 ? "tail-down" : "nose-down")}";

    private static string Over(double m, Shown shown) => $"{shown.Size(Math.Abs(m))} {(m >= 0.0 ? "over" : "under")} the water";
}
