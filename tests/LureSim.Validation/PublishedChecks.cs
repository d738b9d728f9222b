using System.Globalization;
using System.Reflection;

namespace LureSim.Validation;

/// <summary>Runs every method marked <see cref="PublishedCheckAttribute"/>, one test each.</summary>
public sealed class PublishedChecks
{
    /// <summary>All check methods by "Class.Method".</summary>
    public static TheoryData<string> Names()
    {
        var data = new TheoryData<string>();
        foreach (string name in Methods().Keys.Order(StringComparer.Ordinal))
        {
            data.Add(name);
        }

        return data;
    }

    /// <summary>All check methods.</summary>
    public static IReadOnlyDictionary<string, MethodInfo> Methods() => typeof(PublishedChecks).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
        .Where(m => m.GetCustomAttribute<PublishedCheckAttribute>() is not null)
        .ToDictionary(m => $"{m.DeclaringType!.Name}.{m.Name}");

    /// <summary>Runs one check and demands every row.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string name) => Verify((Check)Methods()[name].Invoke(null, null)!);

    /// <summary>Fails with every broken row named.</summary>
    internal static void Verify(Check check)
    {
        ArgumentNullException.ThrowIfNull(check);
        Assert.NotEmpty(check.Rows);
        string[] broken = check.Rows.Where(r => !r.Passes).Select(Describe).ToArray();
        Assert.True(broken.Length == 0, $"{check.Code} {check.Title}: {string.Join("; ", broken)}");
        Assert.True(check.Ladder?.Holds ?? true, $"{check.Code}: {Describe(check.Ladder)}");
    }

    private static string Describe(Ladder? ladder) => ladder is null ? "" : string.Create(
        CultureInfo.InvariantCulture,
        $"errors {string.Join(", ", ladder.Levels.Select(l => l.Error.ToString("G3", CultureInfo.InvariantCulture)))} with {ladder.Parameter}: order {ladder.Order:F2}, at least {ladder.LeastOrder} demanded, falling at every level");

    private static string Describe(Row r) => string.Create(
        CultureInfo.InvariantCulture,
        $"{r.Quantity}: expected {r.Expected:G9}, computed {r.Computed:G9} {r.Unit}, error {r.Error:G3} > {r.Tolerance:G3}");
}
