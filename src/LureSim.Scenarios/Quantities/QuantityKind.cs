namespace LureSim.Scenarios.Quantities;

/// <summary>What a value in a scenario file is, and with it which units it may carry.</summary>
public enum QuantityKind
{
    /// <summary>Length, SI m.</summary>
    Length,

    /// <summary>Mass, SI kg.</summary>
    Mass,

    /// <summary>Force, SI N; lb, oz, kg and g count as the weight of that mass.</summary>
    Force,

    /// <summary>Angle, SI rad.</summary>
    Angle,

    /// <summary>Time, SI s.</summary>
    Time,

    /// <summary>Rhythm, SI 1/s.</summary>
    Frequency,

    /// <summary>Speed, SI m/s.</summary>
    Speed,

    /// <summary>Line won per handle turn, SI m.</summary>
    TakeUp,

    /// <summary>Temperature, deg C.</summary>
    Temperature,

    /// <summary>Density, SI kg/m3.</summary>
    Density,

    /// <summary>Torque, SI N m.</summary>
    Torque,

    /// <summary>Modulus, SI Pa.</summary>
    Modulus,

    /// <summary>Area, SI m2.</summary>
    Area,

    /// <summary>Salt content, g/kg.</summary>
    Salinity,

    /// <summary>Turning speed, SI rad/s.</summary>
    AngularSpeed,

    /// <summary>Moment of inertia, SI kg m2.</summary>
    Inertia,

    /// <summary>Torque over turning speed, SI N m s.</summary>
    TorquePerSpeed,

    /// <summary>Torque over turning speed squared, SI N m s2.</summary>
    TorquePerSpeedSquared,

    /// <summary>Force over length, SI N/m.</summary>
    ForcePerLength,

    /// <summary>Angle over length, SI rad/m.</summary>
    AnglePerLength,

    /// <summary>Plain number; also <c>7.1:1</c> and <c>25 %</c>.</summary>
    Ratio,

    /// <summary>Whole number.</summary>
    WholeNumber,

    /// <summary>Line number: <c>PE 3</c> (braid, by mass) or <c>no. 3</c> (strand, by diameter).</summary>
    LineNumber,

    /// <summary>One word of a list.</summary>
    Choice,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>List of tables.</summary>
    List,
}
