namespace LureSim.Scenarios.Keys;

/// <summary>The one table of words of the trade: those that are read as a word of a key, and those that only earn a hint.</summary>
internal static class Synonyms
{
    private const string Materials = "line.material|leader.material";

    /// <summary>What is read: keys, word, how else people write it. Case, blanks, hyphens, points and # do not count (see <see cref="Form"/>).</summary>
    internal static readonly (string Keys, string Word, string Spellings)[] Read =
    [
        (Materials, "nylon", "mono|monofilament|nylon mono|single strand nylon|mono nylon"),
        (Materials, "fluorocarbon", "fluoro|fc|fluor|100% fluorocarbon"),
        (Materials, "braid", "pe|braided|braided line|pe braid|braided pe"),
        (Materials, "none", "no|no leader|straight"),
        ("rod.power", "ultralight", "ul|ultra light"),
        ("rod.power", "light", "l"),
        ("rod.power", "medium-light", "ml|med light|light medium"),
        ("rod.power", "medium", "m|med|medium power"),
        ("rod.power", "medium-heavy", "mh|med heavy|med hvy|m heavy"),
        ("rod.power", "heavy", "h|hvy"),
        ("rod.power", "extra-heavy", "xh|x heavy|ex heavy|xtra heavy"),
        ("rod.action", "slow", "s"),
        ("rod.action", "moderate", "mod|medium|med|regular|reg|r|m"),
        ("rod.action", "moderate-fast", "mod fast|mf|medium fast|med fast|regular fast|rf"),
        ("rod.action", "fast", "f|fast tip|fast taper"),
        ("rod.action", "extra-fast", "xf|x fast|ex fast|xtra fast|exf"),
        ("reel.kind", "revolving", "baitcaster|baitcasting|baitcast|casting|multiplier|conventional|low profile"),
        ("reel.kind", "fixed", "spinning|spin|fixed spool|spinning reel"),
        ("reel.drag", "locked", "locked down|lock|full lock|locked drag"),
        ("reel.brake", "linear", "magnetic"),
        ("reel.brake", "quadratic", "centrifugal"),
        ("line.film|leader.film", "wetted", "wet"),
        ("leader.knot", "loop", "loop knot|free loop"),
        ("leader.knot", "fixed", "tight|tight knot|fixed knot|direct"),
        ("water.salinity", "fresh", "freshwater"),
        ("water.salinity", "sea", "salt|saltwater|seawater|ocean"),
        ("air.wind_from", "in face", "in the face|face|head on|headwind|in my face|front"),
        ("air.wind_from", "from behind", "behind|tailwind|back|from the back"),
        ("air.wind_from", "from left", "left|from the left"),
        ("air.wind_from", "from right", "right|from the right"),
        ("cast.style", "wrist-flick", "wrist|flick|wrist only"),
        ("cast.style", "one-handed", "one hand|single handed|1 hand|1 handed"),
        ("cast.style", "two-handed", "two hand|two hands|double handed|2 hand|2 hands|2 handed"),
        ("cast.effort", "gentle", "easy|soft|light"),
        ("cast.effort", "everyday", "normal|average|usual"),
        ("cast.effort", "full", "full power|max|maximum|hard"),
        ("cast.skill", "practised", "practiced|average|intermediate|normal"),
        ("cast.skill", "beginner", "novice|new"),
        ("cast.skill", "expert", "pro"),
        ("strike.style", "snap", "wrist|wrist snap|snap set|snap strike"),
        ("strike.style", "haul", "hauling|overhead|upward|both arms|hard haul"),
        ("strike.style", "sweep", "sideways|side|side sweep|sweep set|sweeping"),
        ("fish.way", "stays", "stay|still|hangs"),
        ("fish.way", "runs", "run|runs away|away|swims away"),
        ("fish.way", "comes", "come|toward|towards|comes toward me|at me|swims toward me"),
        ("fish.way", "fast", "snag|snagged|log|fixed|stuck"),
        ("cover.kind", "open", "open water|open edge|edge|clear|clear water|no|none|no plants"),
        ("cover.kind", "sparse", "scattered|thin|single plants|sparse plants|sparse weeds|light cover"),
        ("cover.kind", "mat", "mats|matted|closed mat|thick mat|weed mat|slop|pads|lily pads|weed|weeds|thick weeds|thick|heavy cover|thick cover"),
        ("lure.hooks.type", "treble", "trebles|treble hook|triple"),
        ("lure.hooks.type", "double", "double hook|doubles"),
        ("lure.hooks.type", "single", "single hook|singles"),
        ("lure.hooks.type", "ring", "rings|split ring|split rings|swivel"),
        ("lure.shape", "outline", "drawing|drawn|svg"),
        ("lure.build", "solid", "carved|full"),
        ("lure.build", "shell", "hollow|moulded|molded"),
        ("lure.material", "basswood", "lime|linden"),
        ("lure.material", "cedar", "western red cedar|red cedar"),
        ("lure.material", "pine", "white pine|eastern white pine"),
        ("lure.material", "maple", "hard maple|sugar maple|rock maple"),
        ("lure.material", "poplar", "yellow poplar|tulipwood"),
        ("lure.material", "foam", "pu foam|urethane foam|polyurethane foam"),
        ("lure.material", "pvc-board", "pvc|foamed pvc"),
        ("lure.material", "resin", "epoxy|casting resin"),
        ("lure.material", "filled-resin", "microballoons|resin with microballoons"),
        ("lure.ballast.material", "lead", "pb"),
        ("lure.ballast.material", "tungsten", "wolfram"),
        .. HookSizes(),
    ];

