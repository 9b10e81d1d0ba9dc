namespace Stringline.Papers.Tests;

public sealed class ClaimPacketTests
{
    [Fact]
    public void A_packet_for_the_demo_job_passes_its_preflight()
    {
        var made = Kept.Packet("demo", Jobs.Demo());
        Assert.All(made.Preflight, r => Assert.True(r.Passed, r.ToString()));
        Assert.Empty(made.InTheWay);
    }

    [Fact]
    public void A_served_claim_passes_its_preflight() => Kept.Packet("served", Jobs.Served());
}
