using System.Globalization;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fits;

/// <summary>Upper and lower limit deviation of a tolerance class at a size.</summary>
/// <param name="Lower">Lower deviation.</param>
/// <param name="Upper">Upper deviation.</param>
public readonly record struct Deviations(Length Lower, Length Upper);

/// <summary>
/// ISO 286 limits up to 120 mm: grades IT5 to IT9; shafts d to u, holes D to U. The tables rule: their rounding cannot be had from the formulas alone.
/// </summary>
/// <remarks>Source: ISO 286-1:2010 and ISO 286-2:2010, tables as read in two public transcriptions that agree; d and e from memory.</remarks>
public static class Iso286
{
    // Over the one, up to and including the next. Steps within a main step serve the letters r to u.
    private static readonly int[] s_ends = [3, 6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120];

    private static readonly Dictionary<int, int[]> s_grades = new()
    {
        [5] = [4, 5, 6, 8, 9, 9, 11, 11, 13, 13, 15, 15],
        [6] = [6, 8, 9, 11, 13, 13, 16, 16, 19, 19, 22, 22],
        [7] = [10, 12, 15, 18, 21, 21, 25, 25, 30, 30, 35, 35],
        [8] = [14, 18, 22, 27, 33, 33, 39, 39, 46, 46, 54, 54],
        [9] = [25, 30, 36, 43, 52, 52, 62, 62, 74, 74, 87, 87],
    };

    // Shafts: the deviation nearest the zero line, below zero for d to h (upper), above for k to u (lower).
    private static readonly Dictionary<char, int[]> s_shafts = new()
    {
        ['d'] = [-20, -30, -40, -50, -65, -65, -80, -80, -100, -100, -120, -120],
        ['e'] = [-14, -20, -25, -32, -40, -40, -50, -50, -60, -60, -72, -72],
        ['f'] = [-6, -10, -13, -16, -20, -20, -25, -25, -30, -30, -36, -36],
        ['g'] = [-2, -4, -5, -6, -7, -7, -9, -9, -10, -10, -12, -12],
        ['h'] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
        ['k'] = [0, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3],
        ['m'] = [2, 4, 6, 7, 8, 8, 9, 9, 11, 11, 13, 13],
        ['n'] = [4, 8, 10, 12, 15, 15, 17, 17, 20, 20, 23, 23],
        ['p'] = [6, 12, 15, 18, 22, 22, 26, 26, 32, 32, 37, 37],
        ['r'] = [10, 15, 19, 23, 28, 28, 34, 34, 41, 43, 51, 54],
        ['s'] = [14, 19, 23, 28, 35, 35, 43, 43, 53, 59, 71, 79],
        ['u'] = [18, 23, 28, 33, 41, 48, 60, 70, 87, 102, 124, 144],
    };

    /// <summary>Limit deviations of a shaft or a hole.</summary>
    /// <param name="nominal">Nominal size, above zero to 120 mm.</param>
    /// <param name="toleranceClass">Such as <c>g6</c> for a shaft or <c>H7</c> for a hole: the case of the letter tells which.</param>
    /// <returns>The deviations.</returns>
    /// <exception cref="ArgumentException">The class or the size is not in the tables; <see cref="Find"/> says so as a value.</exception>
    public static Deviations Of(Length nominal, string toleranceClass)
    {
        ArgumentNullException.ThrowIfNull(toleranceClass);
        Step(nominal);
        var found = Find(nominal, toleranceClass, "tolerance class");
        return found.TryGet(out var deviations) ? deviations
            : throw new ArgumentException($"The tolerance class {found.Refusals[0].Met} is not known here; expected {found.Refusals[0].Expected}. {found.Refusals[0].Remedy}.");
    }

