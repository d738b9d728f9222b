using System.Collections;
using System.Reflection;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Foundation;

/// <summary>The door of the runs: every number of a set-up and of a task, found by reflection, is refused by name outside its range.</summary>
public sealed class ParameterTests
{
    private static readonly LineSpec Line = LineSizing.Resolve(LineMaterial.Nylon, 0.3e-3, null, null, SurfaceFilm.Dry).Spec;

    private static readonly Setup Setup = new(
        "door", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.3, 3.0, 0.06), new ReelSpec().With(Line), Line, new LeaderSpec(Line, 0.4),
        new LureSpec(
            LureShape.Stations, 0.1, 0.02, 0.02, 0.0155, 0.05, 0.0, [new(0.001, 0.0, 0.0)], [new(0.001, 0.0, -0.009, 3e-5, 1.4e-7, 2e-5)],
            [new(-0.05, 0.0, 0.0), new(0.0, 0.01, 0.01), new(0.05, 0.0, 0.0)])
        {
            Flight = new LureFlightSpec(KnownCdAM2: 1e-4),
        });

    public static TheoryData<string> Members() => [.. Numbers(Setup).Concat(Numbers(new RetrieveTask())).Concat(Numbers(new CastTask())).Concat(Numbers(new CrawlTask())).Select(n => n.Name).Distinct().Order()];

    [Fact]
    public void The_set_up_and_the_tasks_of_this_test_are_good()
    {
        Setup.Check();
        new RetrieveTask().Check();
        new CastTask().Check();
        new CrawlTask().Check();
        Assert.True(Members().Count > 100);
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void Every_number_is_refused_by_name_outside_its_range(string member)
    {
        foreach (object root in (object[])[Setup, new RetrieveTask(), new CastTask(), new CrawlTask()])
        {
            foreach (Number number in Numbers(root).Where(n => n.Name == member))
            {
                Parameter p = number.Parameter;
                foreach (double bad in Bad(p, number.IsWhole))
                {
                    ArgumentException e = Assert.ThrowsAny<ArgumentException>(() => Run(number.With(bad)));
                    Assert.Contains(p.Name, e.Message, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public void A_default_and_the_ends_of_a_guess_are_allowed()
    {
        foreach (Number number in Numbers(Setup).Concat(Numbers(new RetrieveTask())).Concat(Numbers(new CastTask())).Concat(Numbers(new CrawlTask())))
        {
            Parameter p = number.Parameter;
            Assert.True(p.Low < p.High, number.Name);
            Assert.False(p.Default < p.Low || p.Default > p.High, number.Name);
            Assert.False(p.GuessLow < p.Low || p.GuessHigh > p.High || p.Default < p.GuessLow || p.Default > p.GuessHigh, number.Name);
            Assert.Equal(double.IsNaN(p.GuessLow), double.IsNaN(p.GuessHigh));
        }
    }

    [Fact]
    public void A_missing_part_and_an_unknown_word_are_refused_by_name()
    {
        Assert.Contains("Rod", Assert.ThrowsAny<ArgumentException>((Setup with { Rod = null! }).Check).Message, StringComparison.Ordinal);
        Assert.Contains("Lure.Hooks", Assert.ThrowsAny<ArgumentException>((Setup with { Lure = Setup.Lure with { Hooks = null! } }).Check).Message, StringComparison.Ordinal);
        Assert.Contains("Reel.Kind", Assert.ThrowsAny<ArgumentException>((Setup with { Reel = Setup.Reel with { Kind = (ReelKind)7 } }).Check).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_without_a_parameter_is_found()
    {
        Assert.Throws<InvalidOperationException>(() => Numbers(new Unbounded()).Count());
    }

    private static void Run(object root)
    {
        if (root is RetrieveTask retrieve)
        {
            RetrieveRun.Run(Setup, retrieve);
        }
        else if (root is CastTask cast)
        {
            CastRunner.Run(Setup, cast);
        }
        else if (root is CrawlTask crawl)
        {
            CrawlRun.Run(Setup, crawl);
        }
        else
        {
            RetrieveRun.Run((Setup)root, new RetrieveTask());
        }
    }

    private static IEnumerable<double> Bad(Parameter p, bool whole)
    {
        if (whole)
        {
            return [p.Low - 1.0, p.High + 1.0, int.MinValue, int.MaxValue];
        }

        double[] all = [double.NaN, double.NegativeInfinity, double.PositiveInfinity, Math.BitDecrement(p.Low), Math.BitIncrement(p.High), -1e300, 0.0];
        return all.Where(v => !(v >= p.Low && v <= p.High));
    }

    private static IEnumerable<Number> Numbers(object root) => Walk(root, root.GetType().Name, value => value);

    // Every number below a specification, with the way to the same specification with another value there.
    private static IEnumerable<Number> Walk(object spec, string path, Func<object, object> rebuild)
    {
        foreach (PropertyInfo property in spec.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite))
        {
            string name = $"{path}.{property.Name}";
            object? value = property.GetValue(spec);
            Func<object, object> with = v => rebuild(Changed(spec, property, v));
            Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
            IEnumerable<Number> below = type == typeof(double) || type == typeof(int) ? [new(name, Of(property), type == typeof(int), with)]
                : value is string or null || type.IsEnum || type == typeof(bool) || type == typeof(ulong) ? []
                : value is IEnumerable list ? Items(list, name, with)
                : Walk(value, name, with);
            foreach (Number number in below)
            {
                yield return number;
            }
        }
    }

    private static IEnumerable<Number> Items(IEnumerable list, string name, Func<object, object> with) => list switch
    {
        ValueList<BallastSpec> items => items.SelectMany((x, i) => Walk(x, name, v => with(Replaced(items, i, v)))),
        ValueList<HookSpec> items => items.SelectMany((x, i) => Walk(x, name, v => with(Replaced(items, i, v)))),
        ValueList<HullStation> items => items.SelectMany((x, i) => Walk(x, name, v => with(Replaced(items, i, v)))),
        _ => throw new InvalidOperationException($"{name}: a list of a kind that is not known here"),
    };

    private static ValueList<T> Replaced<T>(ValueList<T> items, int index, object item) => [.. items.Select((x, i) => i == index ? (T)item : x)];

    private static Parameter Of(PropertyInfo property) => property.GetCustomAttribute<ParameterAttribute>() is null
        ? throw new InvalidOperationException($"{property.DeclaringType!.Name}.{property.Name} has no range")
        : (Parameter)typeof(Parameter).GetMethod(nameof(Parameter.Of))!.MakeGenericMethod(property.DeclaringType!).Invoke(null, [property.Name])!;

    private static object Changed(object spec, PropertyInfo property, object value)
    {
        object copy = spec.GetType().GetMethod("<Clone>$")!.Invoke(spec, null)!;
        property.SetValue(copy, value);
        return copy;
    }

    private sealed record Number(string Name, Parameter Parameter, bool IsWhole, Func<object, object> Build)
    {
        public object With(double value) => Build(IsWhole ? (object)(int)value : value);
    }

    private sealed record Unbounded(double ValueM = 1.0);
}
