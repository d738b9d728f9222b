using System.Globalization;
using LureSim.Numerics;
using MathNet.Numerics.RootFinding;

namespace LureSim.Model.Lures;

/// <summary>A body at rest on the water.</summary>
/// <param name="Attitude">Height, trim, heel.</param>
/// <param name="Immersion">What is immersed.</param>
/// <param name="StableTrims">How many stable trims there are at this heel.</param>
internal sealed record FloatState(Attitude Attitude, Immersion Immersion, int StableTrims);

/// <summary>
/// Archimedes with moments: rho V = m, and the centre of buoyancy B straight under or over the centre of gravity G.
/// Trim is scanned over the whole half circle, so a body that stands upright or lies on its back is found too; of
/// several stable trims the one of least potential energy m g (zG - zB) is taken. A heel only where the body is
/// unstable without.
/// </summary>
internal static class FloatBalance
{
    /// <summary>Strips per piece of the hull of a found attitude.</summary>
    public const int Strips = 61;

    private const int ScanStrips = 21;
    private const double AngleTolerance = 1e-10;

    // A scan asks for signs alone: its 21 strips err by more than this.
    private const int ScanHalvings = 9;
    private const double ScanVolume = 1e-6, FineVolume = 1e-12;

    /// <summary>Finds the floating attitude.</summary>
    /// <param name="body">Body.</param>
    /// <exception cref="ArgumentException">The body is heavier than all the water it can displace: it sinks.</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static FloatState Solve(FloatingBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        DemandFloat(body);

        // A tail-heavy body that leans over its back has its trim beyond 90 deg: below 90 deg when seen turned over.
        FloatState state = BestTrim(body, 0.0) ?? TrimOrThrow(body, Math.PI);
        for (int round = 0; round < 40; round++)
        {
            double next = StableHeel(body, state);
            if (Math.Abs(next - state.Attitude.HeelRad) < 1e-7)
            {
                return state;
            }

            state = TrimOrThrow(body, next);
        }

