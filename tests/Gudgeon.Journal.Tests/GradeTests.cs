using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal.Tests;

// Invented book of grades. Chances: normal distribution (JCGM 106:2012, 7.2, from memory): half on an edge, 0.9772 at two deviations.
public class GradeTests
{
    private static readonly GradesSet set = new("main-journal", [new("A", 49.98, 49.99), new("B", 49.99, 50.00)], "mm", "invented book");

    [Theory]
    [InlineData(49.985, 0.001, "grade A")]
    [InlineData(49.99, 0.001, "grade A (50 %) or B (50 %): too close to call")]
    [InlineData(49.992, 0.001, "grade B")]
    [InlineData(49.991, 0.001, "grade B (84 %) or A (16 %): too close to call")]
    [InlineData(49.980, 0.001, "grade A or none (50 %)")]
    [InlineData(49.970, 0.001, "no grade")]
    [InlineData(50.010, 0.001, "no grade")]
    public void Grade_follows_the_chance_of_each(double value, double u, string words) => Assert.Equal(words, GradeChooser.Of(set, value, u));

    [Theory]
    [InlineData(49.98, "grade A by the figure alone")]
    [InlineData(49.99, "grade B by the figure alone")]
    [InlineData(50.00, "no grade")]
    public void Grade_without_an_instrument_is_of_the_figure_alone(double value, string words)
    {
        Assert.Equal(words, GradeChooser.Of(set, value, null));
        Assert.Equal(words, GradeChooser.Of(set, value, 0));
    }

    [Fact]
    public void Grades_are_shown_with_the_figure_and_a_later_table_counts()
    {
        using var book = new MeasureBook();
        book.Good(new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), "49.985", "mic", 20, 20));
        Assert.Equal("", book.Assess("crank.1", "main-journal").Figures[0].Grade);
        var number = book.Good(new Tell(set)).Entries[0].Number;
        // U = 4 µm, so u = 2 µm: 5 µm from either edge are 2.5 deviations, 0.9876 within.
        Assert.Equal("grade A", book.Assess("crank.1", "main-journal").Figures[0].Grade);
        book.Good(new Tell(set with { Grades = [new("1", 49.97, 49.98), new("2", 49.98, 49.99)] }));
        Assert.Equal("grade 2", book.Assess("crank.1", "main-journal").Figures[0].Grade);
        book.Good(new StrikeOut(number + 1));
        Assert.Equal("grade A", book.Assess("crank.1", "main-journal").Figures[0].Grade);
        Assert.Equal("Size grades of main journal diameter: A 49.98 to 49.99 mm, B 49.99 to 50 mm, by invented book, page 7", (set with { Page = "7" }).Words(book.Bench).Replace('\u00a0', ' '));
    }

    [Fact]
    public void Grades_are_read_as_people_type_them()
    {
        var grades = GradeChooser.Read("A 49,980 49.990\n\ndark blue 49.990 to 50.000; 3 50.000 - 50.010", "mm", BookUnits.Metric).Value;
        Assert.Equal([new("A", 49.98, 49.99), new("dark blue", 49.99, 50), new("3", 50, 50.01)], grades);
    }

    [Fact]
    public void Grades_that_cannot_be_read_say_which_line()
    {
        Assert.Equal(
            "grade 1: met \"A 49.98\"; expected a name, the lower size and the upper. Type it as: A 85.990 86.000. grade 2, lower size: met \"x\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.",
            string.Join(' ', GradeChooser.Read("A 49.98\nB x 50", "mm", BookUnits.Metric).Refusals));
    }

    public static TheoryData<GradesSet, string> Wrong => new()
    {
        { set with { Characteristic = "nope" }, "size grades: met \"nope\"; expected a characteristic of the list. Look at its name on the Measure page." },
        { set with { Unit = "um" }, "main journal diameter: met the unit um; expected mm. Give the grades in the unit of the figure." },
        { set with { Characteristic = "crank-cracks", Unit = "look" }, "crank crack test: met size grades; expected no grades: it passes or fails by look. Say pass or fail where it is looked at." },
        { set with { Grades = [] }, "main journal diameter: met no grades; expected two or more. Type a line for each grade of the book." },
        { set with { Grades = [new("A", 1, 2)] }, "main journal diameter: met one grade; expected two or more. Type a line for each grade of the book." },
        { set with { Grades = [new("A", 1, 2), new(" ", 2, 3)] }, "main journal diameter: met a grade without a name; expected its letter, colour or number. Type the name first on its line." },
        { set with { Grades = [new("A", 1, 2), new("A", 2, 3)] }, "main journal diameter: met the grade A twice; expected each once. Take one of them out." },
        { set with { Grades = [new("A", 2, 2), new("B", 2, 3)] }, "main journal diameter: met grade A from 2 to 2 mm; expected the lower size first. Look at the book again." },
        { set with { Grades = [new("B", 2, 3), new("A", 1, 2.1)] }, "main journal diameter: met grades A and B, which overlap; expected grades that touch at most. Look at the book again." },
        { set with { Source = "" }, "main journal diameter: met grades without a source; expected the book or sheet that they come from. Say where they stand; the page too if there is one." },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Grades_that_cannot_stand_are_refused_in_four_parts(GradesSet grades, string message)
    {
        using var book = new MeasureBook();
        Assert.Equal(message, book.Refused(new Tell(grades)).Replace('\u00a0', ' '));
    }
}
