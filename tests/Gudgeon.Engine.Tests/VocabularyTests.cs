using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

public class VocabularyTests
{
    [Fact]
    public void Every_part_name_of_the_tables_is_a_word()
    {
        var missing = AnatomyTables.Own.Parts.Where(r => !Vocabulary.Of(r["id"]).Any(w => w.British == r["name"])).Select(r => $"{r["id"]}: {r["name"]}");
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_word_for_a_part_names_a_kind_of_the_tables() =>
        Assert.DoesNotContain(Vocabulary.Words, w => w.Sort == WordSort.Part && !AnatomyTables.Own.PartKinds.Contains(w.Kind));

    [Fact]
    public void No_word_is_there_twice() =>
        Assert.Empty(Vocabulary.Words.GroupBy(w => (w.Sort, w.Kind, w.British)).Where(g => g.Count() > 1).Select(g => g.Key));

    [Theory]
    [InlineData("rod cap", "rod caps")]
    [InlineData("cam bush", "cam bushes")]
    [InlineData("case half", "case halves")]
    [InlineData("sub-assembly", "sub-assemblies")]
    [InlineData("tray", "trays")]
    public void Plural_of_a_term_is_what_people_say(string one, string more) => Assert.Equal(more, Vocabulary.Plural(one));

    [Fact]
    public void Gudgeon_pin_is_a_wrist_pin_in_America()
    {
        var word = Assert.Single(Vocabulary.Of("gudgeon"));
        Assert.Equal("wrist pin", word.American);
        Assert.Contains("piston pin", word.Spoken);
        Assert.Contains("dungeon", word.Misheard);
    }
}
