using System.Diagnostics.CodeAnalysis;

namespace LureSim.Model;

/// <summary>A specification: <see cref="Parameter"/> asks its members for their ranges by reflection. A program that is cut to what it uses keeps, for
/// every type that carries this mark, the members that are asked. A test finds a specification without it.</summary>
[DynamicallyAccessedMembers(Members)]
internal interface ISpec
{
    /// <summary>What <see cref="Parameter"/> asks for.</summary>
    public const DynamicallyAccessedMemberTypes Members = DynamicallyAccessedMemberTypes.PublicProperties | DynamicallyAccessedMemberTypes.PublicConstructors;
}

/// <summary>Marks a part of a specification that may be left out: null then. Nullable types of numbers need no mark.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class MayBeMissingAttribute : Attribute;
