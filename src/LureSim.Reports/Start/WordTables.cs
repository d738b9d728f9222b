using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Start;

/// <summary>Words of keys as tables, with what each stands for and the range of the guess; words and numbers come from the keys and the model.</summary>
internal static class WordTables
{
    // The smallest unit of each family, which a column can hold throughout.
    private static readonly ShownUnit Ounce = new Shown(UnitChoice.Trade).Unit(ShownQuantity.Pull, 0.0), Gram = new Shown(UnitChoice.Metric).Unit(ShownQuantity.Pull, 0.0);

    private static readonly ListColumn Word = new("word", "name");

    /// <summary>Power classes of rods.</summary>
    public static ListTable Powers() => new(
        "powers", "Words for the power of a rod: the weight at its tip that bends it by a third of its length (a guess; every maker means something else by them):",
        [Word, new("oz", "load_N"), new("between oz", "low_N"), new("and", "high_N"), new("g", "load_kg")],
        [.. Words(RodKeys.Power).Select(c => Row(c.Name, Ounces(c.Value), Ounces(c.Low), Ounces(c.High), Grams(c.Value)))]);

    /// <summary>Actions of rods.</summary>
    public static ListTable Actions() => new(
        "actions", "Words for the action of a rod: its tip over its butt, in thickness (a guess); the thinner the tip, the more of the bend lies there:",
        [Word, new("tip/butt", "tip_radius_ratio"), new("between", "low"), new("and", "high")],
        [.. Words(RodKeys.Action).Select(c => Row(c.Name, Plain(c.Value), Plain(c.Low), Plain(c.High)))]);

    /// <summary>Casting styles.</summary>
    public static ListTable Styles() => new(
        "styles", "Casting styles (cast.style): what the hands can turn the rod with, at full effort (a guess):",
        [Word, new("torque N m", "torque_Nm"), new("between", "low_Nm"), new("and", "high_Nm")],
        [.. Words(CastKeys.Style).Select(c => Ranged(c.Name, CastingStyles.Of((CastingStyle)(int)c.Value).TorqueNm, 1.0))]);

    /// <summary>Efforts.</summary>
    public static ListTable Efforts() => new(
        "efforts", "Efforts (cast.effort): share of that torque (a guess; full is all there is):",
        [Word, new("share", "share"), new("between", "low"), new("and", "high")],
        [.. Words(CastKeys.Effort).Select(c => double.IsNaN(c.Low) ? Row(c.Name, Plain(c.Value), new("-"), new("-")) : Row(c.Name, Plain(c.Value), Plain(c.Low), Plain(c.High)))]);

    /// <summary>Skills.</summary>
    public static ListTable Skills() => new(
        "skills", "Skills (cast.skill): how far the release is off the best moment, two casts in three (a guess):",
        [Word, new("ms", "release_error_s"), new("between", "low_s"), new("and", "high_s")],
        [.. Words(CastKeys.Skill).Select(c => Ranged(c.Name, HandsSpec.UsualReleaseError((CastingSkill)(int)c.Value), 1000.0))]);

    /// <summary>Water.</summary>
    public static ListTable Water() => new(
        "water", $"Water (water.salinity); a temperature may stand beside it, {Temperature(WaterKeys.Temperature.Low)} to {Temperature(WaterKeys.Temperature.High)}, else {Temperature(WaterKeys.Temperature.Parameter!.Default)}:",
        [Word, new("salt g/kg", "salinity_g_per_kg")],
        [.. Words(WaterKeys.Salinity).Select(c => Row(c.Name, Plain(c.Value)))]);

    /// <summary>Plants.</summary>
    public static ListTable Cover() => new(
        "cover", "Plants (cover.kind): line over them, and what drags the fish out of them (a guess):",
        [Word, new("line m", "line_over_m"), new("grip N", "grip_N"), new("between", "low_N"), new("and", "high_N")],
        [.. Words(CoverKeys.Kind).Select(c => CoverRow(c.Name, CoverSpec.Of((CoverKind)(int)c.Value)))]);

    private static IReadOnlyList<ListCell> CoverRow(string name, CoverSpec cover)
    {
        Ranged grip = Model.Ranged.About(cover.GripN, CoverSpec.Spread);
        return Row(name, Plain(cover.LineOverM), Plain(grip.Value), Plain(grip.Low), Plain(grip.High));
    }

    private static IEnumerable<Choice> Words(KeySpec key) => key.Choices.DistinctBy(c => c.Value);

    private static IReadOnlyList<ListCell> Row(string name, params ListCell[] cells) => [new(name), .. cells];

    private static IReadOnlyList<ListCell> Ranged(string name, Ranged value, double factor) => Row(
        name, new(Trade.Digits(factor * value.Value), value.Value), new(Trade.Digits(factor * value.Low), value.Low), new(Trade.Digits(factor * value.High), value.High));

    private static ListCell Plain(double value) => new(Trade.Digits(value), value);

    private static ListCell Ounces(double n) => new(Ounce.Digits(n), n);

    private static ListCell Grams(double n) => new(Gram.Digits(n), 1e-3 * Gram.Of(n));

    private static string Temperature(double celsius) => Quantity.Show(celsius, QuantityKind.Temperature, "C");
}
