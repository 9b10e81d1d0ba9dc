using System.Globalization;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Which procedure governs a claim against a public entity, and what is said and asked about it (Pub. Contract Code §§ 9204, 20104,
/// 20104.2).
/// </summary>
public sealed class ClaimLawTests
{
    private static Finding Statement(string? made, PublicBody? body, bool? stateContractAct, string? amount, string asOf = "2026-11-25",
        ClaimantRole role = ClaimantRole.DirectContractor, string received = "2026-10-05") => new JobBuilder().PublicWork()
        .Role(role, role == ClaimantRole.DirectContractor ? "city" : "direct").Licensed("2012-06-01..").Furnished("2025-08-05", 88_000m)
        .Work(w => w with { Body = body, StateContractAct = stateContractAct })
        .Contract(c => c with { On = made is null ? null : Day(made) })
        .Add(i => new DisputeClaimSent { Index = i, On = When("2026-10-01"), Received = Day(received), Amount = amount is null
            ? null : decimal.Parse(amount, CultureInfo.InvariantCulture), Manner = Manner.CertifiedMail })
        .On(asOf).Get(role == ClaimantRole.DirectContractor ? "dispute-claim.entitys-statement" : "dispute-claim.contractors-answer");

    // Received 5 October 2026: 45 days end on 19 November, 60 on 4 December. § 20104.2(b) and (c): 45 days below $50,000, 60 over it, to
    // $375,000; toward a local agency (§ 20104(a)), and where § 9204 does not surely govern.
    [Theory]
    [InlineData("2016-12-31", PublicBody.Local, null, "49999.99", new[] { "2026-11-19" }, Standing.Open, true)]
    [InlineData("2016-12-31", PublicBody.Local, null, "50000", new[] { "2026-11-19" }, Standing.Open, true)]
    [InlineData("2016-12-31", PublicBody.Local, null, "50000.01", new[] { "2026-12-04" }, Standing.NotYet, true)]
    [InlineData("2016-12-31", PublicBody.State, null, "18400", new string[0], Standing.Lost, false)]
    [InlineData("2016-12-31", PublicBody.StateUniversity, null, "18400", new string[0], Standing.Lost, false)]
    [InlineData("2016-12-31", PublicBody.UniversityOrCourt, null, "18400", new string[0], Standing.Lost, false)]
    [InlineData("2025-07-14", PublicBody.Local, null, "62000", new[] { "2026-11-19" }, Standing.Open, false)]
    [InlineData("2025-07-14", PublicBody.State, null, "62000", new[] { "2026-11-19" }, Standing.InDoubt, false)]
    [InlineData(null, PublicBody.Local, null, "50000", new[] { "2026-11-19" }, Standing.InDoubt, true)]
    [InlineData(null, PublicBody.Local, null, "50000.01", new[] { "2026-11-19", "2026-12-04" }, Standing.InDoubt, true)]
    [InlineData(null, PublicBody.Local, null, "375000", new[] { "2026-11-19", "2026-12-04" }, Standing.InDoubt, true)]
    [InlineData(null, PublicBody.Local, null, "375000.01", new[] { "2026-11-19" }, Standing.InDoubt, false)]
    [InlineData(null, PublicBody.Local, null, null, new[] { "2026-11-19" }, Standing.InDoubt, true)]
    [InlineData(null, null, null, "375000", new[] { "2026-11-19", "2026-12-04" }, Standing.InDoubt, true)]
    [InlineData(null, null, null, "375000.01", new[] { "2026-11-19" }, Standing.InDoubt, false)]
    [InlineData(null, null, false, "18400", new[] { "2026-11-19" }, Standing.InDoubt, true)]
    [InlineData(null, null, true, "18400", new[] { "2026-11-19" }, Standing.InDoubt, false)]
    [InlineData(null, null, true, "62000", new[] { "2026-11-19" }, Standing.InDoubt, false)]
    [Proves("Pub. Contract Code § 20104(a)")]
    [Proves("Pub. Contract Code § 20104.2")]
    public void The_older_procedure_is_left_toward_local_agencies_for_claims_up_to_375_000_dollars(
        string? made, PublicBody? body, bool? act, string? amount, string[] days, Standing expected, bool older)
    {
        var statement = Statement(made, body, act, amount);
        Assert.Equal(days, statement.DaysOf());
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(older, statement.Says("the older procedure is left"));
        Assert.Equal(body is null, statement.Asks("(work.body)"));
        Assert.Equal(made is null, statement.Asks("(contract.on)"));
    }

    // § 9204(g): contracts since 2017; (c)(3)(B): the departments outside it; (i): read as ending with 2026.
    [Theory]
    [InlineData("2016-12-31", PublicBody.Local, "2026-11-25", "2026-10-05", "9204(g)", null)]
    [InlineData("2025-07-14", PublicBody.Transportation, "2026-11-25", "2026-10-05", "9204(c)(3)", null)]
    [InlineData("2025-07-14", PublicBody.GeneralServices, "2026-11-25", "2026-10-05", "9204(c)(3)", null)]
    [InlineData("2025-07-14", PublicBody.State, "2026-11-25", "2026-10-05", null, "High-Speed Rail Authority")]
    [InlineData("2025-07-14", PublicBody.Local, "2026-12-31", "2026-10-05", null, "do what it calls for before then")]
    [InlineData("2025-07-14", PublicBody.Local, "2027-01-01", "2026-12-31", null, "keeps its argument")]
    [InlineData("2025-07-14", PublicBody.Local, "2027-01-05", "2027-01-01", null, "was not known when this was written")]
    [Proves("Pub. Contract Code § 9204(g)")]
    [Proves("Pub. Contract Code § 9204(c)(3)")]
    [Proves("Pub. Contract Code § 9204(i)")]
    public void Why_it_governs_or_not_is_told(string made, PublicBody body, string asOf, string received, string? ruledOut, string? says)
    {
        var statement = Statement(made, body, null, "18400", asOf, received: received);
        foreach (var section in (string[])["9204(g)", "9204(c)(3)"])
            Assert.Equal(section == ruledOut, statement.RuledOut($"Pub. Contract Code § {section}"));
        foreach (var words in (string[])["High-Speed Rail Authority", "do what it calls for before then", "keeps its argument",
            "was not known when this was written"])
            Assert.Equal(words == says || (body == PublicBody.State && words == "do what it calls for before then"), statement.Says(words));
    }

    // The day that counts is that of the direct contract, which for a subcontractor is not its own.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "(contract.on)")]
    [InlineData(ClaimantRole.Subcontractor, "(work.directContract.on)")]
    [Proves("Pub. Contract Code § 9204(g)")]
    public void The_day_of_the_direct_contract_is_asked(ClaimantRole role, string asks)
    {
        var finding = Statement(null, PublicBody.Local, null, "18400", role: role);
        Assert.EndsWith(asks, Assert.Single(finding.Questions, q => q.Corrects is null).Text, StringComparison.Ordinal);
    }
}
