namespace Gudgeon.Capture;

/// <summary>Words that people use for parts and lines beyond the list of terms. Common practice, no source.</summary>
internal static class MoreWords
{
    /// <summary>Listed words that mean too many other things at a bench to stand for a part alone.</summary>
    public static readonly HashSet<string> TooPlain =
        new(StringComparer.OrdinalIgnoreCase) { "top", "inner", "outer", "return", "feed", "hydraulic", "biscuit", "unit", "post", "pad", "adjuster", "gasket", "inlet", "exhaust", "intake", "cylinder", "upper cover", "lower cover", "upper/lower cover", "tin", "bush", "insert", "seal", "main", "pump", "switch", "sender", "cover", "cap", "shaft", "nozzle", "rubber", "chain case", "bridge", "rail", "tube", "rotor set", "inner/outer", "left half", "right half", "slipper", "shim plate" };

    public static readonly (string Kind, string Words)[] Parts =
    [
        ("oil-pump", "pump"), ("water-pump", "pump|coolant pump"), ("rod-cap", "cap|big end cap|con rod cap|bottom end cap"), ("main-cap", "cap|mains cap"), ("cam-cap", "cap|cam shaft cap|cam bearing cap"),
        ("cam-cover", "cover|rocker box|rocker box cover|valve cover|cam box"), ("timing-cover", "cover|timing chest|timing case|timing chain cover|front case|chain case"), ("belt-cover", "cover|timing belt cover|cam belt cover"), ("inlet-manifold", "manifold|plenum|inlet plenum|inlet"), ("exhaust-manifold", "manifold|exhaust header"),
        ("case-half", "case|crank case"), ("rod-shell", "shell"), ("pickup", "oil pickup strainer|pickup strainer|oil pick up|pickup pipe|pick up pipe"), ("gearbox", "bell housing|bellhousing|clutch housing|gear box"), ("fuel-rail", "rail|injector rail"), ("chain-guide", "guide|chain rail|tensioner blade|guide blade"), ("exhaust-pipe", "exhaust|exhaust downpipe|downpipe"), ("valve-ex", "exhaust"), ("valve-in", "inlet|intake"),
        ("main-shell", "mains|main bearing|main shell"), ("rod-shell", "big end|big end bearing|bottom end shell"), ("small-bush", "small end"), ("crank", "crank shaft"), ("cam", "cam shaft"), ("oil-filter", "oil filter cartridge"), ("liner", "wet liner|dry liner"), ("thermostat", "thermostat housing|stat housing|thermostat cover|water outlet"),
        ("oil-switch", "oil pressure sender|oil light switch|oil sender"), ("distributor", "distributor cap|dizzy cap"), ("pump-cover", "oil pump cover|oil pump lid"), ("rear-housing", "rear crank seal housing|rear main housing"), ("spigot", "spigot bush"), ("jacket-drain", "block drain plug|block drain tap|block drain"),
        ("barrel", "cylinder barrel|pot"), ("piston", "pot"), ("pushrod-tube", "push rod tube|tube"), ("rocker-shaft", "rocker assembly|rocker gear|shaft"), ("bevel-shaft", "shaft"), ("ring-comp", "top ring|second ring|piston ring|ring"), ("ring-oil", "oil scraper|scraper ring"), ("coolant-pipe", "thermostat hose|stat hose|water hose"), ("starter", "starter motor"), ("loom", "engine loom|engine harness|main loom"),
        ("egr", "egr valve|recirculation valve"), ("sec-air", "air valve|secondary air pump"), ("hp-pump", "fuel pump|injector pump|high pressure fuel pump|diesel pump|pump"), ("scavenge-pump", "pump"), ("steering-pump", "power steering pump|pas pump"), ("vac-pump", "pump|brake vacuum pump"), ("lift-pump", "pump"), ("crank-sprocket", "crank gear|bottom gear|crank timing gear"), ("cam-sprocket", "cam gear|cam pulley|cam sprocket|cam wheel"),
        ("water-pump", "pump"), ("dipstick", "dipstick|dip stick|dip stick tube"), ("breather", "breather box|oil separator"), ("damper", "bottom pulley|front pulley|harmonic damper|crank damper|torsional damper"), ("mount", "engine mounting|engine mount"), ("aux-belt", "aux belt|alternator belt|serpentine|serpentine belt|poly vee belt|poly v belt"), ("fan", "cooling fan|viscous fan"), ("cowling", "fan shroud|fan cowl|fan cowling|fan housing|cooling tin|tinwork|shroud"), ("clutch-plate", "clutch disc|friction disc"), ("clutch-cover", "clutch|clutch assembly"), ("sensor", "crank sensor|cam sensor|temperature sensor|temp sensor|knock sensor|coolant sensor|crank position sensor|map sensor|oxygen sensor|lambda sensor"), ("balancer", "balance shaft|balancer shaft"), ("tensioner", "belt tensioner|chain tensioner"), ("oil-line", "oil feed pipe|oil hose|oil feed|oil return pipe"),
    ];

