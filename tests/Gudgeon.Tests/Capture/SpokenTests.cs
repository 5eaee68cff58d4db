namespace Gudgeon.Tests.Capture;

/// <summary>The sixty notes of common bench speech, each with its facts: invented, common practice, no source.</summary>
public class SpokenTests
{
    private static readonly string Path = System.IO.Path.Combine(AppContext.BaseDirectory, "Capture", "Data", "spoken.txt");

    public static TheoryData<int> Lines => [.. Story.Read(Path).Select(n => n.Line)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Spoken_note_gives_its_facts_and_no_other(int line)
    {
        var marked = Story.Mark(Path).Single(m => m.Note.Line == line);
        Assert.True(marked.Right, $"""
            {marked.Note.Text}
            missed: {string.Join(" / ", marked.Missed)}
            wrong:  {string.Join(" / ", marked.Wrong)}
            asked:  {string.Join(" / ", marked.Heard.Doubts.Select(d => d.Question))} ({marked.Note.Questions} expected)
            """);
    }

    [Fact]
    public void Spoken_there_are_sixty() => Assert.Equal(60, Lines.Count);
}
