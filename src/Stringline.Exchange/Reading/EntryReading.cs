using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Reads one entry: first its <c>what</c>, then the fields that this kind has.</summary>
internal sealed class EntryReading(Source source)
{
    /// <summary>The words of <c>what</c>, in the order of the format's description.</summary>
    private static readonly string[] Kinds =
    [
        "furnished", "furnishing-ended", "change", "paid", "credited", "charged", "notice-given", "completed", "labor-ceased",
        "owner-recorded", "owner-told-us", "waived", "claim-served", "claim-recorded", "credit-recorded", "action-filed",
        "lis-pendens-recorded", "release-recorded", "release-bond-recorded", "release-demanded", "stop-payment-given",
        "bond-notice-given", "withdrawn", "index-searched", "retained", "payment-demanded", "hirer-paid", "disputed", "lower-tier-claim",
        "nonresponsibility-recorded", "dispute-claim-sent", "work-will-not-commence",
    ];

    /// <summary>The entry; null with a fault where its kind is not known, in which case nothing else can be said of it.</summary>
    public Entry? Entry(Fields fields, int index)
    {
        var what = fields.RequiredLine("what", $"one of {string.Join(", ", Kinds)}");
        Entry? entry = what switch
        {
            "" => null,
            "furnished" => Furnished(fields, index),
            "furnishing-ended" => new FurnishingEnded { Index = index, On = When(fields) },
            "change" => new Change
            {
                Index = index,
                On = When(fields),
                Amount = fields.RequiredMoney("amount", MoneyRange.Any),
                Agreed = fields.RequiredTruth("agreed"),
                Text = fields.Lines("text"),
            },
            "paid" => new Paid
            {
                Index = index,
                On = When(fields, mayBeUnknown: false),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                From = fields.Line("from"),
                Toward = Mentioned(fields, "toward", source.Towards),
            },
            "credited" => new Credited
            {
                Index = index,
                On = When(fields, mayBeUnknown: false),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                Text = fields.Lines("text"),
            },
            "charged" => new Charged
            {
                Index = index,
                On = When(fields, mayBeUnknown: false),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                Of = (ChargeKind)fields.RequiredWord("of", JobFileWords.Charge),
                Ref = fields.Line("ref"),
            },
            "notice-given" => new NoticeGiven
            {
                Index = index,
                On = When(fields),
                Notice = (NoticeKind)fields.RequiredWord("notice", JobFileWords.Notice),
                To = fields.RequiredPartyIds("to"),
                Manner = (Manner)fields.RequiredWord("manner", JobFileWords.Manner),
                Article = fields.Line("article"),
                Estimate = fields.Money("estimate", MoneyRange.ZeroOrMore),
                EstimateBasis = (EstimateBasis?)fields.Word("estimateBasis", JobFileWords.Basis),
            },
            "completed" => new Completed
            {
                Index = index,
                On = When(fields),
                By = (CompletionTheory)fields.RequiredWord("by", JobFileWords.Completion),
                Contested = fields.Flag("contested"),
            },
            "labor-ceased" => LaborCeased(fields, index),
            "owner-recorded" => new OwnerRecorded
            {
                Index = index,
                On = When(fields),
                Notice = (OwnerNotice)fields.RequiredWord("notice", JobFileWords.OwnerNotice),
                Instrument = fields.Line("instrument"),
                States = fields.Day("states"),
                ContractOf = fields.PartyId("contractOf"),
                Lacks = fields.Line("lacks"),
                HeldIneffective = fields.Flag("heldIneffective"),
            },
            "owner-told-us" => new OwnerToldUs
            {
                Index = index,
                On = When(fields),
                Notice = (OwnerNotice)fields.RequiredWord("notice", JobFileWords.OwnerNotice),
                Mailed = fields.Day("mailed"),
            },
            "waived" => Waived(fields, index),
            "claim-served" => new ClaimServed
            {
                Index = index,
                On = When(fields),
                To = fields.RequiredPartyIds("to"),
                Manner = (Manner)fields.RequiredWord("manner", JobFileWords.Manner),
                Article = fields.Line("article"),
            },
            "claim-recorded" => new ClaimRecorded
            {
                Index = index,
                On = When(fields),
                County = CountyNames.Optional(fields),
                Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
                Instrument = fields.Line("instrument"),
            },
            "credit-recorded" => new CreditRecorded
            {
                Index = index,
                On = When(fields),
                Until = fields.RequiredDay("until"),
                Instrument = fields.Line("instrument"),
            },
            "action-filed" => new ActionFiled
            {
                Index = index,
                On = When(fields),
                Court = fields.Line("court"),
                Case = fields.Line("case"),
            },
            "lis-pendens-recorded" => new LisPendensRecorded { Index = index, On = When(fields), Instrument = fields.Line("instrument") },
            "release-recorded" => new ReleaseRecorded
            {
                Index = index,
                On = When(fields),
                Instrument = fields.Line("instrument"),
                Satisfied = fields.Truth("satisfied"),
            },
            "release-bond-recorded" => new ReleaseBondRecorded
            {
                Index = index,
                On = When(fields),
                NoticeGiven = fields.Day("noticeGiven"),
                Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
                Instrument = fields.Line("instrument"),
            },
            "release-demanded" => new ReleaseDemanded { Index = index, On = When(fields), Instrument = fields.Line("instrument") },
            "stop-payment-given" => new StopPaymentGiven
            {
                Index = index,
                On = When(fields),
                To = fields.RequiredPartyIds("to"),
                Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
                Bonded = fields.Flag("bonded"),
            },
            "bond-notice-given" => new BondNoticeGiven { Index = index, On = When(fields), To = fields.RequiredPartyIds("to") },
            "withdrawn" => Withdrawn(fields, index),
            "index-searched" => new IndexSearched { Index = index, On = When(fields) },
            "retained" => new Retained { Index = index, On = When(fields), Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero) },
            "payment-demanded" => new PaymentDemanded
            {
                Index = index,
                On = When(fields),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
            },
            "hirer-paid" => new HirerPaid
            {
                Index = index,
                On = When(fields),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                Of = (PaymentOf)fields.RequiredWord("of", JobFileWords.PaymentOf),
            },
            "disputed" => new Disputed
            {
                Index = index,
                On = When(fields),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                Text = fields.Lines("text"),
            },
            "lower-tier-claim" => new LowerTierClaim
            {
                Index = index,
                On = When(fields),
                Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero),
                By = fields.Line("by"),
            },
            "nonresponsibility-recorded" => new NonresponsibilityRecorded
            {
                Index = index,
                On = When(fields),
                Posted = fields.Day("posted"),
                Knew = fields.Day("knew"),
                LeaseRequiresWork = fields.Truth("leaseRequiresWork"),
            },
            "dispute-claim-sent" => new DisputeClaimSent
            {
                Index = index,
                On = When(fields),
                Amount = fields.Money("amount", MoneyRange.AboveZero),
                Received = fields.Day("received"),
            },
            "work-will-not-commence" => new WorkWillNotCommence { Index = index, On = When(fields) },
            _ => Unknown(fields, what),
        };
        return entry is null ? null : InJournal(entry, fields);
    }

    /// <summary>What every entry may say of its place in the journal: its name, what it replaces, when it was learned.</summary>
    private Entry InJournal(Entry entry, Fields fields)
    {
        var id = Mentioned(fields, "id", source.EntryIds);
        var supersedes = Mentioned(fields, "supersedes", source.Superseded);
        var key = id ?? entry.Path;
        if (supersedes is not null)
            source.Replacements[key] = supersedes;
        if (entry is Furnished { Ref: not null } or Charged { Ref: not null })
            source.Refs.Add(new RefMention(fields.Raw("ref")!.Text!, fields.Raw("ref")!, fields.PathOf("ref"), key));
        var learned = fields.Day("learned");
        fields.Finish();
        return id is null && supersedes is null && learned is null
            ? entry
            : entry with { Id = id, Supersedes = supersedes, Learned = learned };
    }

    private static Withdrawn Withdrawn(Fields fields, int index)
    {
        var on = When(fields);
        if (!fields.Has("supersedes"))
            fields.Fault("an entry that takes nothing back", "`supersedes` with the id of the entry that was made by mistake");
        return new Withdrawn { Index = index, On = on };
    }

    private static Entry? Unknown(Fields fields, string what)
    {
        fields.Fault("what", fields.Raw("what")!, $"one of {string.Join(", ", Kinds)}{Nearest.Clause(what, Kinds)}");
        return null;
    }

    private static string? Mentioned(Fields fields, string name, List<Mention> mentions)
    {
        var text = fields.Line(name);
        if (text is not null)
            mentions.Add(new Mention(text, fields.Raw(name)!, fields.PathOf(name)));
        return text;
    }

    /// <summary>
    /// The day: <c>on</c> (null: it happened, nobody knows when) or <c>between</c>, one of them.
    /// Work and money need a day, at least one in doubt: without it neither reach nor order of payment can be told.
    /// </summary>
    private static DayFact When(Fields fields, bool mayBeUnknown = true)
    {
        var on = fields.Raw("on");
        var between = fields.Raw("between") is not null;
        if (on is not null && between)
            fields.Fault("`on` and `between`", "one of them");
        else if (between)
            return fields.Between("between") ?? new DayFact.Unknown();
        else if (on is null)
            fields.Fault("no day", "`on` with a day" + (mayBeUnknown ? ", `on` with null where nobody knows the day," : "") + " or `between` with two days");
        else if (on.Kind == JsonKind.Null && !mayBeUnknown)
            fields.Fault("on", on, "a day, or `between` with two days: work and money need one");
        else if (fields.Day("on") is { } day)
            return DayFact.On(day);
        return new DayFact.Unknown();
    }

    private static Furnished Furnished(Fields fields, int index)
    {
        var (on, until) = Span(fields);
        return new Furnished
        {
            Index = index,
            On = on,
            Until = until,
            Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
            Text = fields.Lines("text"),
            Ref = fields.Line("ref"),
        };
    }

    private static (DayFact First, DayFact Last) Span(Fields fields)
    {
        // Asked for in this order so that the list of known fields reads well.
        var hasDay = (fields.Raw("on") is not null) | (fields.Raw("between") is not null);
        var hasSpan = (fields.Raw("from") is not null) | (fields.Raw("to") is not null);
        if (!hasSpan)
        {
            if (!hasDay)
            {
                fields.Fault("no day", "`on` with a day, `between` with two days, or `from` and `to` with a day each");
                return (new DayFact.Unknown(), new DayFact.Unknown());
            }

            var day = When(fields, mayBeUnknown: false);
            return (day, day);
        }

        if (hasDay)
            fields.Fault("a day beside `from` and `to`", "either a day or a span");
        var from = fields.RequiredDay("from");
        var to = fields.RequiredDay("to");
        if (from != default && to != default && to < from)
            fields.Fault("to", fields.Raw("to")!, $"a day not before {DayText.Write(from)}, on which the span begins");
        return (DayFact.On(from), DayFact.On(to));
    }

    private static LaborCeased LaborCeased(Fields fields, int index)
    {
        var ceased = new LaborCeased { Index = index, On = When(fields), Until = fields.Day("until") };
        if (ceased.Until is { } until && ceased.On.Earliest is { } first && until <= first)
            fields.Fault("until", fields.Raw("until")!, $"the day labor resumed, after {DayText.Write(first)}");
        return ceased;
    }

    /// <summary>Progress forms (Civ. Code §§ 8132, 8134) have a through date; final forms (§§ 8136, 8138) have none.</summary>
    private static Waived Waived(Fields fields, int index)
    {
        var on = When(fields);
        var form = Form(fields);
        LocalDate? through = null;
        if (form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress)
            through = fields.RequiredDay("through");
        else if (fields.Raw("through") is { Kind: not JsonKind.Null } piece && form is not null)
            fields.Fault("through", piece, $"no through date: form {JobFileWords.Word(form.Value)} is for final payment");
        return new Waived
        {
            Index = index,
            On = on,
            Form = form ?? default,
            Through = through,
            Amount = fields.Money("amount", MoneyRange.ZeroOrMore),
            Excepted = fields.Money("excepted", MoneyRange.ZeroOrMore),
            PaymentCleared = fields.Day("paymentCleared"),
            InStatutoryForm = fields.Truth("inStatutoryForm"),
        };
    }

    /// <summary>The form's section as text; the bare number is taken too, since it reads as one.</summary>
    private static WaiverForm? Form(Fields fields)
    {
        if (fields.Raw("form") is { Kind: JsonKind.Number } number && JobFileWords.Form.IndexOf(number.Text) is { } index)
            return (WaiverForm)index;
        if (fields.Has("form"))
            return (WaiverForm?)fields.Word("form", JobFileWords.Form);
        fields.RequiredWord("form", JobFileWords.Form);
        return null;
    }
}
