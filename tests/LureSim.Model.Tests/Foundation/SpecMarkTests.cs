using System.Reflection;

namespace LureSim.Model.Tests.Foundation;

/// <summary>The marks that a program cut to what it uses depends on, against what the compiler knows.</summary>
public sealed class SpecMarkTests
{
    private static readonly Type[] Records = [.. typeof(Parameter).Assembly.GetTypes().Where(t => t.GetMethod("<Clone>$") is not null)];

    public static TheoryData<string> Specs() => [.. Records.Where(t => typeof(ISpec).IsAssignableFrom(t)).Select(t => t.FullName!).Order()];

    [Fact]
    public void Every_type_with_a_parameter_is_marked()
    {
        Type[] unmarked = [.. Records.Where(t => Settable(t).Any(p => p.IsDefined(typeof(ParameterAttribute)))).Where(t => !typeof(ISpec).IsAssignableFrom(t))];
        Assert.Empty(unmarked);
        Assert.True(Specs().Count > 15);
    }

    [Theory]
    [MemberData(nameof(Specs))]
    public void A_part_may_be_missing_where_its_type_says_so_and_nowhere_else(string name)
    {
        var nulls = new NullabilityInfoContext();
        foreach (PropertyInfo property in Settable(typeof(Parameter).Assembly.GetType(name)!).Where(p => !p.PropertyType.IsValueType))
        {
            bool may = nulls.Create(property).ReadState != NullabilityState.NotNull;
            Assert.True(may == property.IsDefined(typeof(MayBeMissingAttribute)), $"{name}.{property.Name}");
        }
    }

    [Theory]
    [MemberData(nameof(Specs))]
    public void What_a_specification_holds_is_a_number_a_word_or_marked_itself(string name)
    {
        foreach (Type held in Settable(typeof(Parameter).Assembly.GetType(name)!).Select(p => Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType))
        {
            Type item = held.IsGenericType ? held.GetGenericArguments().Single() : held;
            Assert.True(item.IsPrimitive || item.IsEnum || item == typeof(string) || typeof(ISpec).IsAssignableFrom(item), $"{name} holds {item.Name}");
        }
    }

    private static IEnumerable<PropertyInfo> Settable(Type type) => type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite);
}
