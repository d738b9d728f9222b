using LureSim.Model.Lures;

namespace LureSim.Studies.Design;

/// <summary>What stays when a weight becomes heavier or lighter.</summary>
public enum KeptMass
{
    /// <summary>The total: the body becomes lighter by as much.</summary>
    Total,

    /// <summary>The body: the total grows by as much.</summary>
    Body,
}

/// <summary>How a lure is to float.</summary>
/// <param name="TrimRad">Angle wanted, nose up positive, rad; null: the angle that it has.</param>
/// <param name="FreeboardM">Back amidships over the water wanted, m; null: whatever follows.</param>
/// <param name="TotalKg">Mass with hooks wanted, kg; null: what it has, or what the freeboard asks for.</param>
/// <param name="Keeps">What stays; null: the body where its material is known, or a freeboard is wanted and no mass is given, else the total.</param>
/// <param name="Height">How the weight is held.</param>
public sealed record DesignWish(double? TrimRad, double? FreeboardM = null, double? TotalKg = null, KeptMass? Keeps = null, BallastHeight Height = BallastHeight.Kept)
{
    /// <summary>What stays.</summary>
    /// <param name="lure">Lure.</param>
    public KeptMass Kept(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        return Keeps ?? (lure.Build.DensityKgM3 is not null || (FreeboardM is not null && TotalKg is null) ? KeptMass.Body : KeptMass.Total);
    }
}
