using LureSim.Model.Bend;
using LureSim.Model.Rods;
using MathNet.Numerics.Distributions;

namespace LureSim.Model.Tests.Bend;

/// <summary>A made-up rod and the test that somebody makes with it, with reading errors or without.</summary>
/// <param name="Rod">Its free length, mass beyond the hand and tapers.</param>
/// <param name="MassKg">Mass as sold, kg.</param>
/// <param name="HandleShare">Where the weight of the handle sits, over the grip.</param>
internal sealed record MadeUpRod(RodSpec Rod, double MassKg, double HandleShare = 0.5)
{
    /// <summary>Guesses as the classes of rods have them.</summary>
    public static readonly BendGuesses Guesses = new(new(0.12, 0.55, 0.1, 0.9), new(2.5, 4.0, 2.0, 4.5), new(1.0, 2.0, 0.5, 2.5), new(0.09, 0.16, 0.02, 1.0), new(0.35, 0.6, 0.1, 1.0));

    /// <summary>A rod drawn evenly from these guesses.</summary>
    public static MadeUpRod Draw(Random random)
    {
        double Even(double low, double high) => low + ((high - low) * random.NextDouble());
        double ratio = Math.Exp(Even(Math.Log(0.12), Math.Log(0.55))), mass = Math.Exp(Even(Math.Log(0.09), Math.Log(0.16)));
        double power = Math.Exp(Even(Math.Log(1.5), Math.Log(9.0))), length = Even(1.9, 2.4);
        return new(new(length, 0.3, power, mass * Even(0.35, 0.6), ratio, Even(2.5, 4.0), Even(1.0, 2.0)), mass, Even(0.35, 0.65));
    }

    /// <summary>The test: weights as shares of the power, then what else is read.</summary>
    /// <param name="shares">Weights over the load that drops the tip by a third.</param>
    /// <param name="what">Kinds of readings.</param>
    /// <param name="errors">How well they are read.</param>
    /// <param name="random">Draws the errors; null for none.</param>
    /// <param name="fromLevel">Drops count from the level.</param>
    /// <param name="links">Links of the rod that is tested; the fit has 40.</param>
    public BendTest Test(double[] shares, ReadingKind[] what, BendErrors errors, Random? random, bool fromLevel = false, int links = 60)
    {
        double Off(double sigma) => random is null ? 0.0 : Normal.Sample(random, 0.0, sigma);
        RodTaper taper = RodTaper.FromSpec(Rod with { Links = links });
        RodChain chain = RodChain.Build(taper, links);
        double level = Off(errors.LevelRad), scale = 1.0 + Off(errors.WeightShare);
        RodShape Bent(double load) => RodStatics.Solve(chain, level, 0.0, -load * scale, RodPower.GravityMS2);
        double zero = fromLevel ? 0.0 : Bent(0.0).TipYM;
        bool Read(ReadingKind kind) => what.Contains(kind);
        BendReading[] rows = [.. shares.Select(s =>
        {
            RodShape shape = Bent(s * Rod.ThirdLoadN);
            return new BendReading(
                s * Rod.ThirdLoadN, zero - shape.TipYM + Off(errors.DropM),
                Read(ReadingKind.Angle) ? -shape.AngleRad[^1] + Off(errors.AngleRad) : null);
        })];
        const double tip = 0.05;
        RodModeSet swings = RodModes.Compute(RodChain.Build(taper, links, tip), 0.0);
        return new(
            Rod.LengthM, Rod.GripM, [.. rows], fromLevel,
            Read(ReadingKind.Mass) ? MassKg + Off(errors.MassKg) : null,
            Read(ReadingKind.Balance) ? Balance(taper) + Off(errors.BalanceM) : null,
            Read(ReadingKind.Bounce) ? [new((swings.AngularFrequency(0) / (2.0 * Math.PI)) + Off(errors.BounceHz), tip)] : [],
            null, errors);
    }

    private double Balance(RodTaper taper)
    {
        double free = Rod.MassKg / MassKg, middle = taper.MassMoment(0.0, taper.FreeLengthM, 1, 0.0) / Rod.MassKg;
        return ((1.0 - free) * HandleShare * Rod.GripM) + (free * (Rod.GripM + middle));
    }
}
