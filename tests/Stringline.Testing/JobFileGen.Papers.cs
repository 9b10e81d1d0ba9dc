using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>Money, what is disputed of it, and the papers that the claimant gives.</summary>
public static partial class JobFileGen
{
    private static IEnumerable<Gen<Entry>> Payments(Around at) =>
    [
        Gen.Select(Known, Positive, Maybe(Line), at.Toward).Select((on, amount, from, toward) =>
            (Entry)new Paid { Index = at.Index, On = on, Amount = amount, From = from, Toward = toward }),
        Gen.Select(Known, Positive, Maybe(Lines), at.Toward).Select((on, amount, text, toward) =>
            (Entry)new Credited { Index = at.Index, On = on, Amount = amount, Text = text, Toward = toward }),
        Gen.Select(Known, Positive, Gen.Enum<ChargeKind>(), at.Ref).Select((on, amount, of, name) =>
            (Entry)new Charged { Index = at.Index, On = on, Amount = amount, Of = of, Ref = name }),
        Gen.Select(When, Positive).Select((on, amount) => (Entry)new Retained { Index = at.Index, On = on, Amount = amount }),
        Gen.Select(When, Positive, Gen.Enum<PaymentOf>()).Select((on, amount, of) =>
            (Entry)new HirerPaid { Index = at.Index, On = on, Amount = amount, Of = of }),
        from when in When
        from amount in Positive
        from to in at.PartyList
        from manner in SomeManner
        from article in Maybe(Line)
        from days in MaybeValue(Gen.Int[0, 30]).Array[4]
        from due in MaybeValue(Day)
        from ofDefault in Said
        let received = After(when, days[1])
        let returned = at.Work.Kind == WorkKind.Public && days[2] is { } back ? (received ?? when.Latest)?.PlusDays(back) : null
        select (Entry)new PaymentDemanded
        {
            Index = at.Index,
            On = when,
            Amount = amount,
            To = to,
            Manner = manner,
            Article = article,
            Mailed = MailedAfter(manner, when, days[0]),
            Received = received,
            Due = due,
            OfDefault = ofDefault,
            Returned = returned,
            Resubmitted = days[3] is { } again ? returned?.PlusDays(again) : null,
        },
        from when in When
        from form in Gen.Enum<WaiverForm>()
        from through in Day
        from amounts in MaybeValue(Money).Array[2]
        from cleared in MaybeValue(Day)
        from said in Said.Array[2]
        from lists in Gen.Bool
        from unpaid in Day.List[0, 3]
        select (Entry)new Waived
        {
            Index = at.Index,
            On = when,
            Form = form,
            Through = form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress ? through : null,
            Amount = amounts[0],
            Excepted = amounts[1],
            PaymentCleared = cleared,
            InStatutoryForm = said[0],
            UnpaidWaivers = form == WaiverForm.ConditionalProgress && lists ? [.. unpaid.Distinct()] : null,
            Settlement = said[1],
        },
    ];

