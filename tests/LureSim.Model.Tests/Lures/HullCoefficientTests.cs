using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Lures;

/// <summary>Coefficients of hulls simple enough for a hand: spheroids that float half immersed on an even keel.</summary>
public sealed class HullCoefficientTests
{
    private const double Length = 0.1, Rho = 1000.0;
    private static readonly FloatingLure Round = Half(0.02, 0.02);

    // G moved by d along the hull, the hull held level. The strips are the same, so their sway mass lies d behind G: m23 = -a22 d; and
    // turning about G moves the centre of the strips sideways by d: m33 = m33(centre) + a22 d^2 (parallel axes).
    [Theory]
    [InlineData(0.01)]
    [InlineData(-0.02)]
    public void Moving_the_centre_of_gravity_couples_sway_to_yaw_by_the_corrected_sway_mass(double d)
    {
        HullAddedMass centred = Added(Round), shifted = Added(Moved(Round, d));
        Assert.Equal(0.0, centred.SwayYawKgM, 1e-12);
        Assert.Equal(centred.SwayKg, shifted.SwayKg, 1e-15);
        Assert.Equal(-centred.SwayKg * d, shifted.SwayYawKgM, 1e-12);
        Assert.Equal(centred.YawKgM2 + (centred.SwayKg * d * d), shifted.YawKgM2, 1e-12);
        Assert.Equal(centred.PitchKgM2 + (centred.HeaveKg * d * d), shifted.PitchKgM2, 1e-12);
        Assert.Equal(centred.SurgeKg, shifted.SurgeKg);
    }

    // A half-immersed circle carries pi/2 rho R^2 sideways under a lid and as much up and down at high frequency (Korotkin, p. 206), so a
    // round spheroid's heave and pitch are its sway and yaw: k2 = 0.894261 at L/D 5 (Lamb) times its displaced mass.
    [Fact]
    public void A_round_half_immersed_body_carries_as_much_water_up_as_sideways()
    {
        HullAddedMass a = Added(Round);
        double displaced = Rho * Math.PI / 12.0 * Length * 0.02 * 0.02;
        Assert.Equal(0.894261 * displaced, a.HeaveKg, 5e-5 * displaced);
        Assert.Equal(a.SwayKg, a.HeaveKg, 1e-9 * a.SwayKg);
        Assert.Equal(a.YawKgM2, a.PitchKgM2, 1e-9 * a.YawKgM2);
    }

    // Half an ellipse under a lid counts by its depth, in heave by its breadth: pi/2 rho c^2 against pi/2 rho b^2.
    [Fact]
    public void Sway_counts_the_height_of_a_section_and_heave_its_breadth()
    {
        HullAddedMass flat = Added(Half(0.03, 0.02));
        Assert.Equal(Added(Round).SwayKg, flat.SwayKg, 1e-9);
        Assert.Equal(Added(Round).HeaveKg * 2.25, flat.HeaveKg, 1e-8);
    }

    [Fact]
    public void The_factor_of_the_surface_is_for_sway_and_yaw_alone()
    {
        HullAddedMass lid = Added(Round), half = Added(Round with { Spec = Round.Spec with { AddedMassFactor = 0.5 } });
        Assert.Equal(0.5 * lid.SwayKg, half.SwayKg, 1e-15);
        Assert.Equal(0.5 * lid.YawKgM2, half.YawKgM2, 1e-15);
        Assert.Equal((lid.SurgeKg, lid.HeaveKg, lid.PitchKgM2), (half.SurgeKg, half.HeaveKg, half.PitchKgM2));
        LureSpec lure = TestLures.Pencil();
        WalkHull a = WalkHullBuilder.Build(lure, TestLures.Water), b = WalkHullBuilder.Build(lure with { AddedMassFactor = 1.4 }, TestLures.Water);
        Assert.Equal((a.NoseMassKg, a.NoseStiffnessNM, a.NoseDampingNsM), (b.NoseMassKg, b.NoseStiffnessNM, b.NoseDampingNsM));
    }

    // The shape in which a force at the tie moves the hull, taken from the full float with a tiny weight hung there; the mass of the bob is
    // what has the energy of that motion: (m zG^2 + I theta^2)/zTie^2 (Rayleigh).
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_mass_of_the_nose_is_the_energy_of_heave_and_pitch_in_the_shape_of_a_pull_at_the_tie(bool noseHeavy)
    {
        // Bare, so that no hook goes under with the nose.
        double x = noseHeavy ? 0.008 : -0.02;
        LureSpec lure = TestLures.Pencil() with { Hooks = [], Ballast = [new BallastSpec(0.003, x, -0.004)] };
        const double load = 1e-5;
        FloatingLure f = FloatingLure.Float(lure, TestLures.Water);
        FloatReport rest = FloatSolver.Solve(lure, TestLures.Water);
        FloatReport down = FloatSolver.Solve(lure with { Hooks = [new HookSpec(load, lure.TieXM, lure.TieZM, 0.0, 0.0)] }, TestLures.Water);
        Vec3 g = f.Mass.Centre;
        double Height(FloatReport r) =>
            r.NoseHeightM + (Math.Sin(r.TrimRad) * (g.X - (0.5 * lure.LengthM))) + (Math.Cos(r.TrimRad) * g.Z);
        double atG = Height(rest) - Height(down), turn = rest.TrimRad - down.TrimRad, atTie = rest.TieHeightM - down.TieHeightM;
        HullAddedMass added = Added(f);
        double expected = (((rest.MassKg + added.HeaveKg) * atG * atG) + ((f.Mass.PitchInertiaKgM2 + added.PitchKgM2) * turn * turn)) / (atTie * atTie);
        WalkHull hull = WalkHullBuilder.Build(lure, TestLures.Water);

        // The float is not quite linear: halving the weight halves a difference of 0.1 %.
        Assert.Equal(expected, hull.NoseMassKg, 3e-3 * expected);

        // Ratio 0.2, the guess of docs/lure.md: c = 2 zeta sqrt(k m).
        Assert.Equal(2.0 * 0.2 * Math.Sqrt(hull.NoseStiffnessNM * hull.NoseMassKg), hull.NoseDampingNsM, 1e-12);
    }

