using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

/// <summary>Engines of the usual kinds, invented; each line is the answers that differ from the defaults.</summary>
internal static class NamedEngines
{
    private static readonly Dictionary<string, string> Lines = new()
    {
        ["in-line four, twin cam"] = "n=4",
        ["in-line four, pushrods, carburettors"] = "vt=ohv valves=1+1 fuel=carb m=3 opt=starter,alternator,mechpump",
        ["in-line two, splash, splayed"] = "n=2 vt=ohv valves=1+1 fuel=carb ign=magneto lube=splash cool=air cyl=barrel opt=fan",
        ["in-line three, turbo, belt"] = "n=3 drive=belt ind=turbo fuel=direct bal=1 vvt=both opt=starter,alternator,oilcooler,vacpump,aircon",
        ["in-line four, bedplate, balance shafts"] = "case=bedplate bal=2 vvt=in",
        ["in-line four, diesel, wet liners"] = "cyl=wet fuel=diesel vt=ohv valves=1+1 drive=gears ind=turbo opt=starter,alternator,oiljets,vacpump,egr",
        ["in-line five, diesel, one cam"] = "n=5 fuel=diesel vt=sohc valves=1+1 drive=belt ind=turbo opt=starter,alternator,vacpump,steering",
        ["in-line six, twin cam, dry sump"] = "n=6 lube=dry sc=2 act=finger fuel=carb ign=dist",
        ["in-line six, side valves"] = "n=6 vt=sv valves=1+1 drive=gears fuel=carb lube=wet",
        ["in-line four, shaft drive, fingers"] = "vt=sohc valves=1+1 act=finger drive=shaft fuel=carb heads=pair",
        ["in-line six, tunnel, diesel"] = "n=6 case=tunnel fuel=diesel vt=ohv valves=1+1 drive=gears cyl=wet heads=each",
        ["single, air, split case"] = "layout=single vt=sohc valves=1+1 act=rocker case=split cyl=barrel cool=air fuel=carb crk=built fw=none opt=",
        ["single, water, block"] = "layout=single valves=2+2 lube=dry sc=1 bal=1",
        ["vee two, air, pushrods"] = "layout=vee n=2 angle=45 vt=ohv valves=1+1 cyl=barrel cool=air case=split fuel=carb lube=dry pinshare=own",
        ["vee six, one cam a row, belt"] = "layout=vee n=6 angle=60 vt=sohc drive=belt ind=super",
        ["vee eight, pushrods"] = "layout=vee n=8 vt=ohv valves=1+1 lash=hydraulic fuel=port banks=left-right numbering=alternating opt=starter,alternator,steering,aircon",
        ["vee twelve, twin cam"] = "layout=vee n=12 angle=60 lube=dry sc=5 act=direct s=2 p=1",
        ["flat four, air, split case"] = "layout=flat n=4 vt=ohv valves=1+1 cyl=barrel cool=air case=split fuel=carb drive=gears heads=pair opt=starter,alternator,fan,oilcooler,mechpump",
        ["flat four, water, split case"] = "layout=flat n=4 case=split vt=dohc drive=belt ind=turbo",
        ["flat six, mixed cooling, twin plugs"] = "layout=flat n=6 cyl=barrel cool=mixed case=split vt=dohc lube=dry sc=2 p=2 ind=turbo nt=2 vvt=in opt=starter,alternator,oilcooler,oiljets,fan",
    };

    public static TheoryData<string> Names => [.. Lines.Keys];

    public static EngineAnswers Answers(string name) => FromLine(Lines[name]);

    public static EngineAnswers FromLine(string line)
    {
        var read = EngineAnswers.Read(Parse(line));
        return read.Ok ? read.Value : throw new InvalidOperationException(string.Join("\n", read.Refusals));
    }

    public static Dictionary<string, string> Parse(string line) =>
        line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split('=', 2)).ToDictionary(p => p[0], p => p[1]);

    public static EngineModel Build(string name) => Anatomy.Build(Answers(name), AnatomyTables.Own);
}