    /// <summary>What earns a hint only: keys, word that is meant (empty: nothing here), what people write, and why where there is no word.</summary>
    internal static readonly (string Keys, string Word, string Written, string Why)[] Words =
    [
        ("lure.shape", "hollow", "frog|hollow frog|toad|weedless|hollow weedless|hollow body|soft frog", ""),
        ("lure.shape", "cigar", "walker|stickbait|stick bait|topwater|walking bait|round|torpedo", ""),
        ("lure.shape", "drop", "teardrop|tear drop", ""),
        ("lure.shape", "", "popper|chugger|prop|propbait|prop bait|buzzbait|crawler|winged crawler", "cups, propellers and wings are not modelled"),
        ("lure.material", "", "wood|plastic|hardwood|softwood|oak|walnut|ash|cherry|spruce|fir", "name the kind, or give lure.density; luresim board finds it from a weighed piece"),
        (Materials, "braid", "polyethylene|superline|super line|plaited|brade|braide|brad", ""),
        ("lure.hooks.size", "no. 4", "3|no 3|size 3", ""),
        ("lure.hooks.size", "no. 6", "5|no 5|size 5", ""),
        ("lure.hooks.size", "no. 8", "7|no 7|size 7", ""),
        ("lure.hooks.size", "no. 10", "9|no 9|size 9|12|no 12|size 12", ""),
        ("rod.action", "slow", "parabolic|full|through", ""),
        ("strike.style", "snap", "jerk|flick|twitch|pop|quick|light", ""),
        ("strike.style", "haul", "hard|power|hammer|slam|big|strong|lift|heave", ""),
        ("strike.style", "sweep", "reel|reel set|pull|steady|lean|slow", ""),
        ("cover.kind", "sparse", "reeds|reed|grass|stems|bushes|rushes", ""),
        ("cover.kind", "", "plants|vegetation", "single plants are \"sparse\", a closed cover is a \"mat\""),
        ("cover.kind", "", "wood|timber|rocks|rock|dock|stumps|brush", "only plants are computed; a hook in wood is fish.way = \"fast\""),
        ("fish.way", "runs", "fights|fight|pulls|dives|swims", ""),
        ("leader.knot", "", "snap|swivel|clip|ring|split ring", "a snap or ring that lets the lure swing freely works as \"loop\"; add its weight to lure.mass"),
    ];

