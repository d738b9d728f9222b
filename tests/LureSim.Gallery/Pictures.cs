namespace LureSim.Gallery;

/// <summary>The list of pictures: what is shown, in which order, made by what.</summary>
internal static class Pictures
{
    private const string Large = "luresim retrieve scenarios/large-walker.toml", LargeOut = "out/large-walker/retrieve/";
    private const string Cast = "luresim cast scenarios/small-walker.toml", CastOut = "out/small-walker/cast/";

    private const string Mat = "luresim strike scenarios/hollow-mat.toml", MatOut = "out/hollow-mat/strike/";
    private const string Edge = "luresim strike scenarios/treble-edge.toml", EdgeOut = "out/treble-edge/strike/";

    // Scenario, model and study, each in little: short runs on a coarse line.
    private static readonly Probe Rhythms = new(
        "across_windows", "luresim check scenarios/small-walker.toml --effective", "luresim retrieve scenarios/small-walker.toml --json",
        "luresim cadence scenarios/small-walker.toml --from \"1 /s\" --to \"2 /s\" --starts 1 --warm-up \"2 s\" --twitches 8 --nodes 12 --step \"1 ms\" --json");

    /// <summary>All, in the order of the page.</summary>
    public static IReadOnlyList<Picture> All { get; } =
    [
        new(
            "walk.svg", LargeOut + "walk.svg",
            "Two twitches from above, four times slower than on the water. Watch the line: it is tight only for a moment, and the lure goes on turning in the slack after it.",
            Large),
        new(
            "pull_slack_turn.png", LargeOut + "pull_slack_turn.png",
            "Why slack matters. Read it downward: the hand pulls, the line tightens for a moment, then it falls slack, and the lure turns on by itself.",
            Large),
        new(
            "path_top.png", LargeOut + "path_top.png",
            "The lure from above where each twitch has turned it farthest: nose to the left (blue), then to the right (orange). It comes home toward the left of the picture.",
            Large),
        new(
            "side_view.png", LargeOut + "side_view.png",
            "The line is never straight: it hangs from the tip, lies on the water, and a twitch only lifts its near part before the lure feels anything.",
            Large),
        new(
            "loads.png", LargeOut + "loads.png",
            "How hard the line pulls on rod tip and nose, as a spring scale would read it, and what water and air take from it.",
            Large),
        new(
            "attitude_side.png", "out/slanted-walker/retrieve/attitude_side.png",
            "A lure that rests with its tail down, at four instants of one twitch: how far the nose comes down, whether it goes under, and how far the body rolls.",
            "luresim retrieve scenarios/slanted-walker.toml"),
        new(
            "trim_side.png", "out/large-walker/trim/trim_side.png",
            "How a lure lies in still water, with its ballast, hooks and line tie. Lay yours in a glass and compare.",
            "luresim trim scenarios/large-walker.toml"),
        new(
            "template.svg", "out/large-walker/trim/template.svg",
            "The same lure at true scale, to print and lay on a blank: holes, hangers, line tie and the water at rest. Measure the bars before you cut.",
            "luresim trim scenarios/large-walker.toml"),
        new(
            "design_before_after.png", "out/large-walker/design/design_before_after.png",
            "Where the weight goes for a lure that rests with its tail down: before and after, each at its own water.",
            "luresim design scenarios/large-walker.toml --angle \"12 deg\""),
        new(
            "design_float_map.png", "out/large-walker/design-map/design_float_map.png",
            "Every place and mass of the weight at a glance: at which angle the lure floats with it. The ring is the lure as it is.",
            "luresim design scenarios/large-walker.toml --map mass"),
        new(
            "design_tow_map.png", "out/large-walker/design-map/design_tow_map.png",
            "The same places and masses: how surely the lure comes straight when it is reeled on a tight line; below 0 it leaves the line by itself.",
            "luresim design scenarios/large-walker.toml --map mass"),
        new(
            "compare_page.png", "out/walker/compare/compare_page.png",
            "Three rods for one lure: how far they cast, at which rhythms the lure walks, what hangs in the hand, and whether you will notice any of it.",
            "luresim start walker --mass \"1/2 oz\" --rod \"7 ft medium-heavy fast\" --line \"30 lb braid\" --leader \"15 in nylon\"",
            "luresim compare walker.toml --rods \"6 ft 6 in,7 ft,7 ft 4 in\""),
        new(
            "across_windows.png", "out/small-walker/cadence-across/across_windows.png",
            "Which rhythms make a small lure walk on which line. The dot is the rhythm with the most room for a hand that is not a clock. On wetted fluorocarbon "
            + "the walk below 2.1 a second does not last: it is lost later than the search looks, and the lure dives.",
            "luresim cadence scenarios/small-walker.toml --across line-film")
        {
            Probe = Rhythms,
        },
        new(
            "across_stern.png", "out/small-walker/cadence-across/across_windows.png",
            "The same lure with a weaker or stronger side force at its stern, which nobody has measured: how much of the answer rests on that guess.",
            "luresim cadence scenarios/small-walker.toml --across \"lure.stern_shedding=0,0.25,0.5,0.75,1,1.25\"")
        {
            Probe = Rhythms,
        },
        new(
            "cast_swing.png", CastOut + "cast_swing.png",
            "A cast as under a flash lamp: the rod bends, springs back, and the lure leaves before the rod is straight.",
            Cast),
        new(
            "cast_path.png", CastOut + "cast_path.png",
            "The flight of that lure with its line behind it, and where eight of ten casts come down.",
            Cast),
        new(
            "cast_brake.png", CastOut + "cast_brake.png",
            "What the brake of a turning spool costs in distance, and how many tangles it saves.",
            Cast),
        new(
            "cast_across.png", "out/small-walker/cast-across/cast_across.png",
            "Does a longer rod cast farther? Dark: where eight of ten casts land; pale: what the guesses may change. The words say whether you will notice it on the water.",
            Cast + " --across rod-length"),
        new(
            "bend_curve.png", "out/bend-test/bend/bend_curve.png",
            "A few weights hung on a rod in the shop, and the rod that fits them: how stiff it is, and how sure that is.",
            "luresim bend scenarios/bend-test.csv"),
        new(
            "strike_force.png", MatOut + "strike_force.png",
            "A hook set over a mat. Above, rod and line to scale at four moments; below, the pull on the hook. The line is tight after a tenth of a second; the pull is hardest half a second later, with the rod bent and the line stretched.",
            Mat),
        new(
            "drag_window.png", EdgeOut + "drag_window.png",
            "Trebles along an edge: drags that do not set the hook, that set it and spare everything, and that are too much. The rows below move the forces that nobody has measured.",
            Edge),
        new(
            "strike_distance.png", MatOut + "strike_distance.png",
            "What a strike brings to the hook near and far on four lines of one label, and on other rods. The band is the range of the force that sets a double, which nobody has measured.",
            Mat),
        new(
            "strike_margins.png", EdgeOut + "strike_margins.png",
            "What gives first when a treble is set: load against strength of rod, hook, hold, knot and line, with the ranges of what is guessed.",
            Edge),
        new(
            "cover.png", "out/treble-edge/cover/cover.png",
            "One person's tackle at an open edge, among single plants and over a mat: the pull on the hook against what sets it and what gives, and the drags that do. Trebles cannot be drawn over the mat, whatever the forces.",
            "luresim cover scenarios/treble-edge.toml"),
        new(
            "crawl.png", "out/hollow-mat/crawl/crawl.png",
            "A hollow lure twitched over a mat to an opening. Plants hold the line: half of the strokes never reach the lure, the others draw it a hand or two.",
            "luresim crawl scenarios/hollow-mat.toml"),
        new(
            "pool_push.png", "out/small-walker/pool/pool_push.png",
            "Push the lure along in a pool without its hooks and let go: how soon it turns aside tells how strong the force at its stern is.",
            "luresim pool scenarios/small-walker.toml --set lure.hook_drag=0"),
        new(
            "fit_bands.png", "out/pool-measured/fit/fit_bands.png",
            "What an hour in a pool tells of a lure (an invented one): pale what was known of each number before, blue what the measurements leave. Rows without blue they do not tell.",
            "luresim fit scenarios/pool-measured.csv"),
        new(
            "sayings.png", "out/sayings/sayings.png",
            "Trade sayings put to the test: each in several places over everything that is guessed. No verdict is written anywhere; a better model may turn it.",
            "luresim sayings braid-brings-more-to-the-hook lighter-spool-casts-light-lures-further locked-drag-over-mats long-rod-is-the-fishs-lever longer-rod-casts-further nylon-floats strike-is-far-below-line-strength thin-line-casts-further"),
    ];
}
