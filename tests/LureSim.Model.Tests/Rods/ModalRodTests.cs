using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Rods;

/// <summary>The rod of a retrieve, step by step: a rigid one, and one mode whose step is solved by hand.</summary>
public sealed class ModalRodTests
{
    private const double Length = 1.8, Mass = 0.008, Stiffness = 20.0, Damping = 0.05, Driven = 0.012, Dt = 1e-3;
    private static readonly Vec3 Stroke = new(-0.8, 0.0, 0.6), Side = new(0.0, 1.0, 0.0);
    private static readonly Bdf2 Euler = Bdf2.BackwardEuler(Dt);

    // J theta'' of a straight rigid rod, rates as differences over the time between two calls; a pull along the stroke needs less.
    [Fact]
    public void The_hand_of_a_rigid_rod_gives_inertia_times_acceleration_and_holds_against_the_line()
    {
        const double inertia = 0.05;
        var rod = new ModalRod(new RodModeSet(Length, [], [], [], [], inertia));
        rod.Begin(Euler, Frame(0.0));
        Assert.Equal(inertia * 2.0 / 0.5, rod.HandTorque(2.0, 0.5, Vec3.Zero), 1e-15);
        Assert.Equal(inertia * -3.0 / 0.25, rod.HandTorque(-1.0, 0.25, Vec3.Zero), 1e-15);
        Assert.Equal(-1.5 * Length, rod.HandTorque(-1.0, 0.25, 1.5 * Stroke), 1e-15);
        Assert.Equal(0.0, rod.HandTorque(-1.0, 0.25, 1.5 * Side), 1e-15);
    }

    // One mode from rest: m q'' = F - c q' - k q - G a with a the change of the tip's drive over the step, backward Euler:
    // q' = dt (F - G a)/(m + dt c + dt^2 k), in the stroke plane and, without drive, across it.
    [Fact]
    public void A_mode_bends_by_the_line_and_against_the_drive()
    {
        const double drive = 0.3, along = 0.4, across = -0.2;
        var rod = new ModalRod(new RodModeSet(Length, [Mass], [Stiffness], [Damping], [Driven], 0.05));
        TipFrame tip = Frame(drive);
        LineEnd free = rod.Begin(Euler, tip);
        rod.Finish(Euler, (along * Stroke) + (across * Side));
        rod.Commit();
        double soft = Dt / (Mass + (Dt * Damping) + (Dt * Dt * Stiffness));
        double rate = soft * (along - (Driven * drive / Dt)), side = soft * across;
        Assert.Equal(rate, rod.Now.Rate[0], 1e-14);
        Assert.Equal(Dt * rate, rod.Now.Bend, 1e-15);
        Assert.Equal(Dt * side, rod.Now.SideBend, 1e-15);

        // The free end of the line's step: rigid tip and the bend without the line; the direction of the bend turns with the rod.
        double freeRate = -soft * Driven * drive / Dt;
        Vec3 position = tip.Position + (Dt * freeRate * Stroke);
        Vec3 velocity = tip.Velocity + (freeRate * Stroke) + (Dt * freeRate * tip.StrokeRate);
        Assert.Equal(0.0, (free.FreePosition - position).Length, 1e-15);
        Assert.Equal(0.0, (free.FreeVelocity - velocity).Length, 1e-14);
        Assert.Equal(0.0, (free.Yield(Stroke) - (soft / Dt * Stroke)).Length, 1e-12);
        Assert.Equal(0.0, (free.Yield(Side) - (soft / Dt * Side)).Length, 1e-12);

        // A drive that no longer changes excites nothing: the next step is that of a free mode.
        rod.Begin(Euler, tip);
        rod.Finish(Euler, Vec3.Zero);
        double next = ((Mass * rate) - (Dt * Stiffness * Dt * rate)) / (Mass + (Dt * Damping) + (Dt * Dt * Stiffness));
        Assert.Equal(next, rod.Next.Rate[0], 1e-14);
        Assert.Equal(0.0, (rod.Guess(Dt, tip) - (tip.Position + (2.0 * Dt * rate * Stroke) + (2.0 * Dt * side * Side))).Length, 1e-15);
    }

    private static TipFrame Frame(double drive) =>
        new(new Vec3(0.1, 0.2, 0.7), new Vec3(-0.1, 0.0, 0.3), Stroke, new Vec3(0.5, 0.0, 0.25), Side, drive);
}
