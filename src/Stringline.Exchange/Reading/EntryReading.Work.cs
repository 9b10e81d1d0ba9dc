using System.Globalization;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>What was furnished, and what became of the work.</summary>
internal sealed partial class EntryReading
{
    private Furnished Furnished(Fields fields, int index)
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
            Structure = Structure(fields),
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
        var ceased = new LaborCeased { Index = index, On = When(fields), Until = fields.Day("until"), Unfinished = fields.Truth("unfinished") };
        if (ceased.Until is { } until && ceased.On.Earliest is { } first && until <= first)
            fields.Fault("until", fields.Raw("until")!, $"the day labor resumed, after {DayText.Write(first)}");
        return ceased;
    }

    private static Change Change(Fields fields, int index)
    {
        var change = new Change
        {
            Index = index,
            On = When(fields),
            Amount = fields.RequiredMoney("amount", MoneyRange.Any),
            Agreed = fields.RequiredTruth("agreed"),
            Text = fields.Lines("text"),
            InDirectContract = fields.Truth("inDirectContract"),
            KnewOutside = fields.Truth("knewOutside"),
        };
        if (change is { InDirectContract: true, KnewOutside: true })
            fields.Fault("knewOutside", fields.Raw("knewOutside")!, "false or nothing: `inDirectContract` says that it is in the direct contract");
        return change;
    }

    private Completed Completed(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        By = (CompletionTheory)fields.RequiredWord("by", JobFileWords.Completion),
        Contested = fields.Flag("contested"),
        Structure = Structure(fields),
    };

    private OwnerRecorded OwnerRecorded(Fields fields, int index)
    {
        var what = fields.Raw("what")!;
        if (++ownersNotices > JobFileReader.MostOwnersNotices && source.IsNew(what))
        {
            fields.Fault("what", what, string.Create(CultureInfo.InvariantCulture,
                $"at most {JobFileReader.MostOwnersNotices} entries of this kind: each is set against every day on which the work may have been complete"));
        }

        return new OwnerRecorded
        {
            Index = index,
            On = When(fields),
            Notice = OwnerNotice(fields),
            Instrument = fields.Line("instrument"),
            States = fields.Day("states"),
            ContractOf = fields.PartyId("contractOf"),
            Lacks = fields.Line("lacks"),
            HeldIneffective = fields.Flag("heldIneffective"),
        };
    }

    private OwnerToldUs OwnerToldUs(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Notice = OwnerNotice(fields),
        Mailed = fields.Day("mailed"),
        Manner = Manner(fields),
    };

    /// <summary>A notice of acceptance is a public entity's (Civ. Code § 9356(a)).</summary>
    private OwnerNotice OwnerNotice(Fields fields)
    {
        var notice = (OwnerNotice)fields.RequiredWord("notice", JobFileWords.OwnerNotice);
        if (notice == Law.Facts.OwnerNotice.Acceptance && source.Work is { } kind and not WorkKind.Public)
            fields.Fault("notice", fields.Raw("notice")!, OnlyOn(WorkKind.Public, kind));
        return notice;
    }

    private static NonresponsibilityRecorded NonresponsibilityRecorded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        Posted = fields.Day("posted"),
        Knew = fields.Day("knew"),
        LeaseRequiresWork = fields.Truth("leaseRequiresWork"),
        Lacks = fields.Line("lacks"),
    };

    private static LenderSought LenderSought(Fields fields, int index) =>
        new() { Index = index, On = When(fields), Where = fields.Lines("where") };

    private static ContractEnded ContractEnded(Fields fields, int index) => new()
    {
        Index = index,
        On = When(fields),
        How = (ContractEnd)fields.RequiredWord("how", JobFileWords.ContractEnd),
        ByPayer = fields.Truth("byPayer"),
    };
}