    /// <summary>Names of keys: where they were written (empty: at the top), what people write, the key or table.</summary>
    internal static readonly (string Table, string Written, string Key)[] Keys =
    [
        ("lure", "weight|mass_g|wt|grams|oz|body_weight|bodyweight", "lure.mass"),
        ("lure", "total_weight|weight_with_hooks|total_mass", "lure.mass_with_hooks"),
        ("lure", "type|body|body_shape|kind|model|style", "lure.shape"),
        ("lure", "width|thickness|breadth|girth", "lure.diameter"),
        ("lure", "size", "lure.length"),
        ("lure", "hook|trebles|treble|treble_hooks", "lure.hooks"),
        ("lure", "weights|belly_weight|lead", "lure.ballast"),
        ("lure", "eye|line_tie|tow_point|nose_eye", "lure.tie"),
        ("lure", "wood|timber|made_of|stuff", "lure.material"),
        ("lure", "svg|drawing|profile|side_view", "lure.outline"),
        ("lure", "paint|coat|coating|finish|clear_coat|lacquer", "lure.coat_thickness"),
        ("lure", "wall_thickness", "lure.wall"),
        ("lure", "construction|make", "lure.build"),
        ("rod", "weight|rod_weight", "rod.mass"),
        ("rod", "class|rating|strength|stiffness|type", "rod.power"),
        ("rod", "taper|flex|speed", "rod.action"),
        ("rod", "test_curve|load|tip_load|test", "rod.bend_load"),
        ("rod", "handle|handle_length|butt|grip_length", "rod.grip"),
        ("reel", "gear|gear_ratio|gearing|speed", "reel.ratio"),
        ("reel", "ipt|retrieve|retrieve_rate|line_per_turn", "reel.take_up"),
        ("reel", "type|style", "reel.kind"),
        ("reel", "spool|spool_size", "reel.spool_diameter"),
        ("reel", "brakes|braking", "reel.brake"),
        ("reel", "line_capacity|capacity", "reel.line_on_spool"),
        ("reel", "max_drag|drag_setting|clutch", "reel.drag"),
        ("reel", "start_up|startup|stiction|static|static_ratio|breakaway|smoothness", "reel.drag_start"),
        ("reel", "rings|guides|guide_friction|rod_friction", "reel.ring_friction"),
        ("line", "test|lb|lb_test|pound_test|rating|weight|class|lbs", "line.label"),
        ("line", "type|kind", "line.material"),
        ("line", "thickness|width|size", "line.diameter"),
        ("line", "break|breaking_strength|breaking_load|break_strength", "line.strength"),
        ("line", "pe|gou|line_number", "line.number"),
        ("leader", "test|lb|lb_test|pound_test|rating|weight|class|lbs", "leader.label"),
        ("leader", "type|kind", "leader.material"),
        ("leader", "thickness|width|size", "leader.diameter"),
        ("angler", "height", "angler.hand_height"),
        ("angler", "rod_angle|rod_height|tip_angle", "angler.rod_elevation"),
        ("retrieve", "rhythm|rate|frequency|tempo|twitches|speed", "retrieve.cadence"),
        ("retrieve", "range|length|line_out", "retrieve.distance"),
        ("retrieve", "twitch|pull|sweep|amplitude", "retrieve.stroke"),
        ("retrieve", "time", "retrieve.duration"),
        ("cast", "power|strength", "cast.effort"),
        ("strike", "range|length|line_out|out", "strike.distance"),
        ("strike", "type|kind|method|technique|hookset", "strike.style"),
        ("strike", "power|strength|force|hard", "strike.effort"),
        ("strike", "time", "strike.duration"),
        ("strike", "slack_line|loose_line", "strike.slack"),
        ("strike", "hooks|hook_points|prongs|tines", "strike.points"),
        ("strike", "penetration|penetration_force|setting_force|hook_force|set", "strike.set_force"),
        ("strike", "hold_force|hold|tear_out|tear|flesh", "strike.tear_force"),
        ("strike", "wire|wire_strength|bend_out|opening_force|hook_strength", "strike.wire_force"),
        ("strike", "knot|knots|knot_share|knot_efficiency", "strike.knot_strength"),
        ("strike", "rod|rod_strength|rod_factor", "strike.rod_limit"),
        ("strike", "speed|rod_speed", "strike.turn_speed"),
        ("strike", "start|rod_angle", "strike.start_angle"),
        ("strike", "stop|end|end_angle", "strike.stop_angle"),
        ("fish", "weight|wt|lb|lbs|kg|size", "fish.mass"),
        ("fish", "does|behaviour|behavior|moves|direction|type|kind", "fish.way"),
        ("fish", "power|strength|force|thrust|fight", "fish.pull"),
        ("fish", "top_speed|run_speed", "fish.speed"),
        ("fish", "delay|time", "fish.reaction"),
        ("fish", "drag|cda", "fish.drag_area"),
        ("fish", "height", "fish.depth"),
        ("cover", "type|plants|plant|weeds|density|thickness|vegetation|style", "cover.kind"),
        ("cover", "length|line|line_length|over|distance", "cover.line_over"),
        ("cover", "drag|drag_per_metre", "cover.line_drag"),
        ("cover", "turn|turns|stems", "cover.line_turn"),
        ("cover", "friction", "cover.line_friction"),
        ("cover", "hold|holds|pull|force", "cover.grip"),
        ("cover", "weed_mass|mass|weight|salad", "cover.weed"),
        ("cast", "drop", "cast.overhang"),
        ("water", "temp", "water.temperature"),
        ("water", "salt|type", "water.salinity"),
        ("air", "temp", "air.temperature"),
        ("air", "wind_speed|speed", "air.wind"),
        ("air", "wind_direction|direction|wind_dir", "air.wind_from"),
        ("lure.hooks", "kind", "type"),
        ("lure.hooks", "no|number", "size"),
        ("lure.ballast", "metal|type|kind", "material"),
        ("lure.hooks|lure.ballast", "weight|wt", "mass"),
        ("lure.hooks|lure.ballast", "position|place|pos", "x"),
        ("lure.hooks|lure.ballast", "height", "z"),
        ("", "name|description", "title"),
        ("", "bait|plug", "lure"),
        ("", "pole", "rod"),
        ("", "mainline|main_line", "line"),
        ("", "wind|weather", "air"),
        ("", "shock_leader|trace", "leader"),
        ("", "person|hand", "angler"),
        ("", "walk|work", "retrieve"),
        ("", "hookset|hook_set|hooking", "strike"),
        ("", "bass|predator|quarry", "fish"),
        ("", "weeds|weed|plants|vegetation|mat|mats|pads|slop|grass", "cover"),
    ];

