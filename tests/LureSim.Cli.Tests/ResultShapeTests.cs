using System.Reflection;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Studies.Maps;

namespace LureSim.Cli.Tests;

/// <summary>Results are read by many: nobody may change one under another's eyes.</summary>
public sealed class ResultShapeTests
{
    private static readonly string[] Endings =
        ["Result", "Series", "Summary", "Snapshot", "Pose", "Outcome", "Report", "Point", "Row", "Channel", "Sample", "Shape"];

    private static readonly Type[] Mutable = [typeof(List<>), typeof(IList<>), typeof(ICollection<>), typeof(Dictionary<,>), typeof(IDictionary<,>), typeof(SortedList<,>)];

    [Fact]
    public void No_result_shows_an_array_or_a_list_that_can_change()
    {
        Type[] results =
        [
            .. new[] { typeof(RetrieveResult), typeof(MapResult) }.SelectMany(t => t.Assembly.GetExportedTypes())
                .Where(t => !t.IsEnum && Endings.Any(e => t.Name.Split('`')[0].EndsWith(e, StringComparison.Ordinal))),
        ];
        Assert.Contains(typeof(Channel), results);
        Assert.Contains(typeof(Outcome<>), results);
        Assert.True(results.Length > 20, $"{results.Length} types");
        Assert.Empty(results.SelectMany(t => Members(t).Where(m => CanChange(m.Type)).Select(m => $"{t.Name}.{m.Name}")));
    }

    [Theory]
    [InlineData(typeof(double[]), true)]
    [InlineData(typeof(double[,]), true)]
    [InlineData(typeof(List<int>), true)]
    [InlineData(typeof(IReadOnlyList<double[]>), true)]
    [InlineData(typeof(ValueList<double>), false)]
    [InlineData(typeof(IReadOnlyList<IReadOnlyList<string>>), false)]
    public void The_test_above_knows_what_can_change(Type type, bool expected) => Assert.Equal(expected, CanChange(type));

    private static IEnumerable<(string Name, Type Type)> Members(Type type)
    {
        const BindingFlags open = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static;
        return [.. type.GetProperties(open).Select(p => (p.Name, p.PropertyType)), .. type.GetFields(open).Select(f => (f.Name, f.FieldType))];
    }

    private static bool CanChange(Type type) =>
        type.IsArray || (type.IsGenericType && (Mutable.Contains(type.GetGenericTypeDefinition()) || type.GetGenericArguments().Any(CanChange)));
}
