using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>The keys of a line to <see cref="LineSpec"/>, through the sizing tables of the model.</summary>
internal static class LineMapper
{
    /// <summary>Maps the main line with its way through the air; null when something is missing, refused or contradictory.</summary>
    public static LineSpec? MapMain(MapContext c) => Map(c, LineKeys.Set) is not LineSpec line ? null : line with
    {
        Flight = new(
            FrictionFactor: c.Guessed(CastKeys.LineFriction, LineFlightSpec.UsualFriction(line.Material)),
            WetFactor: c.Guessed(CastKeys.WetLine, LineFlightSpec.UsualWet(line.Material))),
    };

    /// <summary>Maps; null when something is missing, refused or contradictory.</summary>
    public static LineSpec? Map(MapContext c, LineKeySet keys)
    {
        if (AnyBad(c, keys) || double.IsNaN(c[keys.Material]) || !HasSize(c, keys))
        {
            return null;
        }

        var material = (LineMaterial)(int)c[keys.Material];
        if (material != LineMaterial.Braid && LineNumberReader.IsBraidNumber(c.Values.Text(keys.Number)))
        {
            c.Fault(keys.Number, string.Concat(
                $"\"{c.Values.Text(keys.Number)}\" is a braid number, by mass; {keys.Material.Path} is {c.Values.Text(keys.Material)}: ",
                "its numbers go by diameter, for example \"no. 3\""));
            return null;
        }

        return Size(c, keys, material);
    }

    private static LineSpec? Size(MapContext c, LineKeySet keys, LineMaterial material)
    {
        ScenarioValues v = c.Values;
        var known = new LineOverrides(
            v.Optional(keys.Density),
            v.Optional(keys.Modulus),
            v.Optional(keys.DampingTime),
            v.Optional(keys.Packing),
            v.Optional(keys.Strength),
            v.Optional(keys.DragFactor),
            v.Optional(keys.TangentialDrag));
        try
        {
            LineSizing.Result sized = LineSizing.Resolve(
                material, v.Optional(keys.Diameter), v.Optional(keys.Number), v.Optional(keys.Label), (SurfaceFilm)(int)c[keys.Film], known);
            AddRanges(c, keys, sized);
            return sized.Spec;
        }
        catch (ArgumentException e)
        {
            c.Fault(SizeKey(c, keys), Sentence(e));
            return null;
        }
    }

    private static bool AnyBad(MapContext c, LineKeySet keys)
    {
        foreach (KeySpec key in keys.All)
        {
            if (c.Values.Given(key) is { Bad: true })
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasSize(MapContext c, LineKeySet keys)
    {
        bool has = c.Values.Has(keys.Label) || c.Values.Has(keys.Number) || c.Values.Has(keys.Diameter);
        if (!has)
        {
            c.Fault(keys.Label, $"missing; one of {keys.Label.Path}, {keys.Number.Path} and {keys.Diameter.Path} is due");
        }

        return has;
    }

    private static KeySpec SizeKey(MapContext c, LineKeySet keys) =>
        c.Values.Has(keys.Diameter) ? keys.Diameter : c.Values.Has(keys.Number) ? keys.Number : keys.Label;

    // Ranges of the independent guesses: diameter of a strand; number and packing of a braid, whose diameter follows from them.
    private static void AddRanges(MapContext c, LineKeySet keys, LineSizing.Result sized)
    {
        bool braid = sized.Spec.Material == LineMaterial.Braid;
        bool hasNumber = c.Values.Has(keys.Number), hasDiameter = c.Values.Has(keys.Diameter);
        foreach (SizedValue value in sized.Values)
        {
            double scale = value.Name == nameof(LineSpec.LinearDensityKgM) ? 1.0 / TextileUnits.FromBraidNumber(1.0) : 1.0;
            KeySpec? key = value.Name switch
            {
                nameof(LineSpec.DiameterM) => braid ? null : keys.Diameter,
                nameof(LineSpec.LinearDensityKgM) => braid && !hasNumber && !hasDiameter ? keys.Number : null,
                nameof(LineSpec.DensityKgM3) => keys.Density,
                "ModulusPa" => keys.Modulus,
                nameof(LineSpec.DampingTimeS) => keys.DampingTime,
                nameof(LineSpec.BreakN) => keys.Strength,
                nameof(LineSpec.TangentialDragCoefficient) => keys.TangentialDrag,
                _ => null,
            };
            if (key is not null && value.Origin == ValueOrigin.Guess && value.High > value.Low)
            {
                c.Range(key, scale * value.Low, scale * value.High);
            }
        }

        if (braid && !c.Values.Has(keys.Packing) && !(hasNumber && hasDiameter))
        {
            Ranged packing = LineMaterials.Of(LineMaterial.Braid).Packing;
            c.Range(keys.Packing, packing.Low, packing.High);
        }
    }

    private static string Sentence(ArgumentException e)
    {
        string line = e.Message.Split('\n')[0].TrimEnd();
        int parameter = line.IndexOf(" (Parameter", StringComparison.Ordinal);
        return (parameter < 0 ? line : line[..parameter]).TrimEnd('.');
    }
}