        throw new ModelException("float: trim and heel do not settle on one attitude.", 0.0);
    }

    /// <summary>Height at which the body displaces its weight, at a given trim and heel.</summary>
    /// <param name="body">Body that floats.</param>
    /// <param name="trimRad">theta, rad.</param>
    /// <param name="heelRad">phi, rad.</param>
    /// <param name="strips">Strips per piece of the hull.</param>
    /// <param name="firstGuessM">Height of the body's origin to start from, m.</param>
    /// <exception cref="ModelException">No height displaces the weight (the body sinks).</exception>
    public static FloatState Heave(
        FloatingBody body, double trimRad, double heelRad, int strips = Strips, double firstGuessM = 0.0)
    {
        ArgumentNullException.ThrowIfNull(body);
        return Afloat(body, trimRad, heelRad, strips, firstGuessM, HullPieces.FineHalvings, FineVolume);
    }

    private static FloatState Afloat(FloatingBody body, double trimRad, double heelRad, int strips, double firstGuessM, int halvings, double tolerance)
    {
        double wanted = body.MassKg / body.WaterDensityKgM3;
        double high = 2.0 * body.Hull.LengthM;
        double low = -high;
        double height = firstGuessM;
        for (int i = 0; i < 200; i++)
        {
            var attitude = new Attitude(height, trimRad, heelRad);
            Immersion immersion = body.At(attitude, strips, halvings);
            double excess = immersion.VolumeM3 - wanted;
            if (Math.Abs(excess) <= tolerance * wanted || high - low < 1e-15 * body.Hull.LengthM)
            {
                return new FloatState(attitude, immersion, 0);
            }

            (low, high) = excess > 0.0 ? (height, high) : (low, height);
            double newton = height + (excess / immersion.WaterplaneAreaM2);
            height = newton > low && newton < high ? newton : 0.5 * (low + high);
        }

        throw new ModelException("float: no height displaces the weight.", 0.0);
    }

    /// <summary>Righting arm GZ, m: how far B lies outboard of G on the low side; positive rights the body.</summary>
    /// <param name="body">Body.</param>
    /// <param name="state">A state of <see cref="Heave"/>.</param>
    public static double RightingArmM(FloatingBody body, FloatState state) =>
        -Vec3.Dot(state.Immersion.Centre - body.CentreOfGravity, state.Attitude.Left);

    /// <summary>Metacentric height, m: zB - zG + I/V.</summary>
    /// <param name="body">Body.</param>
    /// <param name="state">State.</param>
    /// <param name="bmM">BM lengthwise or across, m.</param>
    public static double MetacentricHeightM(FloatingBody body, FloatState state, double bmM) =>
        Vec3.Dot(state.Immersion.Centre - body.CentreOfGravity, state.Attitude.Up) + bmM;

    private static double TrimArm(FloatingBody body, FloatState state) =>
        Vec3.Dot(state.Immersion.Centre - body.CentreOfGravity, state.Attitude.Forward);

    private static FloatState TrimOrThrow(FloatingBody body, double heel) => BestTrim(body, heel)
        ?? throw new ModelException("float: no stable trim between -90 and 90 deg.", 0.0);

    private static FloatState? BestTrim(FloatingBody body, double heel)
    {
        // The grid avoids 0 and +-90 deg, where symmetric bodies have roots exactly.
        double step = 5.0 * Math.PI / 180.0;
        double left = -19.14 * step;
        FloatState scan = Scan(body, left, heel, 0.0);
        double leftArm = TrimArm(body, scan), rise = 0.0;
        FloatState? best = null;
        int stable = 0;
        for (int i = 1; i <= 38; i++)
        {
            double right = left + step;

            // From one trim to the next the height moves about as it did before.
            double height = scan.Attitude.HeightM;
            scan = Scan(body, right, heel, height + rise);
            double rightArm = TrimArm(body, scan);
            rise = scan.Attitude.HeightM - height;
            if (leftArm > 0.0 && rightArm <= 0.0)
            {
                stable++;
                FloatState found = RefineTrim(body, heel, left, right);
                best = best is null || Energy(body, found) < Energy(body, best) ? found : best;
            }

            (left, leftArm) = (right, rightArm);
        }

        return best is null ? null : best with { StableTrims = stable };
    }

    private static FloatState Scan(FloatingBody body, double trim, double heel, double firstGuessM) =>
        Afloat(body, trim, heel, ScanStrips, firstGuessM, ScanHalvings, ScanVolume);

    private static FloatState RefineTrim(FloatingBody body, double heel, double left, double right)
    {
        // The scan used coarser strips, so the root may lie a hair outside its bracket.
        double height = 0.0;
        double Arm(double trim)
        {
            FloatState state = Heave(body, trim, heel, Strips, height);
            height = state.Attitude.HeightM;
            return TrimArm(body, state);
        }

        return Heave(body, Root(Arm, left - 0.01, right + 0.01), heel);
    }

    private static double Energy(FloatingBody body, FloatState state) =>
        -MetacentricHeightM(body, state, 0.0);

    private static double StableHeel(FloatingBody body, FloatState state)
    {
        double heel = state.Attitude.HeelRad;
        double gm = MetacentricHeightM(body, state, state.Immersion.BmTransM);
        if (Math.Abs(RightingArmM(body, state)) < 1e-9 * body.Hull.LengthM && gm > -1e-9)
        {
            return heel;
        }

        // On end, heel only spins the body about the vertical: it leans over in the plane a quarter turn away.
        double trim = state.Attitude.TrimRad;
        if (Math.Cos(trim) < 1e-6)
        {
            return heel + (0.5 * Math.PI);
        }

        double Arm(double phi) => RightingArmM(body, Heave(body, trim, phi));
        double step = Math.PI / 15.0;
        double left = 0.5 * step;
        double leftArm = Arm(left);
        for (int i = 1; i <= 15; i++)
        {
            double right = left + step;
            double rightArm = Arm(right);
            if (leftArm < 0.0 && rightArm >= 0.0)
            {
                return Root(Arm, left, right);
            }

            (left, leftArm) = (right, rightArm);
        }

        // Unstable at zero heel yet righted at half a scan step: a loll angle below 6 deg.
        return Root(Arm, 1e-4, 0.5 * step);
    }

    private static double Root(Func<double, double> arm, double low, double high) =>
        Brent.TryFindRoot(arm, low, high, AngleTolerance, 100, out double root)
            ? root
            : throw new ModelException("float: an attitude of balance could not be refined.", 0.0);

    private static void DemandFloat(FloatingBody body)
    {
        double most = body.At(new Attitude(-2.0 * body.Hull.LengthM, 0.0), Strips).VolumeM3;
        if (body.MassKg >= most * body.WaterDensityKgM3)
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"the lure sinks: it weighs {1e3 * body.MassKg:F1} g and can displace {1e3 * most * body.WaterDensityKgM3:F1} g of water."));
        }
    }
}
