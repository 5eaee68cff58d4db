namespace Gudgeon.Capture;

/// <summary>The words of the trade that are no parts: what is done, what is found, what things lie in.</summary>
internal static class Lexicon
{
    public static readonly PhraseBook<Act> Acts = Book<Act>(
        (Act.Off, "off|out|removed|came off|come off|came out|come out|come away|came away|came free|taken off|taken out|took off|took out|pulled|pulled off|pulled out|drawn|drawn out|lifted off|lifted out|lifted|unbolted|unscrewed|whipped off|whipped out|dropped|popped out|popped off|slid out|knocked out|apart|split apart|came apart|tied up out of the way|hung out of the way|tied out of the way|tied to one side|hung to one side|moved to one side|swung aside|moved aside|hung aside|tied aside|pressed out|drifted out|extracted|stripped off|away|got off|pried off|prised off|prised out|peeled off|fished out|yanked"),
        (Act.On, "back on|back in|fitted|refitted|went on|went back on|went back in|gone on|gone back on|put back|put back on|installed|reinstalled|bolted up|bolted on|bolted back on|refit|hung back on"),
        (Act.Undo, "undone|undid|loosened|slackened|came|came undone|slacked off|backed off|cracked off|cracked loose"),
        (Act.Put, "put|moved|stored|stashed|stowed|laid|laid out|lying|sitting|standing|racked|bagged|boxed|wrapped|set aside|kept|hung|hanging|chucked|stacked|piled|propped|placed|stood|stuck in|dropped in|gone in|went in|lives|live|parked|left"),
        (Act.Part, "parted|disconnected|unplugged|unclipped|split|pulled apart|unhooked|uncoupled"),
        (Act.Cap, "caps on both ends|caps on the ends|cap on it|caps on them|caps on both|bungs in|corks in|rag in|rag stuffed in|rag stuffed into|capped|capped off|blanked|blanked off|bunged|bunged up|taped over|taped up|taped|plugged|plugged off|plugged up|stuffed|bagged over|sealed off"),
        (Act.Drain, "drained|drained off|drained out|emptied|ran out|bled out"),
        (Act.Find, "found|turned up"),
        (Act.Miss, "missing|lost|gone missing|one short|went missing|cannot find|cant find|nowhere to be found|not there|not here|vanished|disappeared|gone walkabout|mislaid|misplaced|'s gone|has gone"),
        (Act.Buy, "buy|to buy|to order|need to order|need to buy|must order|must buy|needs replacing|need replacing|wants replacing|want replacing|wants renewing|needs renewing|shopping list|on the list|needs a new|need a new|need new|needs new|wants a new|want new|wants new|get a new|get new|get some|get another|ordered|wanted|needed|new one needed|new one wanted|new ones needed|new ones wanted|one needed"),
        (Act.Mark, "marked|paint line|paint mark|paint marked|arrow|scribed|scribed line|centre punched|punched|dot punched|numbered|dab of paint|dot of paint|paint dot|etched|witness mark|scribe line|painted|line across|chalked|stamped|numbers on|numbers facing|numbers to|top dead centre|top dead center|bottom dead centre|tdc|pointing at|points at|pointing to|lined up|line up|dots on|marks on|arrows"),
        (Act.Send, "sent|sent off|gone to|gone off to|dropped off at|taken to|took to|posted|off to|at the shop|at the machine shop|at the machinist|at the machinists|at the engineer|at the grinder|gone for|away for|off for|dropped at"),
        (Act.Return, "came back|is back|are back|back from|picked up from|collected from|returned from|got back from|'s back|have come back|has come back"),
        (Act.Stay, "leaving|stays on|stay on|left on|staying on|leave|stays put|stays where it is|staying put|not taking off|leaving on|left in place|stays in|staying in|stays|staying"),
        (Act.Tighten, "torqued|tightened|torqued up|torqued down|nipped up|pulled up|done up|pinched up|torqued to|tightened to|run down"));

    public static readonly PhraseBook<(string Fault, bool Damage)> Faults = FaultBook();

    public static readonly PhraseBook<string> Fasteners = Words(
        ("bolt", "bolt|fixing|fastener|set bolt|cap bolt|flange bolt|long bolt|hex bolt|dowel bolt"),
        ("screw", "screw|set screw|setscrew|cap screw|machine screw|socket screw|grub screw|cap head|self tapper|countersunk"),
        ("stud", "stud|stood"),
        ("nut", "wing nut|gland nut|castle nut|castellated nut|nut|stiff nut|lock nut|locknut|flange nut|union nut|dome nut|jam nut"),
        ("washer", "washer|copper washer|sealing washer|crush washer|spring washer|copper|fibre washer|tab washer|lock tab|thrust plate washer"),
        ("clip", "clip|worm clip|worm drive clip|hose clip|spring clip|hose clamp|p clip|clamp|worm clamp"),
        ("banjo bolt", "banjo bolt|banjo"),
        ("spacer", "spacer|collar|sleeve nut"),
        ("split pin", "split pin|spit pin|cotter pin"));

