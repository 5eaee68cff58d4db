using Gudgeon.Planning.OpenData;

namespace Gudgeon.Planning.Tests.OpenData;

public class NetworkFileTests
{
    [Fact]
    public void NetworkFile_with_all_fields_reads_each_of_them()
    {
        var file = NetworkFile.Read("""
            { "nodes": [
                { "id": "battery", "cost_s": 300, "done": true },
                { "id": "feed", "cost_s": 120, "fluid_lines": 1, "things_off": 0, "blocked": ["no tray"] },
                { "id": "starter", "cost_s": 1200, "needs": ["battery"], "choices": [[["feed"], ["battery", "feed"]]] } ],
              "targets": ["starter"] }
            """).Value;
        Assert.Equal([2], file.Targets);
        var (battery, feed, starter) = (file.Network.Nodes[0], file.Network.Nodes[1], file.Network.Nodes[2]);
        Assert.True(battery.IsDone);
        Assert.Equal((120, 1, 0, "no tray"), (feed.CostSeconds, feed.FluidLines, feed.ThingsOff, feed.Blocks.Single().Reason));
        Assert.Equal(0, starter.Needs.Single().Node);
        Assert.Equal([[1], [0, 1]], starter.Choices.Single().Alternatives.Select(way => way.ToArray()));
    }

    [Theory]
    [InlineData("{", "network file, line 1: met text that is not JSON; expected an object with \"nodes\". Check the brackets and quotes near that line.")]
    [InlineData("[]", "network file: met no list called nodes; expected an object with a list \"nodes\". Add it.")]
    [InlineData("""{"nodes":[{"cost_s":1}]}""", "network file, nodes[0]: met no id; expected a text \"id\". Give every node an id.")]
    [InlineData("""{"nodes":[{"id":"a"}]}""", "network file, nodes[0]: met no cost_s; expected a whole number of seconds. Add \"cost_s\", 0 if it takes no time.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1.5}]}""", "network file, nodes[0].cost_s: met 1.5; expected a whole number from 0 to 1000000000. Correct the number.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1},{"id":"a","cost_s":1}]}""", "network file, nodes[1]: met the id a a second time; expected an id that no other node has. Rename one of the two.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1,"needs":["b"]}]}""", "network file, nodes[0].needs: met the id b; expected the id of a node in this file. Correct the spelling or add the node.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1,"needs":"b"}]}""", "network file, nodes[0].needs: met \"b\"; expected a list. Put it in square brackets.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1,"needs":[7]}]}""", "network file, nodes[0].needs: met 7; expected a text. Put it in quotes.")]
    [InlineData("""{"nodes":[{"id":"a","cost_s":1,"done":"yes"}]}""", "network file, nodes[0].done: met \"yes\"; expected true or false. Write true or false without quotes.")]
    public void NetworkFile_with_a_fault_says_where_what_and_what_to_do(string text, string message)
    {
        Assert.Equal([message], NetworkFile.Read(text).Refusals.Select(refusal => refusal.ToString()));
    }

    [Fact]
    public void NetworkFile_with_two_faults_tells_both()
    {
        Assert.Equal(2, NetworkFile.Read("""{"nodes":[{"id":"a","cost_s":-1,"needs":["b"]}]}""").Refusals.Count);
    }
}
