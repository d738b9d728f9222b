using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.Lures.Free;

/// <summary>What the water does to the hull in six degrees of freedom at one instant: sections, Munk moment, stern, going under.</summary>
public static class FreeFluid
{
    private const double Speed = 0.5, Ten = 10.0 * Math.PI / 180.0;
    private static readonly double Rho = Samples.Water.DensityKgM3;

    /// <summary>N2.</summary>
    [PublishedCheck]
    public static Check Sections()
    {
        (double h, double value)[] table =
        [
            (0.25, 0.61791), (0.5, 1.05479), (0.75, 1.36273), (1.0, 1.57080), (1.25, 1.70466), (1.5, 1.79228), (1.75, 1.87153), (2.0, 2.02612),
        ];
        const double r = 0.01;
        var water = new NodeWater(new HullNodes(Samples.Cylinder(0.1, r)), Rho, FreeBench.Gravity, 1.0, 0.0, 0.0, 0.0);
        (double Sway, double Heave) At(double t, double roll)
        {
            var cut = new NodeCut(water.Nodes);
            var axes = new WaterAxes(-t * r, new Vec3(0.0, Math.Sin(roll), Math.Cos(roll)));
            cut.Set(axes);
            var added = new NodeAddedMass(water, cut);
            added.Set(axes, 0.0, Vec3.Zero);
            return (added.Sway[17] / (Rho * r * r), added.Heave[17] / (Rho * r * r));
        }

        return new Check(
            "N2", "Sections of the hull in six degrees of freedom: partly immersed circle", "Korotkin, Added Masses of Ship Structures, p. 206; sway under a lid as in A3",
            "Five decimals of the table; acos to 2e-8.",
            [
                .. table.Select(p => new Row($"heave over rho R2, draft {p.h} R", "-", p.value, At(p.h - 1.0, 0.0).Heave, 6e-6, Tol.Absolute)),
                new("half circle, heave, rolled by 40 deg", "-", 0.5 * Math.PI, At(0.0, 0.7).Heave, 1e-6, Tol.Absolute),
                new("half circle, sway under a lid", "-", 0.5 * Math.PI, At(0.0, 0.0).Sway, 1e-6, Tol.Absolute),
                new("the same, rolled by 40 deg", "-", 0.5 * Math.PI, At(0.0, 0.7).Sway, 1e-6, Tol.Absolute),
                new("circle touching the lid, sway", "-", Math.PI * ((Math.PI * Math.PI / 3.0) - 1.0), At(1.0, 0.0).Sway, 1e-6, Tol.Absolute),
            ]);
    }

    /// <summary>N3.</summary>
    [PublishedCheck]
    public static Check MunkMoments()
    {
        FreeHull half = FreeBench.Hull(FreeBench.Bare(Samples.HalfSpheroid(0.1, 0.02)));
        LureSpec heavy = FreeBench.Bare(Samples.HalfSpheroid(0.2, 0.02)) with { MassKg = 0.9999 * Rho * Samples.SpheroidVolume(0.2, 0.02) };
        FreeHull deep = FreeBench.Hull(heavy);
        WettedForm form = WettedForm.Of(deep.Float);
        double k1 = Spheroid.Surge(form.SlendernessAlong), k2 = Spheroid.Sway(form.SlendernessAcross);
        double inDepth = 0.5 * Rho * Speed * Speed * Samples.SpheroidVolume(0.2, 0.02) * (k2 - (0.9999 * k1)) * Math.Sin(2.0 * Ten);
        double u = Speed * Math.Cos(Ten), across = Speed * Math.Sin(Ten);
        return new Check(
            "N3", "Munk moment of the hull in six degrees of freedom at 10 deg, in yaw and in pitch", "Munk 1924, NACA Rep. 184 (from memory): 1/2 rho U2 V (k2 - k1) sin 2b; number as in A5",
            "Six digits of the worked number; 40 sections on a beam that ends like a root: 1e-4. Deep, k1 and k2 are those of the floating hull's mirror body.",
            [
                new("yaw, half immersed, L 0.1 m, D 0.02 m, 0.5 m/s", "N m", 3.73222e-4, -Moment(half, 0.0, new Vec3(u, across, 0.0)).Z, 1e-4, Tol.Relative),
                new("yaw, the other way", "N m", -3.73222e-4, -Moment(half, 0.0, new Vec3(u, -across, 0.0)).Z, 1e-4, Tol.Relative),
                new("pitch, half immersed", "N m", 3.73222e-4, Moment(half, 0.0, new Vec3(u, 0.0, across)).Y, 1e-4, Tol.Relative),
                new("yaw, deep", "N m", inDepth, -Moment(deep, -10.0, new Vec3(u, across, 0.0)).Z, 1e-4, Tol.Relative),
                new("pitch, deep", "N m", inDepth, Moment(deep, -10.0, new Vec3(u, 0.0, across)).Y, 1e-4, Tol.Relative),
            ]);
    }