    private static readonly Dictionary<string, Dictionary<string, string>> Spelled = Index();

    /// <summary>The word of a key that a spelling stands for, or null.</summary>
    /// <param name="key">Key.</param>
    /// <param name="text">As written.</param>
    public static string? WordOf(KeySpec key, string text) => Spelled.TryGetValue(key.Path, out Dictionary<string, string>? words) ? words.GetValueOrDefault(Form(text)) : null;

    /// <summary>The flag that a word stands for in a hint, or null.</summary>
    /// <param name="text">As written.</param>
    public static string? FlagOf(string text) => Form(text) switch
    {
        "true" or "yes" or "on" or "y" => "true",
        "false" or "no" or "off" or "n" => "false",
        _ => null,
    };

    /// <summary>The word that was probably meant, with why where there is none; null where the table knows nothing.</summary>
    /// <param name="key">Key.</param>
    /// <param name="text">As written.</param>
    public static (string Word, string Why)? MeantBy(KeySpec key, string text)
    {
        string form = Form(text);
        foreach ((string keys, string word, string written, string why) in Words)
        {
            if (Has(keys, key.Path) && written.Split('|').Any(w => Form(w) == form))
            {
                return (word, why);
            }
        }

        return null;
    }

    /// <summary>The key that was probably meant by a name in a table, or null.</summary>
    /// <param name="table">Table; empty at the top.</param>
    /// <param name="name">Name as written.</param>
    public static string? KeyOf(string table, string name)
    {
        string form = Form(name);
        foreach ((string at, string written, string key) in Keys)
        {
            if (Has(at, table) && written.Split('|').Any(w => Form(w) == form))
            {
                return key;
            }
        }

        return null;
    }

    /// <summary>A word by its letters and digits: <c>Medium Heavy</c>, <c>medium_heavy</c> and <c>medium-heavy</c> are one.</summary>
    public static string Form(string text) => string.Concat(text.Where((_, i) => Counts(text, i))).ToLowerInvariant();

    // A mark between two digits belongs to a number: "1.0" is no "10".
    private static bool Counts(string text, int i) => text[i] is not (' ' or '-' or '_' or '.' or '#' or '"' or '\'')
        || (text[i] is '-' or '.' && i > 0 && i + 1 < text.Length && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1]));

    private static Dictionary<string, Dictionary<string, string>> Index()
    {
        var index = new Dictionary<string, Dictionary<string, string>>();
        foreach ((string keys, string word, string spellings) in Read)
        {
            foreach (string path in keys.Split('|'))
            {
                Dictionary<string, string> words = index.TryGetValue(path, out Dictionary<string, string>? known) ? known : index[path] = [];
                Array.ForEach(spellings.Split('|'), s => words.Add(Form(s), word));
            }
        }

        return index;
    }

    private static bool Has(string keys, string path) => keys.Split('|').Contains(path);

    // Sizes run down to no. 1: "4", "#4", "no 4", "size 4"; then up from 1/0.
    private static IEnumerable<(string Keys, string Word, string Spellings)> HookSizes() => HookTable.Choices.Select(c =>
    {
        string size = c.Name.Replace("no. ", "", StringComparison.Ordinal);
        return ("lure.hooks.size", c.Name, $"{size}|no {size}|nr {size}|size {size}|size no {size}|number {size}");
    });
}
