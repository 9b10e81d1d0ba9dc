using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>The claim of lien and the action on it.</summary>
internal sealed partial class EntryReading
{
    private static ClaimServed ClaimServed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        To = fields.RequiredPartyIds("to"),
        Manner = (Manner)fields.RequiredWord("manner", JobFileWords.Manner),
        Article = fields.Line("article"),
    };

    private ClaimRecorded ClaimRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        County = CountyNames.Optional(fields),
        Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
        Instrument = fields.Line("instrument"),
        Lien = (LienKind?)fields.Word("lien", JobFileWords.LienKind),
        Amends = EntryId(fields, "amends", "claim-recorded"),
        Structure = Structure(fields),
        Lacks = fields.Line("lacks"),
    };

    private static CreditRecorded CreditRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Until = fields.RequiredDay("until"),
        Instrument = fields.Line("instrument"),
    };

    private ActionFiled ActionFiled(Fields fields, int index)
    {
        var action = new ActionFiled
        {
            Index = index,
            On = When(fields),
            Court = fields.Line("court"),
            Case = fields.Line("case"),
            Enforces = [.. fields.Words("enforces", JobFileWords.ActionOn).Select(word => (ActionOn)word)],
            Claim = EntryId(fields, "claim", "claim-recorded"),
            Against = fields.PartyIds("against"),
            SmallClaims = fields.Flag("smallClaims"),
        };
        if (action is { Claim: not null, Enforces.Count: > 0 } && !action.Enforces.Contains(ActionOn.Lien))
            fields.Fault("claim", fields.Raw("claim")!, "nothing: `enforces` does not say that the action is on a claim of lien");
        return action;
    }

    private ActionEnded ActionEnded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        How = (ActionEnd)fields.RequiredWord("how", JobFileWords.ActionEnd),
        WithoutPrejudice = fields.Truth("withoutPrejudice"),
        Of = EntryId(fields, "of", "action-filed"),
    };

    private static LisPendensRecorded LisPendensRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Instrument = fields.Line("instrument"),
        MailedFirst = fields.Truth("mailedFirst"),
        ProofRecorded = fields.Truth("proofRecorded"),
    };

    private static ReleaseRecorded ReleaseRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Instrument = fields.Line("instrument"),
        Satisfied = fields.Truth("satisfied"),
    };

    private static ReleaseBondRecorded ReleaseBondRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        NoticeGiven = fields.Day("noticeGiven"),
        Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
        Instrument = fields.Line("instrument"),
    };

    private static ReleasePetitionServed ReleasePetitionServed(Fields fields, int index) =>
        new() { Index = index, On = When(fields), Manner = Manner(fields), Hearing = fields.Day("hearing") };
}