    public static readonly (string Kind, string Words)[] Lines =
    [
        ("l-rad-out", "top hose|top rad hose|radiator top hose|top radiator hose|upper radiator hose"), ("l-rad-in", "bottom hose|bottom rad hose|bottom radiator hose|radiator bottom hose|lower radiator hose"), ("l-bypass", "bypass hose|bypass pipe"), ("l-heat-out", "heater feed|heater hose|heater feed hose|heater supply"), ("l-heat-back", "heater return|heater hose|heater return hose"),
        ("l-degas", "expansion hose|expansion tank hose|header tank hose|degas hose|degas pipe"), ("l-fuel-feed", "fuel feed|fuel feed pipe|fuel feed hose|fuel hose|fuel line|fuel pipe|petrol pipe"), ("l-fuel-back", "fuel return|fuel return pipe|fuel return hose|return fuel line|fuel return line"), ("l-fuel-lift", "fuel pump line|fuel pump hose|fuel pump pipe|lift pump hose|lift pump pipe|pipe from the lift pump"), ("l-leak-off", "leak off|leak off pipe|leak off hose|spill pipe|spill rail"),
        ("l-hp", "injector pipe|injection pipe"), ("l-rail-cross", "rail crossover|crossover pipe|rail union|fuel crossover"), ("l-turbo-feed", "turbo oil feed|turbo feed|turbo oil feed pipe|turbo feed pipe"), ("l-turbo-drain", "turbo drain|turbo oil drain|turbo oil return|turbo drain pipe|turbo return"), ("l-turbo-water", "turbo water pipe|turbo coolant pipe|turbo water"), ("l-cooler-in", "oil cooler hose|oil cooler pipe|cooler hose|oil cooler line"), ("l-cooler-out", "oil cooler hose|oil cooler pipe|cooler hose|oil cooler line"),
        ("l-scav-in", "scavenge hose|scavenge pipe"), ("l-scav-out", "scavenge return|scavenge return hose"), ("l-tank-feed", "tank feed|oil tank feed|oil tank hose"), ("l-tank-vent", "tank vent|tank breather"), ("l-breath", "breather hose|breather pipe|crankcase breather hose"), ("v-servo", "servo hose|servo pipe|brake servo hose|brake servo pipe|booster hose"), ("v-pump", "vacuum pump hose|vacuum hose|vac hose"), ("v-advance", "advance pipe|vacuum advance|vacuum advance pipe"), ("v-gate", "wastegate hose|actuator hose|boost pipe"),
        ("a-in", "intake trunk|intake hose|air hose|intake pipe|air trunk|inlet trunk|intake duct|air duct"), ("a-charge", "charge pipe|charge hose|boost hose|intercooler hose|intercooler pipe"), ("a-cooled", "intercooler hose|cold side boost hose"), ("e-battery", "battery lead|battery cable|starter cable|starter lead"), ("e-earth", "earth strap|earth lead|ground strap|engine earth|earth cable"), ("e-alt", "alternator plug|alternator wiring|alternator lead|alternator connector|alternator wires"), ("e-coil", "coil plug|coil connector|coil pack plug"), ("e-inj", "injector plug|injector connector|injector wiring"), ("e-sensor", "sensor plug|sensor connector|crank sensor plug|cam sensor plug|temperature sensor plug|temp sensor plug|knock sensor plug"),
        ("e-switch", "oil switch wire|oil light wire|oil pressure switch wire|oil switch plug"), ("e-glow", "glow plug wire|glow plug lead|glow plug bus bar"), ("e-throttle", "throttle plug|throttle connector|throttle wiring"), ("e-ecu", "main plug|bulkhead connector|body plug|loom plug|engine plug|ecu plug"), ("x-egr", "egr pipe"), ("x-air", "air injection pipe|secondary air pipe"), ("c-ac", "aircon pipe|aircon hose|air con pipe|refrigerant line"), ("c-steer", "steering pipe|steering hose|power steering hose|power steering pipe"),
    ];

    /// <summary>Whose joint is meant when fasteners are named after another part: rod bolts hold the rod cap.</summary>
    public static readonly Dictionary<string, string> BoltsOf = new()
    {
        ["rod"] = "rod-cap",
        ["rod-shell"] = "rod-cap",
        ["main-shell"] = "main-cap",
        ["crank"] = "damper",
        ["cam"] = "cam-sprocket",
        ["head-gasket"] = "head",
        ["cylinder"] = "head",
    };

    /// <summary>Words that dictation writes for a part and that are also plain English: taken for the part only where nothing else fits.</summary>
    public static readonly HashSet<string> PlainMisheard =
        ["some", "sum", "come", "can", "not", "knot", "shall", "load", "globe", "black", "line", "seed", "stood", "shame", "shin", "top", "dual", "foul", "cab", "crab", "rocket", "racket", "basket", "collects", "loon", "dungeon", "towel", "hed", "in"];
}
