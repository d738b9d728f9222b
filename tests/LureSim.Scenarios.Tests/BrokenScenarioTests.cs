namespace LureSim.Scenarios.Tests;

/// <summary>Each broken scenario gives exactly its lines: place, key, what is wrong, what is allowed, what was meant.</summary>
public class BrokenScenarioTests
{
    private const string LengthDue = "a length is due in m, cm, mm, ft, in or yd, for example \"7 ft 6 in\" or \"2.1 m\"";
    private const string MassDue = "a mass is due in oz, lb, g, kg or mg, for example \"5/8 oz\" or \"18 g\"";
    public static TheoryData<string, string, string, string> OneFault => new()
    {
        { "unknown key", "power = \"medium-heavy\"", "power = \"medium-heavy\"\nacton = \"fast\"", "s.toml(4,1): rod.acton: unknown key; did you mean rod.action?" },
        { "unknown table", "[line]", "[rood]\nmass = \"4 oz\"\n[line]", "s.toml(4,2): rood: unknown key; did you mean rod?" },
        { "nothing near", "[line]", "[line]\nqqqqqqqqqqqqqqqqq = 1", "s.toml(5,1): line.qqqqqqqqqqqqqqqqq: unknown key; keys of line: material, label, number, diameter, film, density, packing, modulus, damping_time, strength, drag_factor, tangential_drag" },
        { "missing key", "mass = \"18 g\"", "", $"s.toml(7,2): lure.mass: missing; {MassDue}" },
        { "missing word", "shape = \"cigar\"", "", "s.toml(7,2): lure.shape: missing; allowed: cigar, pencil, drop, spheroid, hollow, stations, outline" },
        { "no size of line", "label = \"50 lb\"", "", "s.toml(4,2): line.label: missing; one of line.label, line.number and line.diameter is due" },
        { "wrong unit", "\"7 ft\"", "\"7 lb\"", $"s.toml(2,10): rod.length: \"7 lb\": \"lb\" does not fit here; {LengthDue}" },
        { "decimal comma", "\"7 ft\"", "\"2,1 m\"", "s.toml(2,10): rod.length: \"2,1 m\": it has a comma; the decimal mark is a point and there are no thousands marks; did you mean \"2.1 m\"?" },
        { "bare number", "\"7 ft\"", "2.1", "s.toml(2,10): rod.length: 2.1 has no unit; did you mean \"2.1 m\"?" },
        { "bare number in quotes", "\"7 ft\"", "\"2.1\"", "s.toml(2,10): rod.length: \"2.1\": it has no unit; did you mean \"2.1 m\"?" },
        { "negative mass", "\"18 g\"", "\"-18 g\"", "s.toml(11,8): lure.mass: \"-18 g\" is out of range; allowed: 0.1 to 1000 g; did you mean \"18 g\"?" },
        { "out of range", "\"7 ft\"", "\"70 ft\"", "s.toml(2,10): rod.length: \"70 ft\" is out of range; allowed: 3.94 to 14.7 ft; did you mean \"70 in\"?" },
        { "NaN", "\"18 g\"", "\"nan g\"", $"s.toml(11,8): lure.mass: \"nan g\": it is not a finite number; {MassDue}" },
        { "NaN as a number", "\"18 g\"", "nan", $"s.toml(11,8): lure.mass: not a finite number; {MassDue}" },
        { "wrong kind", "\"18 g\"", "[1]", $"s.toml(11,8): lure.mass: a list; {MassDue}" },
        { "date", "\"18 g\"", "2020-01-01", $"s.toml(11,8): lure.mass: a date; {MassDue}" },
        { "unknown word", "\"cigar\"", "\"cigr\"", "s.toml(8,9): lure.shape: \"cigr\" is not known; allowed: cigar, pencil, drop, spheroid, hollow, stations, outline; did you mean \"cigar\"?" },
        { "unknown class", "\"medium-heavy\"", "\"medium-hevy\"", "s.toml(3,9): rod.power: \"medium-hevy\" is not known; allowed: ultralight, light, medium-light, medium, medium-heavy, heavy, extra-heavy; did you mean \"medium-heavy\"?" },
        { "duplicate key", "label = \"50 lb\"", "label = \"50 lb\"\nlabel = \"30 lb\"", "s.toml(7,1): line.label: given twice; first in line 6; a key may stand once" },
        { "duplicate table", "[lure]", "[rod]\n[lure]", "s.toml(7,2): rod: given twice; first in line 1; a key may stand once" },
        { "table for a value", "\"7 ft\"", "{ x = 1 }", $"s.toml(2,10): rod.length: a table; {LengthDue}" },
        { "value for a table", "[rod]", "air = 3\n[rod]", "s.toml(1,7): air: a bare number; a table [air] is due, or the name of a parts file in quotes" },
        { "no quotes", "\"7 ft\"", "7 ft", "s.toml(2,10): rod.length: values with units and words stand in quotes; write length = \"7 ft\"" },
        { "heavier than its water", "\"18 g\"", "\"40 g\"", "s.toml(11,8): lure.mass: 40 g to carry, hooks included, but the body displaces at most 28.39 g of water: it would sink; a surface lure must be lighter than its volume of water (a cast minds no sinking lure)" },
        { "braid number on nylon", "\"braid\"\nlabel = \"50 lb\"", "\"nylon\"\nnumber = \"PE 3\"", "s.toml(6,10): line.number: \"PE 3\" is a braid number, by mass; line.material is nylon: its numbers go by diameter, for example \"no. 3\"" },
        { "contradictory line", "label = \"50 lb\"", "label = \"50 lb\"\nnumber = \"PE 1\"", "s.toml(7,10): line.number: Contradictory line: a label of 50 lb goes with about number 4, not 1" },
        { "leader longer than the line", "[lure]", "[leader]\nmaterial = \"nylon\"\nlabel = \"20 lb\"\nlength = \"3 m\"\n[retrieve]\ndistance = \"2 m\"\n[lure]", "s.toml(10,10): leader.length: 118.1 in is longer than the line that is out; it must be shorter than retrieve.distance, 2 m" },
        { "leader without length", "[lure]", "[leader]\nmaterial = \"nylon\"\nlabel = \"20 lb\"\n[lure]", $"s.toml(7,2): leader.length: missing; {LengthDue}" },
        { "grip longer than the rod", "\"7 ft\"", "\"6 ft\"\ngrip = \"1.5 m\"", "s.toml(3,8): rod.grip: a grip of 59.06 in leaves 1.079 ft of a rod of 6 ft; at least 1.64 ft must be free" },
        { "rod tip under water", "[lure]", "[angler]\nrod_elevation = \"-60 deg\"\n[lure]", "s.toml(8,17): angler.rod_elevation: the rod tip would be 0.3879 m under water (hand 1.2 m up, 1.834 m of rod beyond it); with this rod and hand height more than -40.88 deg is due" },
        { "lure nearer than the tip is high", "[lure]", "[retrieve]\ndistance = \"4 m\"\nstart_sideways = \"-4 m\"\n[lure]", "s.toml(8,12): retrieve.distance: no lure on the water is that near a rod tip 0.5713 m up, 4 m to one side; more than 4.041 m is due" },
        { "more ballast than lure", "mass = \"18 g\"", "mass = \"18 g\"\nballast = [{ mass = \"19 g\", x = \"0 mm\" }]", "s.toml(12,11): lure.ballast: 19 g of ballast in a body of 18 g; lure.mass counts the ballast" },
        { "hook off the body", "mass = \"18 g\"", "mass = \"18 g\"\nhooks = [{ size = \"no. 4\", x = \"-90 mm\" }]", "s.toml(12,9): lure.hooks: x = -90 mm, z = 0 mm lies off the body; x within 80.5 mm of the middle and z within 42 mm of the axis" },
        { "hook without size", "mass = \"18 g\"", "mass = \"18 g\"\nhooks = [{ x = \"0 mm\", mass = \"1 g\" }]", "s.toml(12,10): lure.hooks[1]: incomplete; size, or mass and drag_area are due" },
        { "take-up against spool", "[lure]", "[reel]\nspool_diameter = \"34 mm\"\ntake_up = \"30 in/turn\"\n[lure]", "s.toml(9,11): reel.take_up: given beside reel.spool_diameter; give one of the two" },
        { "flag in quotes", "[lure]", "[retrieve]\nhold_distance = \"true\"\n[lure]", "s.toml(8,17): retrieve.hold_distance: a text; true or false is due, without quotes" },
        { "half a link", "power", "links = 9.5\npower", "s.toml(3,9): rod.links: \"9.5\" is not a whole number; allowed: 1 to 200" },
        { "stations without shape", "mass = \"18 g\"", "mass = \"18 g\"\nstations = []", "s.toml(12,12): lure.stations: lure.shape is \"cigar\"; stations need shape = \"stations\"" },
        { "release without unit", "[lure]", "[cast]\nrelease = \"0.3\"\n[lure]", "s.toml(8,11): cast.release: \"0.3\": it has no unit; did you mean \"0.3 s\"?" },
        { "unknown effort", "[lure]", "[cast]\neffort = \"ful\"\n[lure]", "s.toml(8,10): cast.effort: \"ful\": it does not start with a number; did you mean \"full\"?" },
        { "too much effort", "[lure]", "[cast]\neffort = 4\n[lure]", "s.toml(8,10): cast.effort: \"4\" is out of range; allowed: 0.05 to 3" },
        { "brake in the wrong unit", "[lure]", "[reel]\nmagnetic_brake = \"0.5 N m\"\n[lure]", "s.toml(8,18): reel.magnetic_brake: \"0.5 N m\": \"N m\" does not fit here; a torque over turning speed is due in N m s or uN m s, for example \"0.5 uN m s\"" },
        { "negative spool", "[lure]", "[reel]\nspool_inertia = \"-15 g cm2\"\n[lure]", "s.toml(8,17): reel.spool_inertia: \"-15 g cm2\" is out of range; allowed: 1 to 1000 g cm2; did you mean \"15 g cm2\"?" },
        { "turning speed as a speed", "[lure]", "[hands]\nspeed = \"13 m/s\"\n[lure]", "s.toml(8,9): hands.speed: \"13 m/s\": \"m/s\" does not fit here; a turning speed is due in rad/s, deg/s or rpm, for example \"13 rad/s\"" },
        { "swing that ends where it starts", "[lure]", "[hands]\nstop_angle = \"-110 deg\"\n[lure]", "s.toml(8,14): hands.stop_angle: -110 deg is hardly beyond hands.start_angle, -74.48 deg; at least -63.03 deg is due" },
        { "overhang down to the water", "[lure]", "[angler]\nhand_height = \"0.4 m\"\nrod_elevation = \"0 deg\"\n[cast]\noverhang = \"9 ft\"\n[lure]", "s.toml(11,12): cast.overhang: 108 in below the tip would hang in the water even with the rod upright; at most 84.66 in with this rod and hand height" },
        { "typing error in hands", "[lure]", "[hands]\ntorqe = \"40 N m\"\n[lure]", "s.toml(8,1): hands.torqe: unknown key; did you mean hands.torque?" },
        { "missing base", "[rod]", "base = \"none.toml\"\n[rod]", "s.toml(1,8): base: \"none.toml\": there is no such file; files are looked for beside the one that names them" },
        { "missing part", "[rod]", "air = \"none.toml\"\n[rod]", "s.toml(1,7): air: \"none.toml\": there is no such file; files are looked for beside the one that names them" },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public void One_fault_gives_one_line(string what, string line, string by, string expected)
    {
        Assert.NotEmpty(what);
        Assert.Equal(expected, string.Join('\n', Texts.Errors(Texts.With(line, by))));
    }

    [Fact]
    public void A_missing_file_is_one_line() =>
        Assert.Equal("nowhere.toml: there is no such file", Assert.Single(ScenarioSource.Read("nowhere.toml").Errors).ToString());

    [Fact]
    public void All_faults_come_at_once_in_file_order()
    {
        string text = Texts.With("\"7 ft\"", "\"7\"").Replace("\"50 lb\"", "50", StringComparison.Ordinal).Replace("mass = \"18 g\"", "mas = 1", StringComparison.Ordinal);
        string[] errors = Texts.Errors(text, "retrieve.slack=1 m", "retrieve.slck=1 m");
        Assert.Equal(
            ["s.toml(2,10): rod.length", "s.toml(6,9): line.label", "s.toml(11,1): lure.mas", "--set retrieve.slck=1 m: retrieve.slck"],
            errors.Select(e => string.Join(": ", e.Split(": ").Take(2))));
    }

    [Fact]
    public void A_scenario_with_errors_has_no_run()
    {
        ScenarioResult result = Texts.Read("");
        Assert.False(result.IsValid);
        Assert.Throws<InvalidOperationException>(result.Effective);
    }
}
