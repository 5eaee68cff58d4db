namespace Gudgeon.Sums;

/// <summary>The way one figure was reached, complete enough to be done again by hand.</summary>
/// <param name="What">What the figure is, in the words of the trade.</param>
/// <param name="Formula">The formula, in the symbols of <paramref name="Inputs"/>.</param>
/// <param name="Inputs">What went in.</param>
/// <param name="Result">What came out.</param>
/// <param name="Source">Where the formula comes from: a standard with its clause, or "common practice, no source".</param>
/// <param name="Caution">What to beware of before acting on the figure, or null.</param>
public sealed record Working(
    string What, string Formula, IReadOnlyList<WorkingFigure> Inputs, WorkingFigure Result, string Source, string? Caution = null);

/// <summary>One figure in a <see cref="Working"/>.</summary>
/// <param name="Symbol">Its symbol in the formula.</param>
/// <param name="Meaning">What it stands for.</param>
/// <param name="Value">The value, unrounded, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit as shown; "1" for a plain number.</param>
/// <param name="StandardUncertainty">Standard uncertainty in the same unit, or null where none is known.</param>
/// <param name="AsTyped">What the person typed, when it was typed.</param>
public sealed record WorkingFigure(
    string Symbol, string Meaning, double Value, string Unit, double? StandardUncertainty = null, string? AsTyped = null);
