using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace LureSim.Model;

/// <summary>One number of a specification: the one place of its range and default, which scenario keys and checks read.</summary>
/// <param name="Name">Name of the member, unit at its end.</param>
/// <param name="Symbol">Symbol in the equations of the docs, or a word where there is none.</param>
/// <param name="Unit">Unit; empty for a plain number.</param>
/// <param name="Low">Lowest allowed value.</param>
/// <param name="High">Highest allowed value.</param>
/// <param name="Default">Default, NaN where the number must be given or follows from others.</param>
/// <param name="GuessLow">Lower end of the range of a default that is a guess, NaN when it is none.</param>
/// <param name="GuessHigh">Upper end of that range.</param>
public sealed record Parameter(
    string Name, string Symbol, string Unit, double Low, double High, double Default = double.NaN, double GuessLow = double.NaN, double GuessHigh = double.NaN)
{
    private static readonly ConcurrentDictionary<Type, SpecMember[]> Members = new();

    /// <summary>The parameter behind a member of a specification.</summary>
    /// <typeparam name="TSpec">Type of the specification.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <exception cref="ArgumentException">The member is no parameter.</exception>
    public static Parameter Of<[DynamicallyAccessedMembers(ISpec.Members)] TSpec>(string name) =>
        MembersOf(typeof(TSpec)).FirstOrDefault(m => m.Property.Name == name)?.Parameter
        ?? throw new ArgumentException($"{typeof(TSpec).Name} has no parameter {name}", nameof(name));

    /// <summary>Demands every number of a specification and of those in it inside its range, every word known, everything due there.</summary>
    /// <param name="spec">Specification.</param>
    /// <exception cref="ArgumentException">Something is missing or out of range; the message names it and what is allowed.</exception>
    public static void Demand(object spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        DemandInside(spec, "");
    }

    private static void Demand(ISpec spec, string path)
    {
        foreach (SpecMember member in MembersOf(spec.GetType()))
        {
            string name = path + member.Property.Name;
            object? value = member.Property.GetValue(spec);
            if (value is null)
            {
                _ = member.MayBeNull ? value : throw new ArgumentNullException(name);
            }
            else if (member.Parameter is Parameter p)
            {
                Require.InRange(Convert.ToDouble(value, null), p.Low, p.High, name);
            }
            else if (value is Enum && !Enum.IsDefined(value.GetType(), value))
            {
                throw new ArgumentOutOfRangeException(name, value, $"{name} is {value}, which is not known.");
            }
            else
            {
                DemandInside(value, name);
            }
        }
    }

    private static void DemandInside(object value, string name)
    {
        if (value is ISpec spec)
        {
            Demand(spec, name.Length > 0 ? name + "." : "");
        }
        else if (value is System.Collections.IEnumerable list and not string)
        {
            int i = 0;
            foreach (object item in list)
            {
                DemandInside(item, $"{name}[{i++}]");
            }
        }
    }

    // Not GetOrAdd: what trimming must keep would be lost on the way into its function.
    private static SpecMember[] MembersOf([DynamicallyAccessedMembers(ISpec.Members)] Type type) =>
        Members.TryGetValue(type, out SpecMember[]? known) ? known : Members[type] = SpecMember.AllOf(type);

    // Every start of the program comes through here: what reflection is slow at is asked once per type, or only when it is needed.
    private sealed record SpecMember(PropertyInfo Property, Parameter? Parameter)
    {
        public bool MayBeNull => Nullable.GetUnderlyingType(Property.PropertyType) is not null || Property.IsDefined(typeof(MayBeMissingAttribute), inherit: false);

        public static SpecMember[] AllOf([DynamicallyAccessedMembers(ISpec.Members)] Type type)
        {
            ParameterInfo[] given = [.. type.GetConstructors().SelectMany(c => c.GetParameters())];
            return [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite).Select(p => Of(p, given))];
        }

        private static SpecMember Of(PropertyInfo property, ParameterInfo[] given)
        {
            var a = (ParameterAttribute?)Attribute.GetCustomAttribute(property, typeof(ParameterAttribute), inherit: false);
            return new(property, a is null ? null : Of(property.Name, a, DefaultOf(property.Name, given)));
        }

        private static Parameter Of(string name, ParameterAttribute a, double value)
        {
            Ranged guess = a.Guess(value);
            return new(name, a.Symbol, a.Unit, a.Low, a.High, value, guess.Low, guess.High);
        }

        private static double DefaultOf(string name, ParameterInfo[] given) =>
            Array.Find(given, p => p.Name == name)?.DefaultValue is IConvertible value and not DBNull ? value.ToDouble(null) : double.NaN;
    }
}
