using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Lifting;

/// <summary>An invented crane, bar and engine that several tests share.</summary>
internal static class InventedLift
{
    public static readonly CraneGeometry Crane = new(Length.Zero, Mm(1500), Length.Zero, Mm(900), Mm(400), Mm(550), Mm(950), Mm(120),
        [new(Mm(900), Kg(1000)), new(Mm(1050), Kg(857)), new(Mm(1200), Kg(750))]);

    public static readonly HangingBar Bar = new(Mm(600), Mm(400), Length.Zero, Mass.Zero, Mm(350), Mm(350));

    public static readonly MountedEngine Engine = new(
        new(Kg(180), Mass.Zero, new(280, 0, 18), default), Mm(150),
        [new("top left", 130, 100), new("top right", -130, 100), new("bottom left", 130, -100), new("bottom right", -130, -100)],
        ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value, Length.Zero, Mm(20), HoleMaterial.CastIron);

    public static readonly StandingCrane OnWheels = new(
        [new("front left", 1600, 450), new("front right", 1600, -450), new("rear right", 0, -350), new("rear left", 0, 350)], Kg(75), new(550, 0, 500), Mass.Zero, new(1750, 0, 1500), Angle.Zero, Angle.Zero);

    public static HangingLoad Load(double kg, Point3 centre) => new(Kg(kg), Mass.Zero, centre, default);

    public static Length Mm(double value) => Length.FromMillimetres(value);

    public static Mass Kg(double value) => Mass.FromKilograms(value);

    public static Force N(double value) => Force.FromNewtons(value);

    public static Angle Deg(double value) => Angle.FromDegrees(value);
}
