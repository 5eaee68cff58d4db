namespace Gudgeon.Engine.Building;

/// <summary>The places of one engine: its cylinders, valves, mains, heads, banks and cams, with what people call them.</summary>
internal sealed class Places
{
    private readonly EngineAnswers answers;
    private readonly int n, b, k, h, vi, ve, cams;

    public Places(EngineAnswers answers)
    {
        this.answers = answers;
        (n, b, k, h) = (Whole("n"), Whole("b"), Whole("k"), Whole("h"));
        (vi, ve, cams) = (Whole("vi"), Whole("ve"), Whole("cams"));
    }

    /// <summary>The places over which a scheme of the tables counts; empty for a plain row.</summary>
    public IReadOnlyList<Place> Over(string scheme) => scheme switch
    {
        "-" => [],
        "cyl" => [.. Count(n).Select(Cylinder)],
        "valve" => [.. Count(n).SelectMany(c => Count(vi + ve).Select(j => Valve(c, j)))],
        "valve-in" => [.. Count(n).SelectMany(c => Count(vi).Select(j => Valve(c, j) with { Before = "" }))],
        "valve-ex" => [.. Count(n).SelectMany(c => Count(ve).Select(j => Valve(c, vi + j) with { Before = "", Index = [c, j] }))],
        "main" => [.. Count(Whole("m")).Select(Main)],
        "main-half" => [.. Count(Whole("m")).SelectMany(i => Count(2).Select(half => Halved(Main(i), half)))],
        "cyl-half" => [.. Count(n).SelectMany(c => Count(2).Select(half => Halved(Cylinder(c), half)))],
        "bank" => [.. Count(b).Select(Bank)],
        "head" => [.. Count(h).Select(Head)],
        "cam" => [.. Count(cams).Select(Cam)],
        "loop" => [.. Whole("loops") == b ? Count(b).Select(Bank) : [new Place { Index = [1] }]],
        "phaser" => [.. Phasers()],
        "half" => [.. Count(2).Select(CaseHalf)],
        _ => throw new FormatException($"no place scheme '{scheme}'"),
    };

    private static Place Main(int i) => new() { Main = i, Index = [i], Behind = $"{i}" };

    /// <summary>The two shells of a bearing; split cases have no upper and lower one, so a number tells them apart.</summary>
    private Place Halved(Place place, int half) => place with
    {
        Half = half,
        Index = [.. place.Index, half],
        Behind = answers["case"] == "split" && place.Main is not null ? $"{place.Behind}.{half}" : place.Behind,
    };

    private Place Cylinder(int c) => new()
    {
        Cylinder = c,
        Bank = BankOf(c),
        Head = HeadOf(c),
        Index = [c],
        Behind = n == 1 ? "" : $"{c}",
    };

    private Place Valve(int c, int j)
    {
        var inlet = j <= vi;
        var (own, of) = inlet ? (j, vi) : (j - vi, ve);
        return Cylinder(c) with
        {
            Valve = j,
            Cam = CamOf(BankOf(c), inlet),
            Index = [c, j],
            Before = inlet ? "inlet" : "exhaust",
            Behind = (n == 1, of == 1) switch
            {
                (true, true) => "",
                (true, false) => $"{own}",
                (false, true) => $"{c}",
                _ => $"{c}.{own}",
            },
        };
    }

    private Place Bank(int i) => new()
    {
        Bank = i,
        Head = h == b ? i : null,
        Index = [i],
        Before = b == 1 ? "" : BankName(i),
        Behind = b == 1 || BankName(i).Length > 0 ? "" : $"{i}",
    };

    /// <summary>A flat engine parts between its banks; of any other the halves are only numbered.</summary>
    private Place CaseHalf(int i) => answers["layout"] == "flat"
        ? Bank(i) with { Half = i, Head = null }
        : new Place { Half = i, Index = [i], Behind = $"{i}" };

    private Place Head(int i)
    {
        if (h == b)
            return Bank(i);
        var first = Count(n).First(c => HeadOf(c) == i);
        return new Place { Head = i, Bank = BankOf(first), Cylinder = h == n ? i : null, Index = [i], Behind = $"{i}" };
    }

    private Place Cam(int i)
    {
        if (answers["vt"] is "ohv" or "sv")
            return new Place { Cam = 1, Index = [1] };
        var twin = answers["vt"] == "dohc";
        var bank = Bank(twin ? (i + 1) / 2 : i);
        var role = !twin ? "" : i % 2 == 1 ? "inlet" : "exhaust";
        return bank with { Cam = i, Index = [i], Before = $"{bank.Before} {role}".Trim() };
    }

    private IEnumerable<Place> Phasers()
    {
        var all = Over("cam");
        var turned = answers["vt"] != "dohc" || answers["vvt"] == "both"
            ? all
            : all.Where(c => c.Cam % 2 == (answers["vvt"] == "in" ? 1 : 0));
        return turned.Select((place, at) => place with { Index = [at + 1] });
    }

    private int CamOf(int bank, bool inlet) => answers["vt"] switch
    {
        "dohc" => 2 * bank - (inlet ? 1 : 0),
        "sohc" => bank,
        _ => 1,
    };

    private int BankOf(int c) => answers["numbering"] == "alternating" ? (c - 1) % b + 1 : (c - 1) / k + 1;

    /// <summary>Heads are numbered bank by bank, and along the row in each.</summary>
    private int HeadOf(int c)
    {
        if (h == b)
            return BankOf(c);
        if (h == n)
            return c;
        var bank = BankOf(c);
        var along = Count(c).Count(x => BankOf(x) == bank);
        return (bank - 1) * (k / 2) + (along + 1) / 2;
    }

    private string BankName(int i) => answers["banks"] switch
    {
        "left-right" => i == 1 ? "left" : "right",
        "right-left" => i == 1 ? "right" : "left",
        _ => "",
    };

    private static IEnumerable<int> Count(int to) => Enumerable.Range(1, to);

    private int Whole(string figure) => (int)answers.Figure(figure);
}
