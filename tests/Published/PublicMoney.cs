namespace Stringline.Published;

/// <summary>C-37: retention passed on, on public work.</summary>
public sealed class PublicMoney
{
    [Fact]
    [Proves("Pub. Contract Code § 7107(d)")]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void C_37_the_charge_is_simple_on_the_share_and_ends_with_the_judgment() => new CaseNote
    {
        Number = "C-37",
        Citation = "S&S Cummins v. West Bay Builders (2008) 159 Cal.App.4th 765",
        Read = "excerpt (two openings), a summary, a note",
        Law = "Pub. Contract Code § 7107(d)-(f), current law",
        Facts = "Subcontractor on a public work. The contractor received more retention than this subcontractor's share and kept the share "
            + "back without a good-faith dispute. The figures are not in what was read: any will do.",
        Question = "What bears the 2 percent a month, how is it counted, and until when?",
        Held = "The improperly withheld share; simple and not compounded; until the judgment.",
        Then = "Current law.",
        Now = "The same: never more than was retained from the claimant, 2 percent of it for each whole month, and no more after the "
            + "judgment.",
        Takes =
        [
            new("more came than the share", Kept(),
                "2008-01-11",
                Days("retention.due", "2007-01-09"),
                Amount("retention.due", 1080.00m), // 12 whole months x 2% x 4,500.00, simple
                Says("retention.due", "each subcontractor's share"),
                Asks("retention.due", "(hirer-paid.amount)")),

            new("after the judgment", Kept()
                .Add(i => new ActionEnded { Index = i, On = JobBuilder.When("2007-07-20"), How = ActionEnd.Won }),
                "2008-01-11",
                Amount("retention.due", 540.00m)), // six whole months to 9 July 2007
        ],
    }.Holds();

    private static JobBuilder Kept() => CaseFile.Begin(ClaimantRole.Subcontractor, "direct").Work(w => w with { Kind = WorkKind.Public })
        .NoParty("owner").Party("city", PartyCapacity.PublicEntity, "The city")
        .Price(90000.00m)
        .Furnished("2006-03-01", 90000.00m)
        .Retained("2006-05-10", 4500.00m)
        .Completed("2006-10-22", CompletionTheory.Acceptance)
        .Add(i => new HirerPaid { Index = i, On = JobBuilder.When("2007-01-02"), Amount = 30000.00m, Of = PaymentOf.Retention });
}