    /// <summary>N9.</summary>
    [PublishedCheck]
    public static Check SternSlope()
    {
        // As in A6: x0 from the nose 0.378 + 0.527, load of the half body up to there.
        const double fromNose = 0.378 + 0.527, s = (2.0 * fromNose) - 1.0, diameter = 0.02, length = 0.1;
        LureSpec lure = FreeBench.Bare(Samples.HalfSpheroid(length, diameter)) with { SternShedding = 1.0, SternPlace = fromNose - 0.5 };
        double load = 0.5 * Rho * 0.835139 * 0.25 * Math.PI * diameter * diameter;
        double lost = 2.0 / 3.0 * (1.0 - (s * s * s)) * 0.5 * length;
        FreeHull hull = FreeBench.Hull(lure);
        const double v = 1e-3;
        FreeForces forces = Forces(hull, 0.0, new Vec3(Speed, v, 0.0));
        double turning = (forces.Drag[5, 1] * v) - forces.Force[5];
        FreeForces up = Forces(hull, 0.0, new Vec3(Speed, 0.0, v));
        double pitching = (up.Drag[4, 2] * v) - up.Force[4] + Forces(hull, 0.0, new Vec3(Speed, 0.0, 0.0)).Force[4];
        return new Check(
            "N9", "Cross-flow shed at the stern of the hull in six degrees of freedom", "Hopkins 1951, NACA RM A51C14 (from memory), as in A6; the same in the vertical plane; Clarke, Gedling, Hine 1982 (from memory) as an upper bound",
            "Side force and load at x0 are taken between two of 40 nodes: spacing^2/8 times the curvature, 2e-3; the few nodes behind x0 in the moment, 1e-2 of what is lost there.",
            [
                new("side force over drift speed, 0.5 m/s", "N s/m", load * (1.0 - (s * s)) * Speed, forces.Drag[1, 1], 2e-3, Tol.Relative),
                new("moment over drift speed, away from the line", "N s", Speed * load * ((2.0 / 3.0 * length) - lost), turning / v, 2e-3, Tol.Relative),
                new("lift over heave speed", "N s/m", load * (1.0 - (s * s)) * Speed, up.Drag[2, 2], 2e-3, Tol.Relative),
                new("pitching moment over heave speed", "N s", -Speed * load * ((2.0 / 3.0 * length) - lost), pitching / v, 2e-3, Tol.Relative),
                .. new[] { "large-walker.toml", "small-walker.toml" }.Select(file => BandRow.Of(
                    $"{file}: side force over that of a ship of the same measures (A7), chi = 1", "-", 0.1, 1.0, OverShip(Shipped.Read(Shipped.Named(file)).Setup.Lure))),
            ]);
    }

