using Stringline.Testing;
using System.Text;

namespace Stringline.Tables.Tests;

/// <summary>
/// A file of many corrections is read in about as many steps as one of many deliveries. At this length a walk of each chain from each of
/// its entries is some twenty billion steps, which no machine does within the limit; one walk of all is a second.
/// </summary>
[Collection(LargeFiles.Name)]
[Slow(Slow.Lasting)]
public sealed class LongChainTests
{
    private const int Entries = 60_000;
    private const int HangLimit = 120_000;

    [Theory(Timeout = HangLimit)]
    [InlineData("chain")]
    [InlineData("circle")]
    [Attack("chains and circles of 60,000 corrections")]
    public async Task Many_corrections_are_read_once(string form)
    {
        var demo = File.ReadAllText(Stringline.Testing.Repository.Path("data/demo/alder-court.json"));
        var more = new StringBuilder();
        for (var i = 0; i < Entries; i++)
        {
            var older = form == "circle" ? (i + 1) % Entries : i - 1;
            more.Append(System.Globalization.CultureInfo.InvariantCulture,
                $",{{\"what\":\"furnished\",\"on\":\"2026-03-01\",\"amount\":1.00,\"ref\":\"C\",\"id\":\"c{i}\"");
            if (older >= 0)
                more.Append(System.Globalization.CultureInfo.InvariantCulture, $",\"supersedes\":\"c{older}\"");
            more.Append('}');
        }

        var end = demo.LastIndexOf(']');
        var bytes = Encoding.UTF8.GetBytes(demo[..end] + more + demo[end..]);
        var read = await Task.Run(() => JobFileReader.Read(bytes, "job.json"), TestContext.Current.CancellationToken);
        Assert.Equal(form == "chain", read is JobFileResult.Read);
    }
}
