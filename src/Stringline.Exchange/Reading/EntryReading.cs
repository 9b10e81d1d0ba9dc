using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Reads one entry: first its <c>what</c>, then the fields that this kind has.</summary>
internal sealed partial class EntryReading(Source source)
{
    /// <summary>The words of <c>what</c>, in the order of the format's description.</summary>
    private static readonly string[] Kinds =
    [
        "furnished", "furnishing-ended", "change", "paid", "credited", "charged", "notice-given", "completed", "labor-ceased",
        "owner-recorded", "owner-told-us", "waived", "claim-served", "claim-recorded", "credit-recorded", "action-filed",
        "lis-pendens-recorded", "release-recorded", "release-bond-recorded", "release-demanded", "stop-payment-given",
        "bond-notice-given", "withdrawn", "index-searched", "retained", "payment-demanded", "hirer-paid", "disputed", "lower-tier-claim",
        "nonresponsibility-recorded", "dispute-claim-sent", "work-will-not-commence",
        "lender-sought", "notice-filed", "stop-payment-released", "stop-payment-demanded", "stop-payment-bond-given", "bond-objected",
        "action-told", "action-served", "trial-begun", "action-ended", "release-petition-served", "contract-ended", "dispute-claim-answered",
        "conference-demanded", "conference-held", "final-payment", "final-decision-served", "claim-request-made", "claim-request-answered",
        "stop-work-notice-given", "suspension-notice-sent", "security-demanded", "security-provided", "disputed-work-done", "release-affidavit-served", "counteraffidavit-served",
        "rights-action-filed", "hearing-noticed", "release-ordered",
    ];

    /// <summary>What happens on a public work of California only (Civ. Code §§ 9400-9414; Pub. Contract Code §§ 10240.1, 20104.2).</summary>
    private static readonly string[] OnlyPublic =
    [
        "final-payment", "final-decision-served", "release-affidavit-served", "counteraffidavit-served", "rights-action-filed", "hearing-noticed",
        "release-ordered",
    ];

    /// <summary>What happens on a private work only (Civ. Code §§ 8170, 8214, 8486, 8520(b), 8534, 8712, 8834, 8850(k)).</summary>
    private static readonly string[] OnlyPrivate =
    [
        "lender-sought", "notice-filed", "stop-payment-demanded", "bond-objected", "release-petition-served", "stop-work-notice-given",
        "suspension-notice-sent", "security-demanded", "security-provided",
    ];

    // What the entry being read says of other entries; which entry says it is known once its id is read.
    private readonly List<EntryMention> mentions = [];

    private int ownersNotices;

    /// <summary>The entry; null with a fault where its kind is not known, in which case nothing else can be said of it.</summary>
    public Entry? Entry(Fields fields, int index)
    {
        var what = fields.RequiredLine("what", $"one of {string.Join(", ", Kinds)}");
        Entry? entry = what switch
        {
            "" => null,
            "furnished" => Furnished(fields, index),
            "furnishing-ended" => new FurnishingEnded { Index = index, On = When(fields) },
            "change" => Change(fields, index),
            "paid" => Paid(fields, index),
            "credited" => Credited(fields, index),
            "charged" => Charged(fields, index),
            "notice-given" => NoticeGiven(fields, index),
            "completed" => Completed(fields, index),
            "labor-ceased" => LaborCeased(fields, index),
            "owner-recorded" => OwnerRecorded(fields, index),
            "owner-told-us" => OwnerToldUs(fields, index),
            "waived" => Waived(fields, index),
            "claim-served" => ClaimServed(fields, index),
            "claim-recorded" => ClaimRecorded(fields, index),
            "credit-recorded" => CreditRecorded(fields, index),
            "action-filed" => ActionFiled(fields, index),
            "lis-pendens-recorded" => LisPendensRecorded(fields, index),
            "release-recorded" => ReleaseRecorded(fields, index),
            "release-bond-recorded" => ReleaseBondRecorded(fields, index),
            "release-demanded" => new ReleaseDemanded { Index = index, On = When(fields), Instrument = fields.Line("instrument") },
            "stop-payment-given" => StopPaymentGiven(fields, index),
            "bond-notice-given" => BondNoticeGiven(fields, index),
            "withdrawn" => Withdrawn(fields, index),
            "index-searched" => new IndexSearched { Index = index, On = When(fields), County = CountyNames.Optional(fields) },
            "retained" => new Retained { Index = index, On = When(fields), Amount = fields.RequiredMoney("amount", MoneyRange.AboveZero) },
            "payment-demanded" => PaymentDemanded(fields, index),
            "hirer-paid" => HirerPaid(fields, index),
            "disputed" => Disputed(fields, index),
            "lower-tier-claim" => LowerTierClaim(fields, index),
            "nonresponsibility-recorded" => NonresponsibilityRecorded(fields, index),
            "dispute-claim-sent" => DisputeClaimSent(fields, index),
            "work-will-not-commence" => new WorkWillNotCommence { Index = index, On = When(fields) },
            "lender-sought" => LenderSought(fields, index),
            "notice-filed" => new NoticeFiled { Index = index, On = When(fields), Instrument = fields.Line("instrument") },
            "stop-payment-released" => StopPaymentReleased(fields, index),
            "stop-payment-demanded" => StopPaymentDemanded(fields, index),
            "stop-payment-bond-given" => StopPaymentBondGiven(fields, index),
            "bond-objected" => BondObjected(fields, index),
            "action-told" => ActionTold(fields, index),
            "action-served" => new ActionServed { Index = index, On = When(fields), To = fields.PartyIds("to"), Of = EntryId(fields, "of", "action-filed") },
            "trial-begun" => new TrialBegun { Index = index, On = When(fields), Of = EntryId(fields, "of", "action-filed") },
            "action-ended" => ActionEnded(fields, index),
            "release-petition-served" => ReleasePetitionServed(fields, index),
            "contract-ended" => ContractEnded(fields, index),
            "dispute-claim-answered" => DisputeClaimAnswered(fields, index),
            "conference-demanded" => new ConferenceDemanded { Index = index, On = When(fields), Manner = Manner(fields) },
            "conference-held" => new ConferenceHeld { Index = index, On = When(fields) },
            "final-payment" => new FinalPayment { Index = index, On = When(fields) },
            "final-decision-served" => new FinalDecisionServed { Index = index, On = When(fields) },
            "claim-request-made" => ClaimRequestMade(fields, index),
            "claim-request-answered" => new ClaimRequestAnswered { Index = index, On = When(fields), Presented = fields.Truth("presented") },
            "stop-work-notice-given" => StopWorkNoticeGiven(fields, index),
            "suspension-notice-sent" => new SuspensionNoticeSent { Index = index, On = When(fields), Notice = (SuspensionNotice)fields.RequiredWord("notice", JobFileWords.SuspensionNotice), Manner = Manner(fields) },
            "security-demanded" => new SecurityDemanded { Index = index, On = When(fields), Manner = Manner(fields) },
            "security-provided" => SecurityProvided(fields, index),
            "disputed-work-done" => DisputedWorkDone(fields, index),
            "release-affidavit-served" => ReleaseAffidavitServed(fields, index),
            "counteraffidavit-served" => CounteraffidavitServed(fields, index),
            "rights-action-filed" => new RightsActionFiled { Index = index, On = When(fields), Case = fields.Line("case") },
            "hearing-noticed" => HearingNoticed(fields, index),
            "release-ordered" => ReleaseOrdered(fields, index),
            _ => Unknown(fields, what),
        };
        if (entry is not null)
            OfThisWork(fields, what);
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
        if (id is not null)
            source.Kinds.TryAdd(id, fields.Raw("what")!.Text!);
        foreach (var mention in mentions)
            source.Entries.Add(mention with { Entry = key });
        mentions.Clear();
        var learned = fields.Day("learned");
        fields.Finish();
        return id is null && supersedes is null && learned is null
            ? entry
            : entry with { Id = id, Supersedes = supersedes, Learned = learned };
    }