    /// <summary>Clarke, Gedling, Hine 1982, as in A7.</summary>
    private static double OverShip(LureSpec lure)
    {
        FreeHull hull = FreeBench.Hull(lure with { SternShedding = 1.0, CrossFlowCd = 0.0, Hooks = [.. lure.Hooks.Select(h => h with { DragAreaM2 = 0.0 })] });
        WettedForm form = WettedForm.Of(hull.Float);
        double t = form.DraftM / form.LengthM, block = hull.Float.State.Immersion.VolumeM3 / (form.LengthM * form.BreadthM * form.DraftM);
        double ship = Math.PI * t * t * (1.0 + (0.40 * block * form.BreadthM / form.DraftM)) * 0.5 * Rho * form.LengthM * form.LengthM;
        return Forces(hull, 0.0, new Vec3(Speed, 0.0, 0.0)).Drag[1, 1] / Speed / ship;
    }

    /// <summary>N10.</summary>
    [PublishedCheck]
    public static Check GoingUnder()
    {
        const double w = 0.3;
        FreeHull hull = FreeBench.Hull(FreeBench.Bare(Samples.HalfSpheroid(0.1, 0.02)));
        double k2 = Spheroid.Sway(5.0), rr = 4.0 / 3.0 * 0.05 * 1e-4;

        // k0 + kc s^2 on sections 1 - s^2: k0 + kc/5 = k2 moving across, k0 + 3 kc/7 = J turning. Sections by a midpoint rule of 2000, level -Z.
        double kc = (Spheroid.YawOverStrips(5.0) - k2) / ((3.0 / 7.0) - 0.2), k0 = k2 - (0.2 * kc);
        double AddedAt(double z) => Enumerable.Range(0, 2000).Sum(i =>
        {
            double s = ((i + 0.5) / 1000.0) - 1.0, r = 0.01 * Math.Sqrt(1.0 - (s * s));
            return Rho * (k0 + (kc * s * s)) * SectionAddedMass.Heave(-z / r) * r * r * 0.05 / 1000.0;
        });
        double handed = 0.0;
        const int steps = 4000;
        const double from = 0.012, way = 0.015;
        for (int i = 0; i < steps; i++)
        {
            // Driven down at a constant speed: what the body hands over, and what the water keeps as its motion.
            double z = from - (way * (i + 0.5) / steps);
            handed += Forces(hull, z, new Vec3(0.0, 0.0, -w)).Drag[2, 2] * w * w * (way / steps / w);
        }

        double held = 0.5 * (Forces(hull, from - way, new Vec3(0.0, 0.0, -w)).Mass[2, 2] - hull.MassKg) * w * w;
        FreeForces atRest = Forces(hull, 0.0, new Vec3(0.0, 0.0, -w)), rising = Forces(hull, 0.0, new Vec3(0.0, 0.0, w));
        return new Check(
            "N10", "A hull that goes under hands momentum to the water", "von Karman 1929, NACA TN 321 (from memory): force d(a w)/dt, half of its work stays as motion of the water",
            "40 sections on a beam that ends like a root: 1e-4 in the mass, 1e-3 in its slope; integrals over 4000 steps.",
            [
                new("added mass half immersed, rho pi/2 k2 sum of r2", "g", 1e3 * Rho * 0.5 * Math.PI * k2 * rr, 1e3 * (atRest.Mass[2, 2] - hull.MassKg), 1e-4, Tol.Relative),
                new("work on the water over the motion it keeps", "-", 2.0, handed / held, 1e-3, Tol.Relative),
                new("force going under at 0.3 m/s, from the slope of the sections' table", "N", (AddedAt(-1e-5) - AddedAt(1e-5)) / 2e-5 * w * w, atRest.Drag[2, 2] * w, 1e-3, Tol.Relative),
                new("force coming out", "N", 0.0, rising.Drag[2, 2] * w, 1e-12, Tol.Absolute),
            ]);
    }

    private static FreeForces Forces(FreeHull hull, double height, Vec3 velocity)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        var forces = new FreeForces(hull);
        forces.Set(rest with { Origin = new Vec3(0.0, 0.0, rest.Origin.Z + height), Velocity = velocity });
        return forces;
    }

    private static Vec3 Moment(FreeHull hull, double height, Vec3 velocity)
    {
        double[] f = Forces(hull, height, velocity).Force;
        return new Vec3(f[3], f[4], f[5]);
    }
}
