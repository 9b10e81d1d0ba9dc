using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Money received, demanded and disputed.</summary>
internal sealed partial class EntryReading
{
    private Paid Paid(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields, mayBeUnknown: false),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        From = fields.Line("from"),
        Toward = Mentioned(fields, "toward", source.Towards),
    };

    private Credited Credited(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields, mayBeUnknown: false),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        Text = fields.Lines("text"),
        Toward = Mentioned(fields, "toward", source.Towards),
    };

    private static Charged Charged(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields, mayBeUnknown: false),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        Of = (ChargeKind)fields.RequiredWord("of", JobFileWords.Charge),
        Ref = fields.Line("ref"),
    };

    private PaymentDemanded PaymentDemanded(Fields fields, int index)
    {
        var on = When(fields);
        var demanded = new PaymentDemanded
        {
            Index = index,
            On = on,
            Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
            To = fields.PartyIds("to"),
            Manner = Manner(fields),
            Article = fields.Line("article"),
            Mailed = Mailed(fields, on),
            Received = fields.Day("received"),
            Due = fields.Day("due"),
            OfDefault = fields.Truth("ofDefault"),
            Returned = fields.Day("returned"),
            Resubmitted = fields.Day("resubmitted"),
        };
        if (demanded.Received is { } received)
            NotBefore(fields, "received", received, on);
        if (demanded.Returned is { } returned)
        {
            if (demanded.Received is { } got)
                NotBefore(fields, "returned", returned, DayFact.On(got), "the day of its receipt");
            else
                NotBefore(fields, "returned", returned, on);
            OnlyPublicField(fields, "returned");
        }

        if (demanded.Resubmitted is { } again)
        {
            if (demanded.Returned is { } back)
                NotBefore(fields, "resubmitted", again, DayFact.On(back), "the day of its return");
            else
                fields.Fault("resubmitted", fields.Raw("resubmitted")!, "nothing: no `returned` says that the request was returned");
        }

        return demanded;
    }

    private static HirerPaid HirerPaid(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        Of = (PaymentOf)fields.RequiredWord("of", JobFileWords.PaymentOf),
    };

    private Disputed Disputed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
        Text = fields.Lines("text"),
        About = (DisputeAbout?)fields.Word("about", JobFileWords.DisputeAbout),
        Demand = EntryId(fields, "demand", "payment-demanded"),
    };

    private DisputeClaimSent DisputeClaimSent(Fields fields, int index)
    {
        var claim = new DisputeClaimSent
        {
            Index = index,
            On = When(fields),
            Amount = fields.Money("amount", MoneyRange.AboveZero),
            Received = fields.Day("received"),
            Manner = Manner(fields),
            ExtendedTo = fields.Day("extendedTo"),
            NextMeeting = fields.Day("nextMeeting"),
            DocumentsAsked = fields.Day("documentsAsked"),
            DocumentsGiven = fields.Day("documentsGiven"),
        };
        if (claim.ExtendedTo is { } extended)
            NotBefore(fields, "extendedTo", extended, claim.On);
        if (claim.NextMeeting is not null)
            OnlyPublicField(fields, "nextMeeting");
        if (claim.DocumentsAsked is { } asked)
        {
            NotBefore(fields, "documentsAsked", asked, claim.On);
            OnlyPublicField(fields, "documentsAsked");
        }

        if (claim.DocumentsGiven is { } given)
        {
            if (claim.DocumentsAsked is { } since)
                NotBefore(fields, "documentsGiven", given, DayFact.On(since), "the day on which they were asked for");
            else
                fields.Fault("documentsGiven", fields.Raw("documentsGiven")!, "nothing: no `documentsAsked` says that any were asked for");
        }

        return claim;
    }

    private static DisputeClaimAnswered DisputeClaimAnswered(Fields fields, int index) =>
        new() { Index = index, On = When(fields), Undisputed = fields.Money("undisputed", MoneyRange.ZeroOrMore) };

    private static ClaimRequestMade ClaimRequestMade(Fields fields, int index) =>
        new() { Index = index, On = When(fields), Amount = fields.Money("amount", MoneyRange.AboveZero) };

    private static DisputedWorkDone DisputedWorkDone(Fields fields, int index)
    {
        var done = new DisputedWorkDone { Index = index, On = When(fields), Accepted = fields.Day("accepted"), Rejected = fields.Day("rejected") };
        if (done.Accepted is { } accepted)
            NotBefore(fields, "accepted", accepted, done.On);
        if (done.Rejected is { } rejected)
            NotBefore(fields, "rejected", rejected, done.On);
        if (done is { Accepted: not null, Rejected: not null })
            fields.Fault("rejected", fields.Raw("rejected")!, "nothing: `accepted` says that the work was accepted");
        return done;
    }

    private static StopWorkNoticeGiven StopWorkNoticeGiven(Fields fields, int index)
    {
        var given = new StopWorkNoticeGiven
        {
            Index = index,
            On = When(fields),
            To = fields.PartyIds("to"),
            Posted = fields.Day("posted"),
            PostedBy = fields.Day("postedBy"),
        };
        if (given is { Posted: { } first, PostedBy: { } last })
            NotBefore(fields, "postedBy", last, DayFact.On(first), "the first day on which it can have been posted");
        return given;
    }

    private static SecurityProvided SecurityProvided(Fields fields, int index)
    {
        var provided = new SecurityProvided
        {
            Index = index,
            On = When(fields),
            Amount = fields.Money("amount", MoneyRange.AboveZero),
            Until = fields.Day("until"),
        };
        if (provided.Until is { } ended)
            NotBefore(fields, "until", ended, provided.On);
        return provided;
    }

    private static ReleaseAffidavitServed ReleaseAffidavitServed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Manner = Manner(fields),
        AnswerBy = fields.Day("answerBy"),
        Amount = fields.Money("amount", MoneyRange.AboveZero),
        Ground = (ReleaseGround?)fields.Word("ground", JobFileWords.ReleaseGround),
    };

    private static CounteraffidavitServed CounteraffidavitServed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        To = fields.RequiredPartyIds("to"),
        Manner = Manner(fields),
        Proof = fields.Truth("proof"),
    };

    private static HearingNoticed HearingNoticed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Manner = Manner(fields),
        Hearing = fields.RequiredDay("hearing"),
        To = fields.PartyIds("to"),
        By = fields.PartyId("by", PartyCapacity.DirectContractor),
    };

    private static ReleaseOrdered ReleaseOrdered(Fields fields, int index) =>
        new() { Index = index, On = When(fields), Amount = fields.Money("amount", MoneyRange.AboveZero) };
}
