using LureSim.Model.Bend;
using LureSim.Scenarios.Measured;

namespace LureSim.Scenarios.Tests;

/// <summary>Bend tests as people write them.</summary>
public sealed class BendFileTests : IDisposable
{
    private const string Good = """
        what, value
        rod, old one
        length, 7 ft
        clamped, 12 in
        mass, 4 oz
        bounces, 14 with 50 g
        weight, drop, angle
        100 g, 20 cm
        4 oz, 9 in
        200 g, 38 cm, 35
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("bend").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Lines_and_rows_in_any_units()
    {
        BendFile file = Read(Good);
        Assert.Equal("old one", file.Name);
        Assert.Equal(7.0 * 0.3048, file.Test.LengthM, 1e-12);
        Assert.Equal(0.3048, file.Test.ClampedM, 1e-12);
        Assert.Equal(4.0 * 0.028349523125, file.Test.MassKg!.Value, 1e-9);
        Assert.Equal(new BounceReading(1.4, 0.05), Assert.Single(file.Test.Bounces));
        Assert.Equal(3, file.Test.Rows.Count);
        Assert.Equal(0.980665, file.Test.Rows[0].LoadN, 1e-9);
        Assert.Equal(9.0 * 0.0254, file.Test.Rows[1].DropM!.Value, 1e-12);
        Assert.Equal(35.0 * Math.PI / 180.0, file.Test.Rows[2].TipAngleRad!.Value, 1e-12);
        Assert.Null(file.Test.BalanceM);
        Assert.False(file.Test.IsFromLevel);
        Assert.False(file.IsClampGuessed);
        Assert.EndsWith("(8)", file.RowPlaces[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("length,7 ft\nweight g,drop cm\n100,20\n200,38")]
    [InlineData("Weight (g),Drop (cm),Length\n100,20,7 ft\n200,38,7 ft")]
    [InlineData("length;7 ft\r\nweight;drop\r\n100 g;20,0 cm\r\n200 g;38,0 cm\r\n")]
    [InlineData("length\t7 ft\n100 g\t20 cm\n200 g\t38 cm")]
    [InlineData("length,\"7'0\"\"\"\n\"100 g\",\"20 cm\"\n200 g,38 cm,,\n")]
    [InlineData("# from a phone\n\nlength, 7'0\"\n100g,20cm\n200g,38cm")]
    public void Other_ways_to_write_the_same(string text)
    {
        BendFile file = Read(text);
        Assert.Equal(2.1336, file.Test.LengthM, 1e-12);
        Assert.Equal([(0.980665, 0.2), (1.96133, 0.38)], file.Test.Rows.Select(r => (Math.Round(r.LoadN, 9), Math.Round(r.DropM!.Value, 9))));
        Assert.True(file.IsClampGuessed);
    }

    [Theory]
    [InlineData("100 g, 20 cm", "100 g, 20", "b.csv(8): drop: \"20\": it has no unit")]
    [InlineData("100 g, 20 cm", "100 g, 2.2 m", "b.csv(8): drop: 220 cm is more than the 183 cm of rod that are free up to there; it cannot hang so low")]
    [InlineData("200 g, 38 cm, 35", "200 g, 8 cm, 35", "b.csv(10): drop: 8 cm under 200 g is less than 22.9 cm under 113 g at b.csv(9); a heavier weight bends a rod further")]
    [InlineData("length, 7 ft", "lenght, 7 ft", "b.csv(3): \"lenght\" is not known at the start of a line; nearest: length; a weight such as 100 g is due, or one of: rod, length")]
    [InlineData("length, 7 ft", "length", "b.csv(3): length: the value is missing; for example \"length, 7 ft\"")]
    [InlineData("length, 7 ft", "mass, 5 oz", "b.csv(5): mass: said twice, \"5 oz\" and \"4 oz\"; one of them is due")]
    [InlineData("clamped, 12 in", "clamped, 12 ft", "b.csv(4): clamped: \"12 ft\" is out of range")]
    [InlineData("bounces, 14 with 50 g", "bounces, lots", "b.csv(6): bounces: \"lots\": it does not start with a number")]
    [InlineData("100 g, 20 cm", ", 20 cm", "b.csv(8): weight: the weight at the tip is missing in this row; 0 g is the bare rod")]
    [InlineData("100 g, 20 cm", "100 g, 20 cm, 95", "b.csv(8): angle: \"95 deg\" is out of range; allowed: 0 to 90 deg below the level")]
    [InlineData("100 g, 20 cm", "100 g, 20 cm, 20, 5 cm, 7", "b.csv(8): 5 cells in a row of 3 columns")]
    [InlineData("mass, 4 oz", "from, floor", "b.csv(5): from: \"floor\" is not known; level is due")]
    [InlineData("mass, 4 oz", "balance, 8 ft", "b.csv: balance: 244 cm from the butt end lies beyond the tip")]
    public void Faults_are_told_in_one_line_with_their_place(string line, string by, string fault)
    {
        string[] told = [.. Faults(Good.Replace(line, by, StringComparison.Ordinal)).Where(f => f.StartsWith(fault, StringComparison.Ordinal))];
        Assert.True(told.Length == 1, string.Join('\n', Faults(Good.Replace(line, by, StringComparison.Ordinal))));
        Assert.DoesNotContain('\n', told[0]);
    }

    [Fact]
    public void A_test_without_a_length_or_a_drop_is_none()
    {
        Assert.StartsWith("b.csv: length: missing", Assert.Single(Faults("100 g, 20 cm")), StringComparison.Ordinal);
        Assert.StartsWith("b.csv: it holds no drop of the tip under a weight", Assert.Single(Faults("length, 7 ft\n0 g, 0 cm")), StringComparison.Ordinal);
        Assert.Contains("more than 100 rows", Faults("length, 7 ft\n" + string.Concat(Enumerable.Repeat("100 g, 20 cm\n", 101)))[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Drops_that_differ_by_less_than_a_reading_may_fall() =>
        Assert.Equal(3, Read(Good.Replace("200 g, 38 cm", "114 g, 22 cm", StringComparison.Ordinal)).Test.Rows.Count);

    private BendFile Read(string text)
    {
        var faults = new List<ScenarioFault>();
        BendFile? file = Read(text, faults);
        Assert.True(file is not null && faults.Count == 0, string.Join('\n', faults));
        return file;
    }

    private string[] Faults(string text)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(Read(text, faults));
        return [.. faults.Select(f => f.ToString().Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal))];
    }

    private BendFile? Read(string text, List<ScenarioFault> faults)
    {
        string path = Path.Combine(_folder, "b.csv");
        File.WriteAllText(path, text);
        return BendFile.Read(path, faults);
    }
}
