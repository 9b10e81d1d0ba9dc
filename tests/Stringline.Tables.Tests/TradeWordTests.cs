using System.Text;

namespace Stringline.Tables.Tests;

/// <summary>
/// A hint that is followed becomes a fact: it must be what the trade means by the word, and never a word that is only spelled alike where
/// that would make somebody another in law. That these words mean this in the trade is common practice, no source.
/// </summary>
public sealed class TradeWordTests
{
    [Theory]
    [InlineData("contractor", "direct-contractor")]
    [InlineData("general", "direct-contractor")]
    [InlineData("GC", "direct-contractor")]
    [InlineData("prime", "direct-contractor")]
    [InlineData("General Contractor", "direct-contractor")]
    [InlineData("sub", "subcontractor")]
    [InlineData("vendor", "supplier")]
    [InlineData("architect", "design-professional")]
    public void A_role_is_hinted_at_by_its_meaning(string said, string meant) =>
        Assert.EndsWith($"(did you mean \"{meant}\"?)", Of("claimant.role", $$"""{ "claimant": { "role": "{{said}}" } }"""),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("general-contractor", "direct-contractor")]
    [InlineData("lender", "construction-lender")]
    [InlineData("owner's lender", "construction-lender")]
    [InlineData("bonding_company", "surety")]
    [InlineData("HOA", "association")]
    public void A_capacity_is_hinted_at_by_its_meaning(string said, string meant) =>
        Assert.EndsWith($"(did you mean \"{meant}\"?)", Of("parties[0].capacity", $$"""{ "parties": [ { "capacity": "{{said}}" } ] }"""),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("claimant.role", """{ "claimant": { "role": "subcontractr" } }""")]
    [InlineData("claimant.role", """{ "claimant": { "role": "directcontractor" } }""")]
    [InlineData("parties[0].capacity", """{ "parties": [ { "capacity": "ownr" } ] }""")]
    [InlineData("parties[0].holdsTitleAs.form", """{ "parties": [ { "holdsTitleAs": { "form": "compan" } } ] }""")]
    [InlineData("entries[0].form", """{ "entries": [ { "what": "waived", "form": "81322" } ] }""")]
    [InlineData("entries[0].by", """{ "entries": [ { "what": "completed", "by": "actuall" } ] }""")]
    public void Where_it_would_change_the_answer_nothing_is_hinted_at_by_its_letters(string path, string file) =>
        Assert.DoesNotContain("did you mean", Of(path, file), StringComparison.Ordinal);

    [Theory]
    [InlineData("invoice", "\"furnished\" with the invoice's number as `ref`")]
    [InlineData("delivery", "\"furnished\"")]
    [InlineData("change-order", "\"change\"")]
    [InlineData("CO", "\"change\"")]
    [InlineData("retention", "\"retained\"")]
    [InlineData("lien", "\"claim-recorded\"")]
    [InlineData("waiver", "\"waived\" with `form`")]
    [InlineData("payment", "\"paid\"")]
    [InlineData("notice", "\"notice-given\" with `notice`")]
    [InlineData("stop notice", "\"stop-payment-given\"")]
    [InlineData("credit-memo", "\"credited\"")]
    [InlineData("furnshed", "\"furnished\"")]
    public void A_kind_of_entry_is_hinted_at_by_what_the_trade_calls_it(string said, string meant) =>
        Assert.EndsWith($"(did you mean {meant}?)", Of("entries[0].what", $$"""{ "entries": [ { "what": "{{said}}" } ] }"""),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("parties[0].phone", "(did you mean \"telephone\"?)", """{ "parties": [ { "phone": "1" } ] }""")]
    [InlineData("claimant.phone", "(did you mean \"telephone\"?)", """{ "claimant": { "phone": "1" } }""")]
    [InlineData("entries[0].dueDate", "(did you mean \"due\"?)", """{ "entries": [ { "what": "payment-demanded", "dueDate": "1" } ] }""")]
    [InlineData("entries[0].date", "(did you mean \"on\"?)", """{ "entries": [ { "what": "paid", "date": "1" } ] }""")]
    [InlineData("work.site.state", "(leave the state out: every site is in California)", """{ "work": { "site": { "state": "CA" } } }""")]
    public void A_field_is_hinted_at_by_what_the_trade_calls_it(string path, string hint, string file) =>
        Assert.EndsWith(hint, Of(path, file), StringComparison.Ordinal);

    /// <summary>What is said of a manner that does not count is a fact like any other; the law says what it is worth.</summary>
    [Theory]
    [InlineData("email", Law.Facts.Manner.Email)]
    [InlineData("first-class-mail", Law.Facts.Manner.FirstClassMail)]
    [InlineData("fax", Law.Facts.Manner.Fax)]
    [InlineData("other", Law.Facts.Manner.Other)]
    public void A_manner_that_does_not_count_is_taken_as_a_fact(string said, Law.Facts.Manner meant)
    {
        var job = RoundTripTests.Read(Encoding.UTF8.GetBytes($$"""
            { "format": "stringline-job/1", "name": "n", "work": { "kind": "private", "site": { "county": "Yolo" } },
              "claimant": { "name": "c", "role": "supplier" }, "parties": [ { "id": "p1", "capacity": "owner", "name": "o" } ],
              "entries": [ { "what": "notice-given", "on": "2026-03-02", "notice": "preliminary", "to": ["p1"], "manner": "{{said}}" } ] }
            """));
        Assert.Equal(meant, Assert.Single(job.All<Law.Facts.NoticeGiven>()).Manner);
    }

    private static string Of(string path, string file)
    {
        var refused = Assert.IsType<JobFileResult.Refused>(JobFileReader.Read(Encoding.UTF8.GetBytes(file), "job.json"));
        return Assert.Single(refused.Faults, fault => fault.Path == path).Expected;
    }
}