    private static IEnumerable<Gen<Entry>> Disputes(Around at) =>
    [
        Gen.Select(When, Positive, Maybe(Lines), MaybeValue(Gen.Enum<DisputeAbout>()), at.Named<PaymentDemanded>())
            .Select((on, amount, text, about, demand) =>
            (Entry)new Disputed { Index = at.Index, On = on, Amount = amount, Text = text, About = about, Demand = demand }),
        Gen.Select(When, Positive, Maybe(Line), Gen.Bool).Select((on, amount, by, stop) =>
            (Entry)new LowerTierClaim { Index = at.Index, On = on, Amount = amount, By = by, StopPaymentNotice = stop }),
        Gen.Select(When, MaybeValue(Positive), MaybeValue(Day), SomeManner, MaybeValue(Gen.Int[0, 90]).Array[3], MaybeValue(Day))
            .Select((on, amount, received, manner, days, meeting) => (Entry)new DisputeClaimSent
        {
            Index = at.Index,
            On = on,
            Amount = amount,
            Received = received,
            Manner = manner,
            ExtendedTo = After(on, days[0]),
            NextMeeting = at.Work.Kind == WorkKind.Public ? meeting : null,
            DocumentsAsked = at.Work.Kind == WorkKind.Public ? After(on, days[1]) : null,
            DocumentsGiven = at.Work.Kind == WorkKind.Public && days[2] is { } given ? After(on, days[1])?.PlusDays(given) : null,
        }),
        Gen.Select(When, MaybeValue(Money)).Select((on, undisputed) =>
            (Entry)new DisputeClaimAnswered { Index = at.Index, On = on, Undisputed = undisputed }),
        Gen.Select(When, SomeManner).Select((on, manner) => (Entry)new ConferenceDemanded { Index = at.Index, On = on, Manner = manner }),
        When.Select(on => (Entry)new ConferenceHeld { Index = at.Index, On = on }),
        Gen.Select(When, MaybeValue(Positive))
            .Select((on, amount) => (Entry)new ClaimRequestMade { Index = at.Index, On = on, Amount = amount }),
        Gen.Select(When, Said)
            .Select((on, presented) => (Entry)new ClaimRequestAnswered { Index = at.Index, On = on, Presented = presented }),
        Gen.Select(When, MaybeValue(Gen.Int[0, 40]), Said).Select((on, days, accepted) => (Entry)new DisputedWorkDone
        {
            Index = at.Index,
            On = on,
            Accepted = accepted == true ? After(on, days) : null,
            Rejected = accepted == false ? After(on, days) : null,
        }),
    ];

    private static IEnumerable<Gen<Entry>> Papers(Around at) =>
    [
        from when in When
        from notice in Gen.Enum<NoticeKind>()
        from to in at.SomeParties
        from manner in Gen.Enum<Manner>()
        from words in Gen.Select(Maybe(Line), Maybe(Line))
        from estimate in MaybeValue(Money)
        from basis in MaybeValue(Gen.Enum<EstimateBasis>())
        from counts in MaybeValue(Gen.Int[0, 9]).Array[2]
        select (Entry)new NoticeGiven
        {
            Index = at.Index,
            On = when,
            Notice = notice,
            To = to,
            Manner = manner,
            Article = words.Item1,
            Estimate = estimate,
            EstimateBasis = basis,
            Lacks = words.Item2,
            Mailed = MailedAfter(manner, when, counts[0]),
            Tries = manner == Manner.Substituted ? counts[1] : null,
        },
        Gen.Select(When, at.SomeParties, Gen.Enum<Manner>(), Maybe(Line)).Select((on, given, manner, article) =>
            (Entry)new ClaimServed { Index = at.Index, On = on, To = given, Manner = manner, Article = article }),
        from when in When
        from to in at.SomeParties
        from amount in MaybeValue(Money)
        from bonded in Gen.Bool
        from bond in MaybeValue(Positive)
        from manner in SomeManner
        from words in Gen.Select(Maybe(Line), Maybe(Line))
        from days in MaybeValue(Gen.Int[0, 9]).Array[2]
        from ten in Said
        select (Entry)new StopPaymentGiven
        {
            Index = at.Index,
            On = when,
            To = to,
            Amount = amount,
            Bonded = bonded,
            BondAmount = bonded ? bond : null,
            Manner = manner,
            Article = words.Item1,
            Mailed = MailedAfter(manner, when, days[0]),
            Tries = manner == Manner.Substituted ? days[1] : null,
            Lacks = words.Item2,
            TenDollars = at.Work.Kind == WorkKind.Public ? ten : null,
        },
        Gen.Select(When, at.SomeParties, SomeManner, Maybe(Line), MaybeValue(Gen.Int[0, 9]).Array[2], MaybeValue(Money))
            .Select((on, to, manner, article, days, amount) =>
            (Entry)new BondNoticeGiven
            {
                Index = at.Index,
                On = on,
                To = to,
                Manner = manner,
                Article = article,
                Mailed = MailedAfter(manner, on, days[0]),
                Tries = manner == Manner.Substituted ? days[1] : null,
                Amount = amount,
            }),
        Gen.Select(When, at.SomeParties, SomeManner)
            .Select((on, to, manner) => (Entry)new ActionTold { Index = at.Index, On = on, To = to, Manner = manner }),
    ];
}
