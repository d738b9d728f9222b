using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[lure]</c>. Places: x from the middle of the lure toward the nose, z up from its axis.</summary>
public static class LureKeys
{
    /// <summary>Keys from which the mass of the body comes.</summary>
    internal const string MassGroup = "lure mass";

    /// <summary>Keys that give sections.</summary>
    internal const string SectionGroup = "lure sections";

    private const string TieGroup = "lure tie";

    /// <summary>Body shape.</summary>
    public static readonly KeySpec Shape = new("lure.shape", QuantityKind.Choice, "", "Body shape; \"stations\" for sections given one by one, \"outline\" for a drawing.")
    {
        Required = true,
        Choices =
        [
            new("cigar", (int)LureShape.Cigar), new("pencil", (int)LureShape.Pencil), new("drop", (int)LureShape.Drop),
            new("spheroid", (int)LureShape.Spheroid), new("hollow", (int)LureShape.Hollow), new("stations", (int)LureShape.Stations),
            new("outline", (int)LureShape.Stations),
        ],
        Lens = Lens.OfSetup(s => (int)s.Lure.Shape),
    };

    /// <summary>Length.</summary>
    public static readonly KeySpec Length = new("lure.length", QuantityKind.Length, "mm", "Length of the body; due unless stations or a drawing in mm give it.")
    {
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.LengthM)),
        Lens = Lens.OfSetup(s => s.Lure.LengthM),
    };

    /// <summary>Largest breadth.</summary>
    public static readonly KeySpec Diameter = new("lure.diameter", QuantityKind.Length, "mm", "Largest breadth of the body; due unless stations or a drawing give it.")
    {
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.DiameterM)),
        Lens = Lens.OfSetup(s => s.Lure.DiameterM),
    };

    /// <summary>Largest height.</summary>
    public static readonly KeySpec Height = new("lure.height", QuantityKind.Length, "mm", "Largest height of the body; without it, the breadth.")
    {
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.HeightM)),
        Lens = Lens.OfSetup(s => s.Lure.HeightM),
    };

    /// <summary>Mass without hooks.</summary>
    public static readonly KeySpec Mass = new("lure.mass", QuantityKind.Mass, "g", "Mass of the body with its ballast, without hooks; due unless material or density give it.")
    {
        Group = MassGroup,
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.MassKg)),
        Lens = Lens.OfSetup(s => s.Lure.MassKg),
    };

    /// <summary>Mass with hooks.</summary>
    public static readonly KeySpec MassWithHooks = new("lure.mass_with_hooks", QuantityKind.Mass, "g", "Mass as sold, hooks included; instead of lure.mass.")
    {
        Low = 1e-4,
        High = 1,
        Group = MassGroup,
        Lens = Lens.OfSetup(s => s.Lure.MassKg + s.Lure.Hooks.Sum(h => h.MassKg)),
    };

    /// <summary>Line tie by word.</summary>
    public static readonly KeySpec Tie = new("lure.tie", QuantityKind.Choice, "", "Line tie: \"nose\", or a table with x and z.")
    {
        Default = "nose",
        Choices = [new("nose", 0)],
        Group = TieGroup,
    };

    /// <summary>Line tie along the lure.</summary>
    public static readonly KeySpec TieX = new("lure.tie.x", QuantityKind.Length, "mm", "Line tie from the middle toward the nose.")
    {
        Group = TieGroup,
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.TieXM)),
        Lens = Lens.OfSetup(s => s.Lure.TieXM),
    };

    /// <summary>Line tie over the axis.</summary>
    public static readonly KeySpec TieZ = new("lure.tie.z", QuantityKind.Length, "mm", "Line tie above the axis.")
    {
        Group = TieGroup,
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.TieZM)),
        Lens = Lens.OfSetup(s => s.Lure.TieZM),
    };

    /// <summary>Ballast.</summary>
    public static readonly KeySpec Ballast = new("lure.ballast", QuantityKind.List, "", "Weights in the body: list of { mass, x, z, material }.") { Items = LureItemKeys.BallastItems };

    /// <summary>Hooks.</summary>
    public static readonly KeySpec Hooks = new("lure.hooks", QuantityKind.List, "", "Hooks, rings, skirts, feathers: list of { type, size, x, z, ... } or { mass, drag_area, x, z }.")
    {
        Items = LureItemKeys.HookItems,
    };

    /// <summary>Sections.</summary>
    public static readonly KeySpec Stations = new("lure.stations", QuantityKind.List, "", "Sections from tail to nose: list of { x, breadth, height, centre }, or a CSV file.")
    {
        Items = LureItemKeys.StationItems,
        MayBeCsv = true,
        Group = SectionGroup,
    };

    /// <summary>Surface added mass.</summary>
    public static readonly KeySpec AddedMassFactor = new("lure.added_mass_factor", QuantityKind.Ratio, "", "Sway added mass at the surface over its rigid-lid value.")
    {
        Words = "water dragged along sideways by the lure",
        Default = "0.70",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.AddedMassFactor)),
        Lens = Lens.OfSetup(s => s.Lure.AddedMassFactor),
    };

    /// <summary>Cross-flow drag.</summary>
    public static readonly KeySpec CrossFlowCd = new("lure.cross_flow_cd", QuantityKind.Ratio, "", "Cd in cross-flow before the finite-length factor.")
    {
        Words = "side drag of the lure",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.CrossFlowCd)),
        Lens = Lens.OfSetup(s => s.Lure.CrossFlowCd),
    };

    /// <summary>Axial drag.</summary>
    public static readonly KeySpec AxialDragFactor = new("lure.axial_drag_factor", QuantityKind.Ratio, "", "Factor on friction and form drag along the axis (bracket for wave drag).")
    {
        Words = "drag of the lure along its axis",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.AxialDragFactor)),
        Lens = Lens.OfSetup(s => s.Lure.AxialDragFactor),
    };

    /// <summary>Form drag.</summary>
    public static readonly KeySpec FormDrag = new("lure.form_drag", QuantityKind.Ratio, "", "Form drag coefficient on the largest immersed section.")
    {
        Words = "form drag of the lure",
        Default = "0.20",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.FormDragCd)),
        Lens = Lens.OfSetup(s => s.Lure.FormDragCd),
    };

    /// <summary>Stern: strength.</summary>
    public static readonly KeySpec SternShedding = new("lure.stern_shedding", QuantityKind.Ratio, "", "Share of its cross-flow that the hull sheds at the stern; 0: ideal flow, no side force.")
    {
        Words = "side force shed at the stern",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.SternShedding)),
        Lens = Lens.OfSetup(s => s.Lure.SternShedding),
    };

    /// <summary>Stern: place.</summary>
    public static readonly KeySpec SternPlace = new("lure.stern_place", QuantityKind.Ratio, "", "Where shedding begins, in lengths behind the middle (before it when moving astern).")
    {
        Words = "place where the stern sheds",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.SternPlace)),
        Lens = Lens.OfSetup(s => s.Lure.SternPlace),
    };

    /// <summary>Nose: damping.</summary>
    public static readonly KeySpec NoseDamping = new("lure.nose_damping", QuantityKind.Ratio, "", "Damping ratio of heave and pitch by the waves that they make.")
    {
        Words = "damping of the bob by waves",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.NoseDamping)),
        Lens = Lens.OfSetup(s => s.Lure.NoseDamping, Activities.Retrieve | Activities.Pool),
    };

    /// <summary>Roll: damping.</summary>
    public static readonly KeySpec RollDamping = new("lure.roll_damping", QuantityKind.Ratio, "", "Damping of roll over that of the water's skin layer alone.")
    {
        Words = "damping of the roll",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.RollDamping)),
        Lens = Lens.OfSetup(s => s.Lure.RollDamping, Activities.Retrieve | Activities.Pool),
    };

    /// <summary>Friction: speed.</summary>
    public static readonly KeySpec FrictionSpeed = new("lure.friction_speed", QuantityKind.Speed, "m/s", "Speed at which the friction of the wetted skin is taken, the middle of a glide.")
    {
        Words = "speed for the skin friction of the lure",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.FrictionSpeedMS)),
        Lens = Lens.OfSetup(s => s.Lure.FrictionSpeedMS, Activities.Retrieve | Activities.Pool),
    };

    /// <summary>Hooks: depth.</summary>
    public static readonly KeySpec HookReach = new("lure.hook_reach", QuantityKind.Length, "mm", "Depth over which a hanging hook goes under: dry with its hanger this high over the water.")
    {
        Words = "depth over which hooks go under",
        Parameter = Parameter.Of<LureSpec>(nameof(LureSpec.HookReachM)),
        Lens = Lens.OfSetup(s => s.Lure.HookReachM, Activities.Retrieve | Activities.Rest | Activities.Pool),
    };

    /// <summary>Hooks: drag.</summary>
    public static readonly KeySpec HookDrag = new("lure.hook_drag", QuantityKind.Ratio, "", "Factor on the drag area that the size of a hook gives.")
    {
        Words = "drag of the hooks",
        Default = "1",
        Low = 0,
        High = 5,
        GuessLow = 0.6,
        GuessHigh = 1.7,
    };

    /// <summary>Hooks: drag along.</summary>
    public static readonly KeySpec HookAlong = new("lure.hook_along_share", QuantityKind.Ratio, "", "Drag of a hook of known size moved along the hull, over its drag moved across.")
    {
        Words = "drag of the hooks along the lure",
        Default = "0.7",
        Low = 0,
        High = 2,
        GuessLow = 0.4,
        GuessHigh = 1,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Shape, Length, Diameter, Height, .. LureFormKeys.OfShape, Mass, MassWithHooks, .. LureBuildKeys.All, Tie, TieX, TieZ, Ballast, Hooks, Stations, LureFormKeys.Outline, AddedMassFactor, CrossFlowCd, AxialDragFactor, FormDrag,
        SternShedding, SternPlace, NoseDamping, RollDamping, FrictionSpeed, HookReach, HookDrag, HookAlong,
        .. FlightKeys.All,
    ];
}
