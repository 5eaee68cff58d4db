namespace Gudgeon.Sums.Metrology;

/// <summary>Why a reading is asked about.</summary>
public enum SuspicionKind
{
    /// <summary>The decimal mark seems to have slipped.</summary>
    DecimalSlip,

    /// <summary>An inch among millimetres, or the other way.</summary>
    UnitSlip,

    /// <summary>One turn of the thimble misread.</summary>
    ThimbleTurn,

    /// <summary>The wrong frame or rod.</summary>
    WrongFrame,

    /// <summary>Two digits changed places.</summary>
    SwappedDigits,

    /// <summary>One digit unlike.</summary>
    WrongDigit,

    /// <summary>Unlike its neighbours.</summary>
    UnlikeNeighbours,

    /// <summary>Smaller than unworn, or larger: it cannot have grown.</summary>
    AgainstWear,

    /// <summary>Farther off than any of the above explains.</summary>
    FarOff,

    /// <summary>Far from its repeats (Grubbs).</summary>
    Outlier,

    /// <summary>Repeats farther apart than the instrument explains.</summary>
    Apart,

    /// <summary>All alike to the last digit.</summary>
    Copied,

    /// <summary>All moved by one amount against an earlier day.</summary>
    AllShifted,

    /// <summary>A clearance that cannot be.</summary>
    Impossible,
}

/// <summary>A question about a reading. It is asked at once; the reading stays as typed until the person says otherwise.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Question">The question, as a sentence.</param>
/// <param name="Suggested">What the reading would be if the suspicion holds; null when there is no telling.</param>
/// <param name="Index">Which reading, where there are several.</param>
public sealed record Suspicion(SuspicionKind Kind, string Question, double? Suggested = null, int? Index = null);