    /// <summary>Things to put things in or on. True where a mere preposition and the word are enough to make a place.</summary>
    public static readonly PhraseBook<string> Containers = Words(
        ("bag", "bag|baggie|zip bag|freezer bag|poly bag|plastic bag|sandwich bag"), ("tray", "tray|baking tray|drip tray|seed tray|magnetic tray|magnet tray|parts tray"), ("tin", "tin|biscuit tin|bun tin|cake tin|tobacco tin|coffee tin|coffee can|soup can|bean can|sweet tin|baked bean tin"),
        ("muffin tin", "muffin tin|muffin tray|bun tray|cupcake tin"), ("tub", "tub|ice cream tub|margarine tub|butter tub|takeaway tub"), ("box", "box|shoe box|shoebox|cardboard box|toolbox|tool box|tackle box|parts box|crate|carton|plastic box"),
        ("egg box", "egg box|egg carton|eggbox"), ("shelf", "shelf|rack shelf"), ("bench", "bench|workbench|work bench"), ("corner", "corner"), ("drawer", "drawer|desk drawer|tool drawer"), ("jar", "jar|jam jar"),
        ("bucket", "bucket|pail"), ("rack", "rack|shelving|shelves"), ("cupboard", "cupboard|cabinet|locker"), ("folder", "folder|file|binder"), ("cup", "cup|mug|yogurt pot|yoghurt pot|paper cup"), ("pot", "pot|jam pot"),
        ("floor", "floor|garage floor|carpet"), ("wall", "wall"), ("window sill", "window sill|windowsill|sill"), ("card", "card|cardboard|bolt card|piece of card|cardboard template"), ("ice cube tray", "ice cube tray|ice tray|pill box|pill organiser"),
        ("boot", "boot|car boot"), ("shed", "shed|loft|attic|garage|spare room|back room|kitchen|cellar|utility room|conservatory"), ("pallet", "pallet|dolly|trolley|cradle|board|plank|wood blocks|sheet of ply|plywood"), ("envelope", "envelope"), ("bowl", "bowl|dish|saucer|parts washer|washer tank|basket|lunch box|lunchbox"), ("hook", "hook|nail|peg|pegboard|tool board"), ("trestle", "trestle|table|desk"), ("pan", "drain pan|roasting tin|roasting tray|washing up bowl"), ("bottle", "bottle|milk bottle|jerry can|jerrycan|oil can|can|drum"));

    public static readonly PhraseBook<string> Details = Words(
        ("gasket", "gasket|casket"), ("rubber", "rubber|boot|bellows|gaiter"), ("seal", "seal"), ("O-ring", "o ring|oring|rubber ring"), ("hole", "hole|bolt hole|tapped hole"), ("thread", "thread|tapping"), ("cap", "cap"), ("lug", "lug|ear"), ("flange", "flange"), ("bracket", "bracket|brackets|strut"), ("lobe", "lobe"),
        ("skirt", "skirt"), ("crown", "crown|dome"), ("face", "face|mating face|sealing face|joint face"), ("land", "land|ring land"), ("journal", "journal"), ("groove", "groove"), ("stub", "stub|stump"), ("boss", "boss"), ("bush", "bush"), ("connector", "connector|plug top|multiplug"),
        ("olive", "olive"), ("spigot", "stub pipe"), ("bearing", "bearing"), ("pulley", "pulley"), ("vane", "vane|impeller"), ("tooth", "tooth|teeth"), ("fin", "fin"), ("tang", "tang"), ("lip", "lip"), ("chamfer", "chamfer"), ("spring", "spring"), ("diaphragm", "diaphragm"), ("brush", "brush|brushes"), ("shaft", "shaft|spindle"), ("earth", "earth tag"), ("union", "union|coupling"), ("tip", "tip"), ("electrode", "electrode"), ("port", "port"), ("eye", "lifting eye|eye"));

    /// <summary>Words that carry no fact of their own.</summary>
    public static readonly HashSet<string> Fillers =
    [
        "the", "a", "an", "and", "of", "look", "looks", "seem", "seems", "feel", "feels", "feeling", "hopefully", "probably", "maybe", "i'd", "them all", "is", "are", "was", "were", "be", "been", "it", "'s", "'ve", "'re", "'ll", "'d", "'m", "i", "we", "they", "them", "this", "that", "these", "those", "right", "ok", "okay", "so", "well", "um", "uh", "er", "erm", "now", "then", "just", "all", "too", "also", "has", "have", "had", "got", "get", "with", "to", "in", "into", "on", "at", "by", "for", "from", "my", "its", "their", "there", "here", "did", "do", "does", "as", "but", "plus", "still", "each", "both", "really", "actually", "anyway", "please", "yeah", "yes", "like", "looks", "bit", "quite", "very", "pretty", "finally", "at last", "eventually", "today", "straight", "nicely", "next", "last", "one", "ones", "some", "where", "which", "what", "when", "who", "will", "would", "can", "could", "me", "you", "he", "she", "us", "our", "your", "out", "off", "up", "down", "over", "back", "good", "about", "only", "already", "though", "or", "if", "because", "cos", "since", "went", "go", "gone", "come", "took", "take", "taken", "done", "note", "write", "mark", "first", "job", "put", "marked", "away", "again", "mate", "lovely", "happy", "days", "easy", "after", "more", "than", "other", "another", "any",
    ];

