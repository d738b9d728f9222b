using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace LureSim.Model.Tests.Library;

/// <summary>Public types and members of an assembly as lines of text, sorted; what the compiler adds to records is left out.</summary>
internal static class ApiText
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
    private static readonly NullabilityInfoContext Nulls = new();

    private static readonly Dictionary<Type, string> Words = new()
    {
        [typeof(void)] = "void",
        [typeof(bool)] = "bool",
        [typeof(int)] = "int",
        [typeof(long)] = "long",
        [typeof(ulong)] = "ulong",
        [typeof(double)] = "double",
        [typeof(string)] = "string",
        [typeof(object)] = "object",
    };

    public static IEnumerable<string> Lines(System.Reflection.Assembly assembly) =>
        assembly.GetExportedTypes().SelectMany(t => Members(t).Select(m => $"{Path(t)}.{m}").Prepend($"{Path(t)} : {Kind(t)}")).Order(StringComparer.Ordinal);

    // Namespace below LureSim.Model and name, with the names of its own type parameters.
    private static string Path(Type t)
    {
        string name = t.IsNested ? $"{Path(t.DeclaringType!)}.{Name(t)}" : $"{t.Namespace}.{Name(t)}";
        return name.StartsWith("LureSim.Model.", StringComparison.Ordinal) ? name["LureSim.Model.".Length..] : name;
    }

    private static string Kind(Type t)
    {
        string kind = t.IsEnum ? "enum"
            : t.IsInterface ? "interface"
            : typeof(Delegate).IsAssignableFrom(t) ? "delegate"
            : t.IsValueType ? (t.IsDefined(typeof(IsReadOnlyAttribute)) ? "readonly " : "") + (t.IsByRefLike ? "ref struct" : "struct")
            : t is { IsAbstract: true, IsSealed: true } ? "static class"
            : (t.IsAbstract ? "abstract " : t.IsSealed ? "sealed " : "") + (t.GetMethod("<Clone>$") is null ? "class" : "record");
        Type[] bases = [.. new[] { t.BaseType }.OfType<Type>().Where(b => b != typeof(object) && b != typeof(ValueType) && b != typeof(Enum)),
            .. t.GetInterfaces().Where(i => i.IsVisible && !t.IsEnum && i.GetGenericArguments().All(a => a != t)).OrderBy(i => i.Name, StringComparer.Ordinal)];
        return bases.Length == 0 ? kind : $"{kind}, {string.Join(", ", bases.Select(Name))}";
    }

    private static IEnumerable<string> Members(Type t)
    {
        if (t.IsEnum)
        {
            return Enum.GetNames(t).Select(n => $"{n} = {Convert.ToInt64(Enum.Parse(t, n), CultureInfo.InvariantCulture)}");
        }

        return
        [
            .. t.GetConstructors(Own).Where(Written).Select(c => $"new({Parameters(c)})"),
            .. t.GetFields(Own).Select(f => $"{f.Name} : {(f.IsLiteral ? "const " : f.IsStatic ? "static " : "")}{(f is { IsInitOnly: true, IsLiteral: false } ? "readonly " : "")}{Name(f.FieldType)}"
                + (f.IsLiteral ? $" = {Text(f.GetRawConstantValue())}" : "")),
            .. t.GetProperties(Own).Select(Property),
            .. t.GetEvents(Own).Select(e => $"{e.Name} : event {Name(e.EventHandlerType!)}"),
            .. t.GetMethods(Own).Where(m => Written(m) && (!m.IsSpecialName || m.Name.StartsWith("op_", StringComparison.Ordinal))).Select(Method),
        ];
    }

    private static bool Written(MethodBase m) => !m.IsDefined(typeof(CompilerGeneratedAttribute));

    private static string Property(PropertyInfo p)
    {
        MethodInfo? set = p.SetMethod is { IsPublic: true } s ? s : null;
        string access = set is null ? "get" : set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? "get; init" : "get; set";
        string index = p.GetIndexParameters() is { Length: > 0 } all ? $"[{string.Join(", ", all.Select(Parameter))}]" : "";
        string how = ((p.GetMethod ?? p.SetMethod)!.IsStatic ? "static " : "") + (p.IsDefined(typeof(RequiredMemberAttribute)) ? "required " : "");
        return $"{p.Name}{index} : {how}{Name(p.PropertyType)}{Mark(p.PropertyType, () => Nulls.Create(p).ReadState)} {{ {access} }}";
    }

    private static string Method(MethodInfo m)
    {
        string own = m.IsGenericMethod ? $"<{string.Join(", ", m.GetGenericArguments().Select(Name))}>" : "";
        string result = $"{Name(m.ReturnType)}{Mark(m.ReturnType, () => Nulls.Create(m.ReturnParameter).ReadState)}";
        return $"{m.Name}{own}({Parameters(m)}) : {(m.IsStatic ? "static " : m.IsAbstract && !m.DeclaringType!.IsInterface ? "abstract " : "")}{result}";
    }

    private static string Parameters(MethodBase m) => string.Join(", ", m.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo p)
    {
        string by = !p.ParameterType.IsByRef ? "" : p.IsOut ? "out " : p.IsIn ? "in " : "ref ";
        string end = p.HasDefaultValue ? $" = {(p.RawDefaultValue is null ? (p.ParameterType.IsValueType ? "default" : "null") : Text(p.RawDefaultValue))}" : "";
        return $"{by}{Name(p.ParameterType)}{Mark(p.ParameterType, () => Nulls.Create(p).ReadState)} {p.Name}{end}";
    }

    private static string Mark(Type t, Func<NullabilityState> state) => t is { IsValueType: false, IsByRef: false, IsGenericParameter: false } && state() == NullabilityState.Nullable ? "?" : "";

    private static string Text(object? value) => value is string s ? $"\"{s}\"" : Convert.ToString(value, CultureInfo.InvariantCulture) ?? "null";

    private static string Name(Type t)
    {
        if (t.IsByRef)
        {
            return Name(t.GetElementType()!);
        }

        if (t.IsArray)
        {
            return $"{Name(t.GetElementType()!)}[{new string(',', t.GetArrayRank() - 1)}]";
        }

        if (Nullable.GetUnderlyingType(t) is Type inner)
        {
            return $"{Name(inner)}?";
        }

        if (t.IsGenericType && t.Name.StartsWith("ValueTuple`", StringComparison.Ordinal))
        {
            return $"({string.Join(", ", t.GetGenericArguments().Select(Name))})";
        }

        string name = Words.GetValueOrDefault(t) ?? t.Name.Split('`')[0];
        return t.IsGenericType ? $"{name}<{string.Join(", ", t.GetGenericArguments().Select(Name))}>" : name;
    }
}
