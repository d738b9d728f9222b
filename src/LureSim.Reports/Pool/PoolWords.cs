using LureSim.Model.Pool;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Pool;

/// <summary>What the measurements say, in sentences for terminal and pictures.</summary>
internal static class PoolWords
{
    private static readonly (TowCourse Course, string Words)[] Courses =
    [
        (TowCourse.Straight, "comes straight"), (TowCourse.Sheers, "sheers to one side"), (TowCourse.Fishtails, "fishtails"),
        (TowCourse.NoseUnder, "has its nose pulled under"), (TowCourse.Dives, "is pulled under"), (TowCourse.RollsOver, "rolls over"),
    ];

    /// <summary>How it follows its line, the worst first: what a headline says.</summary>
    /// <param name="pool">Pool test.</param>
    /// <param name="shown">Units.</param>
    public static string Tow(PoolResult pool, Shown shown)
    {
        TowCourse[] found = [.. pool.Tow.Select(t => t.Course).Distinct().OrderDescending()];
        string range = pool.Tow.Count == 1 ? $"at {shown.Speed(pool.Tow[0].SpeedMS)}" : $"from {shown.Range(ShownQuantity.Speed, pool.Tow[0].SpeedMS, pool.Tow[^1].SpeedMS)}";
        return found.Length == 1
            ? $"{Of(found[0])} {range}{Size(pool, found[0])}"
            : string.Join("; ", found.Select(c => $"{Of(c)} at {Speeds(pool, c, shown)}{Size(pool, c)}"));
    }

    /// <summary>What became of the push.</summary>
    /// <param name="pool">Pool test.</param>
    /// <param name="shown">Units.</param>
    public static string Push(PoolResult pool, Shown shown) => pool.Push.TurnM is double way
        ? $"has turned 45 deg after {shown.Size(way)} and ends {Beside(pool.Push.OffsetM, shown)}"
        : $"never turns 45 deg: it ends {Trade.Fixed(Math.Abs(pool.Push.TurnedDeg), 0)} deg from where it pointed, {Beside(pool.Push.OffsetM, shown)}";

    /// <summary>Whether and how fast it swings.</summary>
    /// <param name="swing">Swing.</param>
    /// <param name="verb">For example <c>rolls</c>.</param>
    public static string Swing(SwingResult swing, string verb) => swing.PeriodS is double period
        ? $"{verb} to and fro in {Trade.Fixed(period, 2)} s and loses {Trade.Fixed(100.0 * swing.LossShare!.Value, 0)} % of the swing each time"
        : "comes back without swinging";

    private static string Of(TowCourse course) => Array.Find(Courses, c => c.Course == course).Words;

    private static string Size(PoolResult pool, TowCourse course)
    {
        TowRow[] rows = [.. pool.Tow.Where(t => t.Course == course)];
        return course switch
        {
            TowCourse.Sheers => $", up to {Trade.Fixed(rows.Max(t => t.SheerDeg), 0)} deg off its line",
            TowCourse.Fishtails => $", up to {Trade.Fixed(rows.Max(t => t.SwingDeg), 0)} deg from side to side",
            _ => "",
        };
    }

    private static string Beside(double m, Shown shown) => Math.Abs(m) < 5e-4 ? "on the line of the push" : $"{shown.Size(Math.Abs(m))} beside the line of the push";

    private static string Speeds(PoolResult pool, TowCourse course, Shown shown) =>
        shown.List(ShownQuantity.Speed, [.. pool.Tow.Where(t => t.Course == course).Select(t => t.SpeedMS)]);
}
