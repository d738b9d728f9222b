using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class LureSpecCheckTests
{
    public static TheoryData<string, LureSpec> Broken()
    {
        LureSpec ok = TestLures.Cigar();
        return new TheoryData<string, LureSpec>
        {
            { "LengthM", ok with { LengthM = 0.5 } },
            { "DiameterM", ok with { DiameterM = -0.01 } },
            { "HeightM", ok with { HeightM = double.NaN } },
            { "MassKg", ok with { MassKg = -0.018 } },
            { "TieXM", ok with { TieXM = 0.1 } },
            { "MassKg", ok with { Ballast = [new BallastSpec(0.019, 0.0, 0.0)] } },
            { "ballast", ok with { Ballast = [new BallastSpec(0.01, 0.0, 0.0), new BallastSpec(0.01, 0.0, 0.0)] } },
            { "DragAreaM2", ok with { Hooks = [new HookSpec(0.001, 0.0, 0.0, double.PositiveInfinity, 0.0)] } },
            { "SternShedding", ok with { SternShedding = -0.1 } },
            { "SternShedding", ok with { SternShedding = double.NaN } },
            { "SternPlace", ok with { SternPlace = 0.5 } },
            { "DragAreaAlongM2", ok with { Hooks = [new HookSpec(0.001, 0.0, 0.0, 1e-4, 0.0, -1e-4)] } },
            { "stations", ok with { Shape = LureShape.Stations } },
            { "stations", ok with { Shape = LureShape.Stations, Stations = [new HullStation(0.0, 0.01, 0.01)] } },
            { "rise", ok with { Shape = LureShape.Stations, Stations = [new(0.01, 0.01, 0.01), new(0.0, 0.01, 0.01)] } },
        };
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void Refuses_with_the_name_of_the_value(string word, LureSpec lure)
    {
        var e = Assert.ThrowsAny<ArgumentException>(() => WalkHullBuilder.Build(lure, TestLures.Water));
        Assert.Contains(word, e.Message, StringComparison.Ordinal);
    }
}
