using Gudgeon.Sums.Metrology;

namespace Gudgeon.Sums.Tests.Metrology;

public class StudyTableTests
{
    // Cano, Moguerza and Redchuk, Six Sigma with R (2012), battery study, as a person would write it down (data and results seen).
    private const string Study = """
        part	person	minutes
        P1	A	1,27
        P1	A	0.90
        P1	A	1.09
        P2	A	1.12
        P2	A	1.09
        P2	A	1.15
        P3	A	1.73
        P3	A	1.28
        P3	A	1.77
        P1	B	1.34
        P1	B	1.32
        P1	B	1.27
        P2	B	1.24
        P2	B	1.00
        P2	B	1.14
        P3	B	1.64
        P3	B	1.65
        P3	B	1.77
        P1	C	1.09
        P1	C	1.26
        P1	C	1.09
        P2	C	1.48
        P2	C	1.15
        P2	C	1.15
        P3	C	1.64
        P3	C	1.44
        P3	C	1.68
        """;

    [Fact]
    public void Study_written_givesTheComponentsOfTheBook()
    {
        var table = StudyTable.Read(Study).Value;
        Assert.Equal(["P1", "P2", "P3"], table.Parts);
        Assert.Equal(["A", "B", "C"], table.Operators);
        Assert.True(table.SuitsRange);
        var (study, variance) = GaugeStudy.ByAnova(table.Readings);
        Assert.Equal(0.14792656, Math.Sqrt(study.Gauge), 5e-8);
        Assert.Equal(0.25365123, Math.Sqrt(study.Part), 5e-8);
        Assert.Equal(0.44619, variance.InteractionChance, 5e-6);
        Assert.Equal(2, study.DistinctCategories);
    }

    [Theory]
    [InlineData("1 A 0.29\n1 A 0.41\n1 B 0.08\n1 B 0.25", "the study: met 1 parts and 2 persons or days; expected two or more of each. Read the same two places on another day, or let another person read them.")]
    [InlineData("1 A 0.29\n2 A 0.41", "the study: met 2 parts and 1 persons or days; expected two or more of each. Read the same two places on another day, or let another person read them.")]
    [InlineData("", "the study: met 0 parts and 0 persons or days; expected two or more of each. Read the same two places on another day, or let another person read them.")]
    [InlineData("1 A 1\n1 B 1\n2 A 1\n2 B 1", "1, A: met 1 readings; expected 2, as many for every part and person. Read the missing ones, or leave the rest out. 1, B: met 1 readings; expected 2, as many for every part and person. Read the missing ones, or leave the rest out. 2, A: met 1 readings; expected 2, as many for every part and person. Read the missing ones, or leave the rest out. 2, B: met 1 readings; expected 2, as many for every part and person. Read the missing ones, or leave the rest out.")]
    [InlineData("1 A 1\n1 A 1\n1 B 1\n2 A 1\n2 A 2\n2 B 1\n2 B 1", "1, B: met 1 readings; expected 2, as many for every part and person. Read the missing ones, or leave the rest out.")]
    [InlineData("1 A 1\n1 A x", "line 2: met \"1 A x\"; expected a part, a person or day, and a figure. Mend the line; part the three with tabs or semicolons.")]
    [InlineData("1 A", "line 1: met \"1 A\"; expected a part, a person or day, and a figure. Mend the line; part the three with tabs or semicolons.")]
    public void Study_thatLacksSomething_isRefused(string text, string message) =>
        Assert.Equal(message, string.Join(' ', StudyTable.Read(text).Refusals));

    [Fact]
    public void Study_withSemicolons_keepsBlanksInNames()
    {
        var table = StudyTable.Read("front main;6 Dec;57,99\nfront main;6 Dec;57.991\nfront main;7 Dec;57.99\nfront main;7 Dec;57.99\nrear main;6 Dec;57.98\nrear main;6 Dec;57.98\nrear main;7 Dec;−1\nrear main;7 Dec;57.98").Value;
        Assert.Equal(["front main", "rear main"], table.Parts);
        Assert.Equal(-1, table.Readings[1, 1, 0]);
    }

    [Fact]
    public void Range_hasNoFactorsBeyondThree()
    {
        string Rows(int parts, int persons, int trials) => string.Join('\n', from p in Enumerable.Range(1, parts) from o in Enumerable.Range(1, persons) from t in Enumerable.Range(1, trials) select FormattableString.Invariant($"{p} {o} {p + 0.1 * t}"));
        Assert.True(StudyTable.Read(Rows(10, 3, 3)).Value.SuitsRange);
        Assert.False(StudyTable.Read(Rows(11, 2, 2)).Value.SuitsRange);
        Assert.False(StudyTable.Read(Rows(2, 4, 2)).Value.SuitsRange);
        Assert.False(StudyTable.Read(Rows(2, 2, 4)).Value.SuitsRange);
    }

    [Fact]
    public void Study_withoutScatter_hasNoEndOfSizesAndNoShare()
    {
        // By definition: where nothing scatters the gauge adds nothing.
        var (study, table) = GaugeStudy.ByAnova(new double[,,] { { { 1, 1 }, { 1, 1 } }, { { 3, 3 }, { 3, 3 } } });
        Assert.Equal((0.0, int.MaxValue), (study.GaugeShare, study.DistinctCategories));
        Assert.Equal((0.0, 0.0), (table.InteractionF, table.OperatorF));
        Assert.Equal(double.PositiveInfinity, table.PartF);
        var (none, _) = GaugeStudy.ByAnova(new double[2, 2, 2]);
        Assert.Equal(0, none.GaugeShare);
    }

    // Montgomery, Introduction to Statistical Quality Control, thermal impedance of Houf and Berman (from memory): mean squares 437.33, 19.63, 2.70, 0.51 with 9, 2, 18, 60.
    [Fact]
    public void Table_ofMeanSquares_hasItsRatios()
    {
        var table = new GaugeAnova(437.33 * 9, 9, 19.63 * 2, 2, 2.70 * 18, 18, 0.51 * 60, 60);
        Assert.Equal(437.33 / 2.70, table.PartF, 1e-9);
        Assert.Equal(19.63 / 2.70, table.OperatorF, 1e-9);
        Assert.Equal(2.70 / 0.51, table.InteractionF, 1e-9);
        Assert.True(table.InteractionChance < 0.001);
    }
}
