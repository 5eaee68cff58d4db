namespace Gudgeon.Capture;

internal enum Quantity
{
    Length,
    Pressure,
    Torque,
    Mass,
    Temperature,
    Volume,
    Percent,
    Angle,
}

/// <summary>
/// Something people read off an instrument. <paramref name="Least"/> and <paramref name="Most"/> (millimetres for
/// lengths) bound what a figure can mean when its unit was not said; common practice, no source, and wide on purpose.
/// </summary>
internal sealed record Characteristic(string Name, string Kind, Quantity Quantity, decimal Least, decimal Most)
{
    /// <summary>Several cylinders are told in a row, so a first small number is a value.</summary>
    public bool Series { get; init; }

    public static readonly PhraseBook<Characteristic> Book = Build();

    /// <summary>The size of a hole, for "cylinder one mikes".</summary>
    public static Characteristic Bore { get; } = new("bore", "bore", Quantity.Length, 25, 260);

    /// <summary>What a figure before it can be of: thirty thou of wobble.</summary>
    public static readonly PhraseBook<Characteristic> Loose = BuildLoose();

    private static PhraseBook<Characteristic> BuildLoose()
    {
        var book = new PhraseBook<Characteristic>();
        foreach (string word in new[] { "play", "wobble", "slop", "movement", "rock", "shake", "float in it" })
            book.Add(word, new("play", "", Quantity.Length, 0.003m, 20));
        foreach (string word in new[] { "run out", "runout" })
            book.Add(word, new("run-out", "", Quantity.Length, 0, 3));
        foreach (string word in new[] { "end float", "endfloat", "end play" })
            book.Add(word, new("end float", "crank", Quantity.Length, 0.005m, 2));
        foreach (string word in new[] { "taper" })
            book.Add(word, new("taper", "", Quantity.Length, 0, 1));
        foreach (string word in new[] { "backlash" })
            book.Add(word, new("backlash", "", Quantity.Length, 0.005m, 2));
        foreach (string word in new[] { "out of round", "ovality", "oval" })
            book.Add(word, new("out-of-round", "", Quantity.Length, 0, 1));
        foreach (string word in new[] { "clearance", "oil clearance" })
            book.Add(word, new("clearance", "", Quantity.Length, 0.003m, 1));
        return book;
    }

    private static PhraseBook<Characteristic> Build()
    {
        var book = new PhraseBook<Characteristic>();
        void Add(string words, Characteristic what)
        {
            foreach (string word in words.Split('|'))
                book.Add(word, what);
        }

        Add("bore|boar|bores", new("bore", "bore", Quantity.Length, 25, 260));
        Add("main journal|main|mains", new("main journal", "crank", Quantity.Length, 15, 160));
        Add("big end journal|big end|crankpin|crank pin|rod journal|big end pin|pins|crankpins", new("big-end journal", "crank", Quantity.Length, 12, 140));
        Add("journal|journey", new("journal", "crank", Quantity.Length, 12, 160));
        Add("piston|skirt|piston skirt|pistol", new("piston diameter", "piston", Quantity.Length, 24.5m, 260));
        Add("end float|end play|crank end float|crank float|crankshaft end float|endfloat|endplay|float|thrust|thrust clearance|thrusts", new("end float", "crank", Quantity.Length, 0.005m, 2));
        Add("cam end float|camshaft end float|cam float|cam end play", new("end float", "cam", Quantity.Length, 0.005m, 2));
        Add("ring gap|end gap|ring end gap|piston ring gap|gap in bore", new("ring gap", "ring-comp", Quantity.Length, 0.05m, 4));
        Add("top ring gap|top gap|top ring end gap", new("top ring gap", "ring-comp", Quantity.Length, 0.05m, 4));
        Add("second ring gap|second gap", new("second ring gap", "ring-comp", Quantity.Length, 0.05m, 4));
        Add("oil ring gap", new("oil ring gap", "ring-oil", Quantity.Length, 0.05m, 4));
        Add("plug gap|plugs gapped at|gapped at|gapped to|gapped", new("plug gap", "plug", Quantity.Length, 0.2m, 2));
        Add("deck|deck height|deck clearance|piston height", new("deck height", "piston", Quantity.Length, 0, 6));
        Add("inlet gap|inlet clearance|inlet lash|intake gap|intake lash|intake clearance|inlet valve clearance|inlet tappet", new("valve clearance", "valve-in", Quantity.Length, 0.01m, 1.5m) { Series = true });
        Add("exhaust gap|exhaust clearance|exhaust lash|exhaust valve clearance|exhaust tappet", new("valve clearance", "valve-ex", Quantity.Length, 0.01m, 1.5m) { Series = true });
        Add("valve clearance|valve gap|valve lash|tappet gap|tappet clearance|lash", new("valve clearance", "", Quantity.Length, 0.01m, 1.5m) { Series = true });
        Add("leak down|leakdown|leak down test|league down|leakage", new("leak-down", "cylinder", Quantity.Pressure, 5, 200));
        Add("compression|compressions|comp", new("compression", "cylinder", Quantity.Pressure, 2, 700) { Series = true });
        Add("oil pressure", new("oil pressure", "", Quantity.Pressure, 0.1m, 150));
        Add("flatness|warp|warpage", new("flatness", "head", Quantity.Length, 0, 2));
        Add("run out|runout", new("run-out", "", Quantity.Length, 0, 3));
        Add("taper", new("taper", "", Quantity.Length, 0, 1));
        Add("ovality|out of round", new("out-of-round", "", Quantity.Length, 0, 1));
        Add("clearance|strip in|strip on|plastic strip|oil clearance|running clearance|bearing clearance|plastic gauge|big end clearance|main clearance|piston clearance|piston to bore", new("clearance", "", Quantity.Length, 0.003m, 1));
        Add("stem clearance|guide clearance", new("guide clearance", "", Quantity.Length, 0.003m, 1));
        Add("side clearance|side play|rod side clearance|groove clearance", new("side clearance", "", Quantity.Length, 0.01m, 2));
        Add("backlash", new("backlash", "", Quantity.Length, 0.005m, 2));
        Add("protrusion|stand out|stick out|liner protrusion|liner height|stand proud|stands proud|standing proud|proud|sticks up|stick up|stands up", new("protrusion", "liner", Quantity.Length, -0.5m, 2));
        Add("squish|quench", new("squish", "piston", Quantity.Length, 0.3m, 5));
        Add("free length|spring length|free height|spring free length", new("free length", "spring", Quantity.Length, 15, 120));
        Add("fitted height|installed height|spring height", new("fitted height", "spring", Quantity.Length, 15, 100));
        Add("spring rate|spring load|seat load", new("spring load", "spring", Quantity.Mass, 5, 200));
        Add("lobe height|cam lift|lobe lift|lift", new("lobe", "cam", Quantity.Length, 3, 70));
        Add("stem|valve stem|stem diameter", new("valve stem", "", Quantity.Length, 4, 14));
        Add("gudgeon pin diameter|pin diameter|wrist pin diameter|gudgeon|gudgeon pin", new("gudgeon pin diameter", "gudgeon", Quantity.Length, 8, 60));
        Add("thickness|shim thickness|shell thickness|shim", new("thickness", "", Quantity.Length, 0.3m, 30));
        Add("head height|head thickness", new("head height", "head", Quantity.Length, 40, 250));
        Add("chamber|chamber volume|combustion chamber", new("chamber volume", "head", Quantity.Volume, 3, 500) { Series = true });
        Add("weight|mass|weighs|weighed|weigh|weighing|weighed in", new("mass", "", Quantity.Mass, 1, 100000) { Series = true });
        return book;
    }
}
