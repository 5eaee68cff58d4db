using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>The pulling run of a chain or belt from crank to cam.</summary>
/// <param name="Pitch">Pitch of chain or belt.</param>
/// <param name="CrankTeeth">Teeth of the crank wheel.</param>
/// <param name="CamTeeth">Teeth of the cam wheel.</param>
/// <param name="Centres">Distance from crank axis to cam axis.</param>
public readonly record struct DriveRun(Length Pitch, int CrankTeeth, int CamTeeth, Length Centres)
{
    internal double CrankRadius => Radius(CrankTeeth);

    internal double CamRadius => Radius(CamTeeth);

    /// <summary>Length of the pulling run over both quarter wraps, mm, at a centre distance.</summary>
    internal double RunAt(double centresMm)
    {
        var step = CamRadius - CrankRadius;
        var lean = Math.Asin(step / centresMm);
        return CamRadius * (Math.PI / 2 + lean) + CrankRadius * (Math.PI / 2 - lean) + Math.Sqrt(centresMm * centresMm - step * step);
    }

    private double Radius(int teeth) => Pitch.Millimetres / (2 * Math.Sin(Math.PI / teeth));
}

/// <summary>What wear and machining do to cam timing.</summary>
public static class DriveWear
{
    /// <summary>How much later the cam comes when the chain has grown.</summary>
    /// <remarks>
    /// Formula: crank degrees late = 2·(x·L/R)·180/π with x the elongation, L the straight pulling run, R the cam wheel's pitch radius p/(2·sin(180°/z)).
    /// Units: mm, elongation as a part of one, crank degrees. Range: 0 to 5 %, two-to-one drive, pulling run taut.
    /// Errors: exact for a straight run; a curved guide makes the run longer, give its length along the guide as centres.
    /// Source: geometry; pitch radius as ISO 606 wheels have it.
    /// </remarks>
    public static Outcome<Angle> LateByStretch(DriveRun run, double elongation) => Check(run)
        .Within("elongation", elongation, 0, 0.05, "").Then(() =>
        {
            var step = run.CamRadius - run.CrankRadius;
            var straight = Math.Sqrt(run.Centres.Millimetres * run.Centres.Millimetres - step * step);
            return Angle.FromRadians(2 * elongation * straight / run.CamRadius);
        });

    /// <summary>How much later the cam comes when head or block was skimmed and the cam sits lower.</summary>
    /// <remarks>
    /// Formula: crank degrees late = 2·(S(C) − S(C − h))/R·180/π, S the pulling run with its wraps: R·(90° + γ) + r·(90° − γ) + √(C² − (R − r)²), sin γ = (R − r)/C.
    /// Units: mm, crank degrees. Range: skim 0 to 5 mm, two-to-one drive. Errors: exact for a straight run; takes the skim along the line of the axes.
    /// Source: geometry of the open belt.
    /// </remarks>
    public static Outcome<Angle> LateBySkim(DriveRun run, Length skim) => Check(run)
        .Within("skim", skim.Millimetres, 0, 5, "mm").Then(() =>
            Angle.FromRadians(2 * (run.RunAt(run.Centres.Millimetres) - run.RunAt(run.Centres.Millimetres - skim.Millimetres)) / run.CamRadius));

    private static InputCheck Check(DriveRun run)
    {
        var check = new InputCheck().Positive("pitch", run.Pitch)
            .That(run.CrankTeeth is >= 6 and <= 500, "teeth of the crank wheel", Show(run.CrankTeeth), "6 to 500", "Count the teeth of the wheel on the crank")
            .That(run.CamTeeth == 2L * run.CrankTeeth, "teeth of the cam wheel", Show(run.CamTeeth), $"twice the crank wheel's, {Show(2.0 * run.CrankTeeth)}",
                "Count again; a drive in two stages is reckoned stage by stage");
        return check.Clean
            ? check.That(run.Centres.Millimetres > run.CamRadius + run.CrankRadius + 5, "centres", $"{Show(run.Centres.Millimetres)} mm",
                $"more than both wheels' radii and the skim, {Show(run.CamRadius + run.CrankRadius + 5)} mm", "Measure from crank axis to cam axis")
            : check;
    }
}
