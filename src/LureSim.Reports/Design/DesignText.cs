using System.Text;
using LureSim.Model.Margin;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>A design for the terminal.</summary>
public static class DesignText
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Title, float, margin, hooks, tolerance, changes; before them the answer to a wish or a search. Each line ended by a line feed.</summary>
    /// <param name="report">Design.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(DesignReport report, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        Shown shown = notes.Shown;
        var text = new StringBuilder();
        text.Append(report.Title).Append("\n\n");
        if (report.Answer is not null)
        {
            Answer(text, report, report.Answer, shown);
        }

        if (report.Walk is not null)
        {
            Walk(text, report, report.Walk, shown);
        }

        text.AppendWrapped(Floats(report, shown));
        text.AppendWrapped(Tow(report.Own, report.Task, shown));
        if (report.Own.Margin is MarginResult margin)
        {
            text.AppendWrapped(Pull(margin, shown));
        }

        if (report.Rhythms is { } rhythms)
        {
            text.AppendWrapped(rhythms.Windows.Count == 0 ? "No rhythm tried walks." : $"Rhythms that walk: {string.Join(", ", rhythms.Windows.Select(w => $"{Trade.Fixed(w.FromPerS, 2)} to {Trade.Fixed(w.ToPerS, 2)} /s"))}.");
        }

        if (report.Hooks.Count > 0)
        {
            text.Append("\nHooks that it carries, the body as it is\n").Append(DesignTables.Hooks(report.Hooks, shown));
        }

        if (report.Tolerance is { } tolerance)
        {
            text.Append("\nWhat an error of building does\n").Append(DesignTables.Tolerance(tolerance, report.Own, shown)).Append('\n').Append(DesignTables.Worst(tolerance, shown));
        }

        text.Append("\nWhat a change does, the one that moves the walk margin most first\n").Append(DesignTables.Changes(report.Changes, report.Own, shown)).Append('\n');
        text.AppendNotes(notes, "design.json");
        return text.ToString();
    }

    private static void Answer(StringBuilder text, DesignReport report, BallastAnswer answer, Shown shown)
    {
        text.AppendWrapped($"Wanted: {Wish(answer.Wish, shown)}.");
        foreach (DeadEnd end in answer.DeadEnds)
        {
            text.AppendWrapped(DesignWords.DeadEnd(end, shown));
        }

        if (answer.Chosen is not BallastPlace place)
        {
            text.AppendWrapped("No place of the weight gives it.");
            text.Append('\n');
            return;
        }

        var units = new DesignUnits(shown);
        string keeps = answer.Wish.Kept(report.Own.Lure) == KeptMass.Total
            ? $"The total stays: the body without this weight is to weigh {units.MassText(place.BodyKg)}" : $"The body stays; body and weights come to {units.MassText(place.Point.Lure.MassKg)}";
        text.AppendWrapped($"{(answer.IsMet ? "Put" : "Nearest: put")} {units.MassText(place.Weight.MassKg)} {units.Along(place.Weight.XM)} and {units.Up(place.Weight.ZM)}. {keeps}.");
        if (place.SpareM < 0.0)
        {
            text.AppendWrapped($"A ball of it would stick out by {units.LengthText(-place.SpareM)} there: take a slug laid lengthwise, or several smaller weights.");
        }

        if (answer.LeastKg is double least && least != place.Weight.MassKg)
        {
            text.AppendWrapped($"The lightest weight that does it is {units.MassText(least)}.");
        }

        text.Append("\nEvery way found\n").Append(DesignTables.Places(answer, shown));
        Built(text, report, 0, shown);
    }

    private static void Walk(StringBuilder text, DesignReport report, WalkAnswer walk, Shown shown)
    {
        string angle = walk.Wish.TrimRad is double trim ? $", floating at {Trade.Fixed(trim / Degree, 1)} deg" : "";
        text.AppendWrapped($"Wanted: a glide of {shown.Size(walk.Wish.GlideM)} at {Trade.Digits(walk.Wish.RhythmPerS)} /s{angle}. {walk.Tried} lures tried{(walk.IsStopped ? "; stopped before the end, so nothing is checked in full" : "")}.");
        text.Append(DesignTables.Walks(walk, shown));
        if (walk.DeadEnds.Count > 0)
        {
            text.AppendWrapped($"In vain: {string.Join("; ", walk.DeadEnds.Select(d => $"{DesignWords.DeadWalk(d)} ({d.Count})"))}.");
        }

        text.AppendWrapped(walk.Candidates.Count == 0 ? "None walks at this rhythm." : walk.IsMet ? "One of them walks as wide as wanted, within a tenth." : walk.IsStopped ? "" : "None walks as wide as wanted, within a tenth; the nearest are shown.");
        if (walk.Candidates.Count > 0)
        {
            Built(text, report, walk.Candidates[0].Move.HookSteps, shown);
        }
        else
        {
            text.Append('\n');
        }
    }

    private static void Built(StringBuilder text, DesignReport report, int hookSteps, Shown shown)
    {
        if (report.After is not DesignPoint after)
        {
            text.Append('\n');
            return;
        }

        text.Append('\n').Append(DesignTables.BeforeAfter(report.Own, after, shown)).Append("\nInto the table [lure]\n");
        text.Append(DesignPaste.Lines(report.Own.Lure, after.Lure, hookSteps)).Append("\nThe lure as it is\n");
    }

    private static string Wish(DesignWish wish, Shown shown)
    {
        var units = new DesignUnits(shown);
        string?[] parts =
        [
            wish.TrimRad is double trim ? $"{Trade.Fixed(trim / Degree, 1)} deg" : null,
            wish.FreeboardM is double freeboard ? $"{units.LengthText(freeboard)} of freeboard amidships" : null,
            wish.TotalKg is double total ? $"{units.MassText(total)} with hooks" : null,
        ];
        return Trade.And([.. parts.OfType<string>()]);
    }

    private static string Floats(DesignReport report, Shown shown)
    {
        var units = new DesignUnits(shown);
        DesignPoint own = report.Own;
        string lies = own.Word == FloatWord.LiesOver ? "It lies over" : "It floats";
        string rights = report.Rest is { } f ? $" It rights itself up to {Trade.Fixed(f.RightsItselfToDeg, 0)} deg of heel." : "";
        return $"{lies} at {DesignTables.Number(own.TrimDeg, 1)} deg, nose up positive, with {units.LengthText(own.FreeboardM ?? 0.0)} of freeboard amidships and a GM across of "
            + $"{units.LengthText(own.GmM ?? 0.0)}; {units.MassText(own.Trim?.Rest.MassKg ?? 0.0)} with hooks.{rights}";
    }

    private static string Tow(DesignPoint own, MarginTask task, Shown shown)
    {
        if (own.Tow is null || own.SheddingMargin is not double margin)
        {
            return $"Towed straight at {shown.Speed(task.SpeedMS)} it finds no attitude on the water.";
        }

        string chi = Trade.Fixed(own.Lure.SternShedding, 2);
        string critical = own.CriticalShedding is double c ? $"from a side force at the stern of chi {Trade.Fixed(c, 2)} on" : "with no side force that was tried";
        return margin > 0.0
            ? $"On a tight line at {shown.Speed(task.SpeedMS)} it comes straight: {critical}, and {chi} is assumed, {Trade.Fixed(margin, 2)} over it."
            : $"On a tight line at {shown.Speed(task.SpeedMS)} it leaves the straight line, an error growing e-fold in {Trade.Digits(1.0 / Math.Max(own.GrowthPerS ?? 1e-9, 1e-9))} s; it would come straight {critical}, and {chi} is assumed.";
    }

    /// <summary>What one pull does, a sentence.</summary>
    /// <param name="margin">Margin.</param>
    /// <param name="shown">Units.</param>
    internal static string Pull(MarginResult margin, Shown shown) =>
        $"One pull at {Trade.Fixed(margin.Task.AngleRad / Degree, 0)} deg off the line turns it by {Trade.Fixed(margin.Pull.TurnDeg, 0)} deg and lets it glide {shown.Size(margin.Pull.GlideM)} across the line.";
}