    /// <summary>Limit deviations of a shaft or a hole that somebody typed.</summary>
    /// <param name="nominal">Nominal size.</param>
    /// <param name="toleranceClass">Such as <c>g6</c> for a shaft or <c>H7</c> for a hole.</param>
    /// <param name="where">The place, for messages.</param>
    /// <returns>The deviations, or why there are none.</returns>
    public static Outcome<Deviations> Find(Length nominal, string toleranceClass, string where)
    {
        ArgumentNullException.ThrowIfNull(toleranceClass);
        if (At(nominal) is not (>= 0 and var step))
            return Outcome.Refused<Deviations>(new Refusal(where, FormattableString.Invariant($"a size of {nominal.Millimetres:0.######} mm"), "above 0 and up to 120 mm", "Type the limits themselves"));
        var letters = toleranceClass.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        if (!int.TryParse(toleranceClass.AsSpan(letters.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var grade) || !s_grades.TryGetValue(grade, out var widths))
            return Unknown(where, toleranceClass, "a grade from 5 to 9");
        var width = widths[step];
        if (letters is "js" or "JS")
            return Outcome.Of(Micrometres(-width / 2.0, width / 2.0));
        if (letters.Length != 1 || !s_shafts.TryGetValue(char.ToLowerInvariant(letters[0]), out var deviations))
            return Unknown(where, toleranceClass, "a letter of d e f g h js k m n p r s u");
        var deviation = deviations[step];
        if (char.IsLower(letters[0]))
            return Outcome.Of(Shaft(toleranceClass, deviation, width, grade));
        var letter = letters[0];
        return letter > 'H' && grade == 5 && IsMoved(letter, grade, step)
            ? Unknown(where, toleranceClass, "grade 6 or coarser for a hole from K on")
            : Outcome.Of(Hole(letter, deviation, step, grade));
    }

    /// <summary>Width of a tolerance grade by the table.</summary>
    /// <param name="nominal">Nominal size, above zero to 120 mm.</param>
    /// <param name="grade">5 to 9.</param>
    /// <returns>The width.</returns>
    public static Length Grade(Length nominal, int grade) => s_grades.TryGetValue(grade, out var widths)
        ? Length.FromMicrometres(widths[Step(nominal)])
        : throw new ArgumentOutOfRangeException(nameof(grade), grade, "The grade must lie from 5 to 9.");

    private static Deviations Shaft(string toleranceClass, int deviation, int width, int grade) => toleranceClass[0] switch
    {
        <= 'h' => Micrometres(deviation - width, deviation),
        'k' when grade > 7 => Micrometres(0, width),
        _ => Micrometres(deviation, deviation + width),
    };

    // Holes mirror shafts; from K to N up to grade 8, and from P on up to grade 7, the mirror is moved by IT(n) − IT(n−1).
    private static Deviations Hole(char letter, int deviation, int step, int grade)
    {
        var width = s_grades[grade][step];
        if (letter <= 'H')
            return Micrometres(-deviation, -deviation + width);
        var moved = IsMoved(letter, grade, step) ? width - s_grades[grade - 1][step] : 0;
        var upper = grade > 8 && (letter == 'K' || letter == 'N' && step > 0) ? 0 : -deviation + moved;
        return Micrometres(upper - width, upper);
    }

    private static bool IsMoved(char letter, int grade, int step) => grade <= (letter <= 'N' ? 8 : 7) && step > 0;

    /// <summary>Formula value of a tolerance grade, before the rounding of the table: 7i, 10i, 16i, 25i, 40i with i = 0.45·∛D + 0.001·D.</summary>
    /// <param name="nominal">Nominal size, above zero to 120 mm.</param>
    /// <param name="grade">5 to 9.</param>
    /// <returns>The width; D is the geometric mean of the ends of the main step.</returns>
    /// <remarks>Source: ISO 286-1:1988, annex A.</remarks>
    public static Length GradeByFormula(Length nominal, int grade)
    {
        int[] main = [1, 3, 6, 10, 18, 30, 50, 80, 120];
        Step(nominal);
        var at = Array.FindIndex(main, 1, end => nominal.Millimetres <= end);
        var d = Math.Sqrt((double)main[at - 1] * main[at]);
        var factor = grade switch
        {
            5 => 7,
            6 => 10,
            7 => 16,
            8 => 25,
            9 => 40,
            _ => throw new ArgumentOutOfRangeException(nameof(grade), grade, "The grade must lie from 5 to 9."),
        };
        return Length.FromMicrometres(factor * (0.45 * Math.Cbrt(d) + 0.001 * d));
    }

    private static int At(Length nominal) => nominal.Millimetres > 0 ? Array.FindIndex(s_ends, end => nominal.Millimetres <= end) : -1;

    private static int Step(Length nominal)
    {
        var step = At(nominal);
        return step >= 0 ? step : throw new ArgumentOutOfRangeException(nameof(nominal), nominal, "The nominal size must lie above 0 and up to 120 mm.");
    }

    private static Deviations Micrometres(double lower, double upper) => new(Length.FromMicrometres(lower), Length.FromMicrometres(upper));

    private static Outcome<Deviations> Unknown(string where, string met, string expected) =>
        Outcome.Refused<Deviations>(new Refusal(where, $"\"{met}\"", expected, "Type the limits themselves"));
}
