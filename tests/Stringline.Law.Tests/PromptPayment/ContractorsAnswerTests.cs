using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// A claim through the contractor: on public work (Pub. Contract Code § 9204(d)(5)) and on private work (Civ. Code § 8850(j)).
/// </summary>
public sealed class ContractorsAnswerTests
{
    private static JobBuilder Public(string? made = "2025-07-01", PublicBody? body =
        PublicBody.Local, ClaimantRole role = ClaimantRole.Subcontractor) => new JobBuilder().PublicWork().Role(role, "direct")
        .Licensed("2012-06-01..")
        .Work(w => w with { Body = body, DirectContract = made is null ? null : new DirectContract { On = Day(made) } })
        .Furnished("2025-08-05", 88_000m);

    private static JobBuilder Private() => new JobBuilder().Role(ClaimantRole.Subcontractor)
        .Contract(c => c with { On = Day("2026-02-24") }).Work(w => w with { LowRiseResidential = false });

    private static JobBuilder Requested(JobBuilder job, string on) =>
        job.Add(i => new ClaimRequestMade { Index = i, On = When(on), Amount = 5_200m });

    private static JobBuilder Answered(JobBuilder job, string on, bool? presented = null) =>
        job.Add(i => new ClaimRequestAnswered { Index = i, On = When(on), Presented = presented });

    private static Finding Answer(JobBuilder job, string asOf = "2026-07-01") => job.On(asOf).Get("dispute-claim.contractors-answer");

    // Asked on 13 April 2026: 45 days end on Thursday 28 May. The section as read ends with 2026, and does not reach contracts before 2017.
    [Theory]
    [InlineData("2025-07-01", PublicBody.Local, ClaimantRole.Subcontractor, "2026-05-28", Standing.NotYet, 0)]
    [InlineData("2025-07-01", PublicBody.Local, ClaimantRole.Subcontractor, "2026-05-29", Standing.Open, 0)]
    [InlineData("2025-07-01", PublicBody.Local, ClaimantRole.Subcontractor, "2026-12-31", Standing.Open, 0)]
    [InlineData("2025-07-01", PublicBody.Local, ClaimantRole.Subcontractor, "2027-01-01", Standing.InDoubt, 0)]
    [InlineData("2025-07-01", PublicBody.Local, ClaimantRole.Supplier, "2026-05-29", Standing.InDoubt, 1)]
    [InlineData("2016-12-31", PublicBody.Local, ClaimantRole.Subcontractor, "2026-05-29", Standing.Lost, 0)]
    [InlineData("2017-01-01", PublicBody.Local, ClaimantRole.Subcontractor, "2026-05-29", Standing.Open, 0)]
    [InlineData("2025-07-01", PublicBody.State, ClaimantRole.Subcontractor, "2026-05-29", Standing.InDoubt, 0)]
    [InlineData("2025-07-01", PublicBody.GeneralServices, ClaimantRole.Subcontractor, "2026-05-29", Standing.Lost, 0)]
    [InlineData("2025-07-01", null, ClaimantRole.Subcontractor, "2026-05-29", Standing.Open, 1)]
    [InlineData(null, PublicBody.Local, ClaimantRole.Subcontractor, "2026-05-29", Standing.InDoubt, 1)]
    [Proves("Pub. Contract Code § 9204(d)(5)")]
    [Proves("Pub. Contract Code § 9204(g)")]
    public void On_public_work_within_forty_five_days(string? made, PublicBody? body, ClaimantRole role, string asOf, Standing expected,
        int asked)
    {
        var answer = Answer(Requested(Public(made, body, role), "2026-04-13"), asOf);
        Assert.Equal(["2026-05-28"], answer.DaysOf());
        Assert.Equal((expected, asked), (answer.Standing, answer.Questions.Count));
        Assert.False(answer.Says("taken for such a request"));
        Assert.Equal(role == ClaimantRole.Supplier, answer.Asks("(claimant.role)"));
    }

