using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>The stop payment notice to a public entity (Civ. Code §§ 9350-9362), made out to the officer who must receive it.</summary>
internal static class PublicStopPaymentPaper
{
    /// <summary>The notice and its sheet.</summary>
    public static Bundle Write(Matter matter)
    {
        var to = Addressees.Of(matter,
            [new Recipient(PartyCapacity.PublicEntity, matter.In(PartyCapacity.PublicEntity), "Civ. Code § 9354")]);
        foreach (var party in to.Where(p => p.Capacity != PartyCapacity.PublicEntity))
        {
            matter.Refuse("wrong-holder", Place.Of(PaperInput.To), $"{OneLine(party.Name)} is a {CapacityWords.Of(party)}.",
                $"A stop payment notice on public work goes to the public entity: its disbursing officer, or the body that awarded the "
                + $"contract.", "Civ. Code § 9354(b)");
        }

        matter.NotIfLost("stop-payment-notice.last-day", "The right to give a stop payment notice is lost.");
        StopPaymentPaper.NoticeFirst(matter, "Civ. Code § 9300(a), (c)");
        var leaf = new PaperBuilder("public-stop-payment-notice.pdf", "Stop Payment Notice");
        leaf.Head("Public works. California Civil Code sections 8102 and 9350 to 9362");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to, _ => Attention(matter));
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) gives notice of a claim and demands that you withhold from the direct contractor "
            + "money sufficient to pay it and the reasonable cost of litigation, as the Civil Code provides.");
        StopPaymentPaper.Contents(leaf, matter, matter.Assessment.Amount.Demand, "Civ. Code § 9352");
        leaf.Say($"A {matter.ByLaw(Number.FeeToBeTold)} check payable to you is enclosed. Please give claimant notice of the time within "
            + $"which an action is to be "
            + "commenced (Civil Code section 9362).");
        Signing.Claimant(leaf, matter, "Civ. Code § 9352(a)");
        Signing.Verify(leaf, matter, "stop payment notice", "Civ. Code § 9352(a)");
        return new Bundle([leaf], new Guide
        {
            To = to,
            Attention = _ => Attention(matter),
            Manner = Addressees.Manner,
            First =
            [
                "Claim only what is due for work provided through the day of the notice (§ 9352(c)). One who willfully gives a false "
                    + "notice "
                    + "forfeits the share of the money withheld (§ 9454).",
                .. WhichOfficer(matter),
                .. AmountInDoubt.Of(matter.Assessment.Amount, matter.Assessment.Amount.Demand, "notice"),
                $"Put a check for {matter.ByLaw(Number.FeeToBeTold)}, payable to the public entity, into the envelope: only then must it "
                    + $"tell you when the time to sue "
                    + "runs (§ 9362). If you enclose none, strike out the words about the check on the notice.",
                .. WorkAhead.Counted(matter), .. WhatDiffers.Between(matter.Assessment.Amount, matter.Assessment.Owed),
                .. StopPaymentPaper.Once(matter),
            ],
            Steps = ["Sign and verify in ink, with date and place, and keep a signed copy.",
                .. matter.In(PartyCapacity.Surety).Count == 0
                    ? ["Ask the entity for a copy of the payment bond at the same time: you need the surety’s name early."]
                    : Array.Empty<string>(),
                StopPaymentPaper.Send(to),
                ProofOfNotice.Step(ProvedNotice.StopPayment)],
            After = [$"{EntryName.Enter("stop-payment-given")}its day, to whom, amount, and whether "
                + $"the {matter.ByLaw(Number.FeeToBeTold)} was paid. For work "
                    + "provided later give another notice.",
                $"The action on it may begin after {matter.ByLaw(Number.NoActionOnPublicNotice).Spelled} and must begin "
                    + $"within {matter.ByLaw(Number.SueOnPublicNotice)} after the time to give the notice ends (§ 9502). "
                    + $"Within {matter.ByLaw(Number.TellEntityOfAction).Spelled} after it is begun give the public entity notice of it "
                    + $"(§ 9504)."],
        });
    }

    // Who the officer is depends on what the body is; the file need not say.
    private static IEnumerable<string> WhichOfficer(Matter matter)
    {
        if (matter.Job.Work.Body is null)
        {
            yield return "The file does not say what kind of public body it is. On a contract of the State the notice goes to the director "
                + "of the department that awarded it; on any other to the controller, auditor or other disbursing officer whose duty it "
                + "is to pay, or to the board or other body that awarded it (§ 9354(b)). Address the envelope to that officer or body.";
        }
    }

    internal static string Attention(Matter matter) => matter.Job.Work.Body switch
    {
        PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation => "Attention: Director",
        PublicBody.Local or PublicBody.StateUniversity or PublicBody.UniversityOrCourt =>
            "Attention: controller, auditor or other disbursing officer whose duty it is to pay, or the body that awarded the contract",
        null => "Attention: the officer or body named in section 9354, subdivision (b), of the Civil Code",
        _ => throw new InvalidOperationException($"No such public body: {matter.Job.Work.Body}."),
    };
}