    // Flat hull, twice as broad as high: eta is read at the length over hull and mirror image, 0.1/0.00998 m, where Wieselsberger
    // measured Cd 0.820 against 1.19; read at the mean diameter it would be 4 % less. Middle strip: draft 4.99 mm, Cd 1, 1/21 of 0.1 m:
    // 1/2 1000 (0.820/1.19) 0.00499 (0.1/21) kg/m.
    [Fact]
    public void Drag_across_is_read_at_the_length_over_the_height_of_hull_and_mirror_image()
    {
        FloatingLure flat = Half(0.02, 0.00998);
        double[] drag = HullResistance.StripDragKgM(flat, WettedForm.Of(flat));
        Assert.Equal(21, drag.Length);
        Assert.Equal(8.186875e-3, drag[10], 1e-8);

        // Half a strip from the end s = 20/21: draft falls as sqrt(1 - s^2).
        Assert.Equal(8.186875e-3 * Math.Sqrt(1.0 - Math.Pow(20.0 / 21.0, 2)), drag[20], 1e-8);
    }

    // Re = 0.3 x 0.1/1e-6 = 3e4: Blasius 1.328/sqrt(Re) = 7.66721e-3. Form factor at L/D 5: 1 + 1.5/5^1.5 + 7/125 = 1.190164. Half a spheroid's
    // surface: 2.509626e-3 m2. Form drag 0.20 on the half circle of 1.570796e-4 m2. Together 1/2 1000 (2.290090e-5 + 3.141593e-5) kg/m.
    [Fact]
    public void Drag_along_is_friction_with_its_form_factor_and_form_drag() =>
        Assert.Equal(0.02715843, HullResistance.AxialKgM(Round, WettedForm.Of(Round)), 2e-4 * 0.0272);

    // A hook hangs by 10 mm: dry with its hanger 10 mm up, wet with it on the water (guess of docs/lure.md); 1/2 rho CdA.
    [Theory]
    [InlineData(0.0120, 0.0)]
    [InlineData(0.0025, 0.75)]
    [InlineData(-0.0090, 1.0)]
    public void A_hook_drags_as_far_as_it_hangs_in_the_water(double z, double share)
    {
        var hook = new HookSpec(0.001, 0.02, z, 6e-5, 1.27e-7, 2e-5);
        Assert.Equal(share * 0.5 * Rho * 6e-5, HullResistance.HookKgM(Round, hook), 1e-9);
        Assert.Equal(share * 0.5 * Rho * 2e-5, HullResistance.HookAlongKgM(Round, hook), 1e-9);
        Assert.Equal(share * 0.5 * Rho * 6e-5, HullResistance.HookAlongKgM(Round, hook with { DragAreaAlongM2 = null }), 1e-9);
    }

    // a = pi/2 rho k2 R^2 - k1 rho pi/2 R^2 at the middle of a round half-immersed spheroid, x0 = -0.35 L, R^2 = R0^2 (1 - 0.49);
    // behind it the integral of a over -0.5 L .. -0.35 L of (1 - s^2): L/2 (0.3 - (1 - 0.343)/3) a0', first moment likewise.
    [Fact]
    public void The_stern_of_a_spheroid_sheds_what_its_sections_carry()
    {
        FloatingLure f = Round with { Spec = Round.Spec with { SternShedding = 0.8, SternPlace = 0.35 } };
        SternShedding tail = SternShedding.Of(f, WettedForm.Of(f), ahead: true), nose = SternShedding.Of(f, WettedForm.Of(f), ahead: false);
        double middle = 0.8 * Rho * 0.5 * Math.PI * 1e-4 * (0.894261 - 0.059121);
        Assert.Equal(-0.035, tail.XM, 1e-9);
        Assert.Equal(middle * 0.51, tail.AtKgM, 1e-5 * middle);

        // 64 midpoint strips: 1e-4 of the integrals.
        Assert.Equal(middle * 0.05 * (0.3 - (0.657 / 3.0)), tail.BehindKg, 1e-4 * middle * 0.05);
        double moment = 0.05 * 0.05 * (((1.0 - 0.49) / 2.0) - ((1.0 - 0.2401) / 4.0));
        Assert.Equal(-middle * moment, tail.BehindKgM, 1e-4 * middle * moment);
        Assert.Equal(-tail.BehindKgM, nose.BehindKgM, 1e-12);

        // N = chi u (b0 v + b1 r) at u = 2, v = 3, r = 5.
        Assert.Equal(2.0 * ((3.0 * tail.BehindKg) + (5.0 * tail.BehindKgM)), tail.MomentNm(2.0, 3.0, 5.0), 1e-15);
    }

    private static HullAddedMass Added(FloatingLure f) => HullAddedMass.Of(f, WettedForm.Of(f));

    private static FloatingLure Moved(FloatingLure f, double d) => f with { Mass = f.Mass with { Centre = new Vec3(d, 0.0, f.Mass.Centre.Z) } };

    /// <summary>Spheroid without hooks that weighs half the water it can displace.</summary>
    private static FloatingLure Half(double breadth, double height) => FloatingLure.Float(
        new(LureShape.Spheroid, Length, breadth, height, Rho * Math.PI / 12.0 * Length * breadth * height, 0.05, 0.0, [], [], AddedMassFactor: 1.0, CrossFlowCd: 1.0),
        TestLures.Water);
}
