namespace LureSim.Reports.Kit.Text;

/// <summary>What a number is, for people: decides its unit in either family.</summary>
public enum ShownQuantity
{
    /// <summary>A length of the lure's size, SI m: in; mm, from 1 cm on cm.</summary>
    Size,

    /// <summary>A length along the water or of line, SI m: ft; m.</summary>
    Distance,

    /// <summary>A force, SI N, as the weight that a spring scale reads: oz, from 1 lb on lb; g, from 1 kg on kg.</summary>
    Pull,

    /// <summary>A torque of the wrist, SI N m, as the weight that it would hold out at arm's reach of a rod: oz or lb at 16 in; g or kg at 40 cm.</summary>
    Torque,

    /// <summary>Speed of a lure, SI m/s: ft/s; m/s.</summary>
    Speed,

    /// <summary>Speed of the wind, SI m/s: mph; km/h.</summary>
    Wind,

    /// <summary>Mass, SI kg: oz, from 1 lb on lb; g, from 1 kg on kg.</summary>
    Mass,

    /// <summary>Energy, SI J: ft-lb; J.</summary>
    Energy,

    /// <summary>Volume, SI m3: in3; cm3.</summary>
    Volume,

    /// <summary>A pull over a time, SI N s: oz s; g s.</summary>
    Impulse,

    /// <summary>A pull per length, SI N/m: oz/in; g/cm.</summary>
    Stiffness,

    /// <summary>What it takes to turn something, SI kg m2: oz in2; kg cm2.</summary>
    Inertia,

    /// <summary>A number per length, SI 1/m: 1/ft; 1/m.</summary>
    PerDistance,
}
