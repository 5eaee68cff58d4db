using Gudgeon.Capture;
using Gudgeon.Engine;

namespace Gudgeon.Tests.Capture;

/// <summary>Every listed word for every kind of part, in six plain sentences. Common practice, no source.</summary>
public class PartFrameTests
{
    [Fact]
    public void Every_word_for_every_kind_of_part_is_heard_in_six_sentences()
    {
        var models = new Dictionary<string, EngineModel>();
        var context = new EarContext { Now = Story.Now, AnyWay = true };
        var wrong = new List<string>();
        var kinds = new HashSet<string>();
        int count = 0;
        foreach (var frame in PartFrames.All())
        {
            if (!models.TryGetValue(frame.Engine, out var model))
                models[frame.Engine] = model = Story.Build(frame.Engine);
            var heard = Ear.Hear(frame.Text, model, context);
            count++;
            kinds.Add(frame.Kind);
            if (!frame.IsRight(heard))
                wrong.Add($"{frame.Kind}: {frame.Text} => {string.Join(" & ", heard.Facts.Select(f => f.Code))}{string.Concat(heard.Doubts.Select(d => $" ? {d.Question}"))}");
        }

        Assert.True(count > 4000, $"{count} sentences");
        // All but the parts of a radial engine, which the tables do not build.
        Assert.Equal(["knuckle-pin", "link-rod", "master-bearing", "master-rod"], Vocabulary.Words.Where(w => w.Sort == WordSort.Part).Select(w => w.Kind).Except(kinds).Order(StringComparer.Ordinal));
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