    private static PhraseBook<(string, bool)> FaultBook()
    {
        var book = new PhraseBook<(string, bool)>();
        void Damage(string list) => Every(list, true);
        void Sight(string list) => Every(list, false);
        void Every(string list, bool damage)
        {
            foreach (string row in list.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                int cut = row.IndexOf('=', StringComparison.Ordinal);
                foreach (string word in row[(cut + 1)..].Split('|'))
                    book.Add(word.Trim(), (row[..cut].Trim(), damage));
            }
        }

        Damage("""
            snapped=snapped|snapped off|sheared|sheared off; broken=broken|broke|broke off|in two|in half|smashed; cracked=cracked|crack|cracks|hairline; scuffed=scuffed|scuff|scuffing|scuff marks|picked up; scored=scored|score|scoring|scores|score marks|grooved|scratched|scratch; nipped up=nipped up on;
            pitted=pitted|pit|pits|pitting; chipped=chipped|chip out of; bent=bent|kinked; stripped=stripped|stripped thread|cross threaded|crossed thread; pulled=pulled thread|thread pulled|thread's pulled|thread is pulled|threads are pulled|threads pulled|pulled out the thread|threads gone|thread's gone|thread gone; rounded=rounded|rounded off|chewed up|chewed|mangled; worn=worn|flat|gone flat|flattened|worn out|wear|worn through|lipped|ridged|wear ridge|ridge; burnt=burnt|burned|burnt out;
            torn=torn|ripped|split open|split; perished=perished|gone hard|brittle|hardened; corroded=corroded|corrosion|rotten|rusted away|rusted through; galled=galled|galling; blued=blued|overheated; mushroomed=mushroomed|hammered; dented=dented|dinged|dent; nicked=nicked|gouged|gouge|notched|bruised; warped=warped; leaking=leaking|leaks|leaked|weeping|weeps|seeping;
            copper showing=down to the copper|copper showing|through to copper|showing copper|down to copper; blown=blown|blown out|blowing out; damaged=damaged|knackered|ruined|shot|toast|scrap|had it|buggered|shagged|no good|dead|beyond saving|wrecked|useless; stretched=stretched|elongated|necked|waisted; melted=melted|holed|hole in it; fretted=fretted|fretting; spun=spun|turned in its housing; delaminated=delaminated|flaking|flaked|peeling; frayed=frayed|chafed|chafed through; out of round=oval|out of round|egg shaped
            """);
        Sight("""
            oily=oily|full of oil|soaked in oil|swimming in oil|oil everywhere|oil all over|oily wet|covered in oil|oiled up; wet=wet; dry=dry|dry as a bone|bone dry; fine=fine|ok|okay|all right|alright|good as new|looks good|looking good|look good|looks fine|look fine|perfect|in good nick|like new|as new|unmarked|lovely condition|spotless|no marks|looks ok|not bad|good condition|spot on|looks new|all good|is good|are good; clean=clean; dirty=dirty|filthy|black|sooty|crusty|caked|gunged up|gummed up; rusty=rusty|rust|rusted|surface rust; stuck=stuck|stuck fast|stuck solid|will not budge|wont budge|wont shift|will not shift|jammed; seized=seized|seized solid|siezed|frozen; tight=tight|stiff; loose=loose|wobbly|only hand tight|only finger tight; coked=coked|coked up|carboned up|carbon|heavily carboned; sludge=sludge|sludged up|sludgy|mayonnaise|emulsion; metal in oil=glitter|sparkle|swarf|metal in it|filings|bit of glitter|bits of white metal|white metal|bits of metal|glittery|shiny bits; notchy=notchy|rough|gritty|grumbly|noisy; play=play|slop|sloppy|wobble; polished=polished|shiny|mirror; glazed=glazed; sealant=sealant|silicone|goo; hissing=hissing|blowing; discoloured=white|tan|brown|grey|chocolate; smooth=smooth|spins freely|free|turns freely; paint=painted over; bone=
            """.Replace("; bone=", "", StringComparison.Ordinal));
        return book;
    }

    private static PhraseBook<T> Book<T>(params (T Value, string Words)[] rows)
    {
        var book = new PhraseBook<T>();
        foreach (var (value, words) in rows)
        {
            foreach (string word in words.Split('|'))
                book.Add(word, value);
        }

        return book;
    }

    private static PhraseBook<string> Words(params (string Value, string Words)[] rows) => Book(rows);
}