    /// <summary>Refuses what cannot happen on a work of this kind.</summary>
    private void OfThisWork(Fields fields, string what)
    {
        var only = OnlyPublic.Contains(what) ? WorkKind.Public : OnlyPrivate.Contains(what) ? WorkKind.Private : (WorkKind?)null;
        if (only is { } needed && source.Work is { } kind && kind != needed)
            fields.Fault("what", fields.Raw("what")!, OnlyOn(needed, kind));
    }

    /// <summary>Refuses a field that has no meaning but on a public work of California.</summary>
    private void OnlyPublicField(Fields fields, string name)
    {
        if (source.Work is { } kind and not WorkKind.Public)
            fields.Fault(name, fields.Raw(name)!, OnlyOn(WorkKind.Public, kind));
    }

    private static string OnlyOn(WorkKind needed, WorkKind kind) =>
        $"nothing of this kind: it is for a {JobFileWords.Word(needed)} work only, and `work.kind` is \"{JobFileWords.Word(kind)}\"";

    private static Withdrawn Withdrawn(Fields fields, int index)
    {
        var on = When(fields);
        if (!fields.Has("supersedes"))
            fields.Fault("an entry that takes nothing back", "`supersedes` with the id of the entry that was made by mistake");
        return new Withdrawn { Index = index, On = on };
    }

    private static Entry? Unknown(Fields fields, string what)
    {
        fields.Fault("what", fields.Raw("what")!, () => $"one of {string.Join(", ", Kinds)}{TradeWords.Clause("what", what, Kinds)}");
        return null;
    }

    /// <summary>The id of another entry, of one kind.</summary>
    private string? EntryId(Fields fields, string name, string what)
    {
        var id = fields.Line(name);
        if (id is not null)
            mentions.Add(new EntryMention(id, fields.Raw(name)!, fields.PathOf(name), what, ""));
        return id;
    }

    /// <summary>The residential structure of the work.</summary>
    private string? Structure(Fields fields) => Mentioned(fields, "structure", source.Structures);

    private static Manner? Manner(Fields fields) => (Manner?)fields.Word("manner", JobFileWords.Manner);

    /// <summary>The day on which a paper that was left was mailed besides; of a paper given otherwise there is none.</summary>
    private static LocalDate? Mailed(Fields fields, DayFact on)
    {
        if (fields.Day("mailed") is not { } mailed)
            return null;
        OnlyOfLeftAndMailed(fields, "mailed");
        NotBefore(fields, "mailed", mailed, on);
        return mailed;
    }

    /// <summary>The tries to deliver by hand before a paper was left; of a paper given otherwise there are none.</summary>
    private static int? Tries(Fields fields)
    {
        if (fields.Count("tries", least: 0) is not { } tries)
            return null;
        OnlyOfLeftAndMailed(fields, "tries");
        return tries;
    }

    private static void OnlyOfLeftAndMailed(Fields fields, string name)
    {
        if (fields.Raw("manner") is not { Text: "substituted" })
            fields.Fault(name, fields.Raw(name)!, "nothing: it is asked only of a paper left and mailed, whose `manner` is \"substituted\"");
    }

    /// <summary>Refuses a day that lies before the entry's own, or before another that it follows.</summary>
    private static void NotBefore(Fields fields, string name, LocalDate day, DayFact on, string whose = "the day of the entry")
    {
        if (on.Earliest is { } first && day < first)
            fields.Fault(name, fields.Raw(name)!, $"a day not before {DayText.Write(first)}, {whose}");
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
}