    // A claim that was sent to the contractor counts from its receipt, where that is told; a request counts before it.
    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(5)")]
    public void A_claim_is_taken_for_a_request_where_there_is_none()
    {
        static JobBuilder Sent(string? received) =>
            Public().Add(i => new DisputeClaimSent { Index = i, On = When("2026-04-10..2026-04-13"), Received = received is null
                ? null : Day(received), Amount = 5_200m });
        var sent = Answer(Sent(null));
        Assert.Equal(["2026-05-28 contractor's answer, 45 days after receipt, which was not before 2026-04-13"], sent.Lines());
        Assert.True(sent.Says("taken for such a request"));
        Assert.Equal(["2026-06-01 contractor's answer, 45 days after receipt"], Answer(Sent("2026-04-15")).Lines()); // 30 May is a Saturday
        var both = Answer(Requested(Sent("2026-04-15"), "2026-04-20"));
        Assert.Equal(["2026-06-04"], both.DaysOf());
        Assert.False(both.Says("taken for such a request"));
        Assert.Null(Public().On("2026-07-01").Find("dispute-claim.contractors-answer"));
        Assert.Null(Requested(Public(), "?").On("2026-07-01").Find("dispute-claim.contractors-answer"));
    }

    // The last request counts, and only an answer that may have come after it.
    [Theory]
    [InlineData("2026-04-13", "2026-04-12", null, Standing.Open, null)]
    [InlineData("2026-04-13", "2026-04-13", true, Standing.Done, "that it presented the claim")]
    [InlineData("2026-04-13..2026-04-15", "2026-04-13", false, Standing.Done, "that it did not present the claim")]
    [InlineData("2026-04-13", "2026-04-12..2026-04-13", null, Standing.Done, "The contractor answered between")]
    [InlineData("2026-04-13", "?", null, Standing.Open, null)]
    [Proves("Pub. Contract Code § 9204(d)(5)")]
    public void An_answer_follows_the_request(string requested, string answered, bool? presented, Standing expected, string? says)
    {
        var answer = Answer(Answered(Requested(Public(), requested), answered, presented));
        Assert.Equal(expected, answer.Standing);
        Assert.True(says is null ? !answer.Says("The contractor answered") : answer.Says(says));
        Assert.Equal(["2026-06-04"], Answer(Requested(Requested(Public(), "2026-04-13"), "2026-04-20")).DaysOf());
    }

    // Where § 9204 may not govern, the older procedure is told of for what is claimed up to $375,000 (§ 20104(a)), of a request or of a
    // claim.
    [Theory]
    [InlineData(true, "375000", true)]
    [InlineData(true, "375000.01", false)]
    [InlineData(false, "375000", true)]
    [InlineData(false, "375000.01", false)]
    [Proves("Pub. Contract Code § 20104(a)")]
    public void The_sum_asked_for_tells_the_older_procedure(bool request, string sum, bool older)
    {
        var amount = decimal.Parse(sum, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(older, Answer(Public(null).Add(i => request
            ? new ClaimRequestMade { Index = i, On = When("2026-04-13"), Amount = amount }
            : new DisputeClaimSent { Index = i, On = When("2026-04-13"), Amount = amount })).Says("the older procedure is left"));
    }

    // Private work, 30 days: asked between 9 and 13 April, so by Wednesday 13 May.
    [Theory]
    [InlineData("2026-05-13", null, null, Standing.NotYet, null)]
    [InlineData("2026-05-14", null, null, Standing.Open, null)]
    [InlineData("2026-05-14", "2026-05-04", true, Standing.Done, "Answered 2026-05-04 (Mon): presented.")]
    [InlineData("2026-05-14", "2026-05-04", false, Standing.Done, "Answered 2026-05-04 (Mon): not presented.")]
    [InlineData("2026-05-14", "2026-05-04", null, Standing.Done, "Answered 2026-05-04 (Mon).")]
    [Proves("Civ. Code § 8850(j)")]
    public void On_private_work_within_thirty_days(string asOf, string? answered, bool? presented, Standing expected, string? says)
    {
        var job = Requested(Private(), "2026-04-09..2026-04-13");
        var answer = Answer(answered is null ? job : Answered(job, answered, presented), asOf);
        Assert.Equal(["2026-05-13"], answer.DaysOf());
        Assert.Equal((expected, (decimal?)5_200m), (answer.Standing, answer.Amount));
        Assert.True(says is null ? !answer.Says("Answered") : answer.Says(says));
    }
}
