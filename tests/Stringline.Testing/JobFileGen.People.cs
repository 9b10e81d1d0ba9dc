using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>The parties and the claimant.</summary>
public static partial class JobFileGen
{
    private static Gen<List<Party>> Parties =>
        from count in Gen.Int[0, 6]
        from parties in Party.List[count]
        from under in Gen.Int[0, 2].Array[count]
        select Numbered(parties, under);

    private static Gen<Party> Party =>
        from capacity in Gen.Enum<PartyCapacity>()
        from reputed in Gen.Bool
        from texts in Gen.Select(Line, Maybe(Lines), Maybe(Line), Maybe(Line))
        from title in Title
        from days in MaybeValue(Day).Array[4]
        from stay in MaybeValue(Gen.Int[0, 500])
        from said in MaybeValue(Gen.Bool).Array[3]
        from address in MaybeValue(Gen.Enum<AddressKind>())
        from tookTitle in MaybeValue(Gen.Enum<TitleSource>())
        let isOwner = capacity == PartyCapacity.Owner
        let isLender = capacity == PartyCapacity.ConstructionLender
        select new Party
        {
            Id = "",
            Capacity = capacity,
            Reputed = reputed,
            Name = texts.Item1,
            Address = texts.Item2,
            HoldsTitleAs = title,
            KnownSince = isLender ? days[0] : null,
            MadeToPlans = capacity == PartyCapacity.Supplier ? said[0] : null,
            AddressKind = address,
            Telephone = texts.Item3,
            Email = texts.Item4,
            NaturalPerson = said[1],
            BankruptSince = days[1],
            BankruptUntil = days[1] is { } since && stay is { } length ? since.PlusDays(length) : null,
            TookTitleBy = isOwner ? tookTitle : null,
            SoldOn = isOwner ? days[2] : null,
            KnewOfWork = isOwner ? said[2] : null,
            DeedRecorded = isLender ? days[3] : null,
        };

    private static List<Party> Numbered(List<Party> parties, int[] under)
    {
        List<Party> numbered = [.. parties.Select((party, i) => party with { Id = $"p{i + 1}" })];
        var direct = Ids(numbered, PartyCapacity.DirectContractor);
        return [.. numbered.Select((party, i) => party.Capacity is (PartyCapacity.Subcontractor or PartyCapacity.Supplier)
            && under[i] < direct.Length
            ? party with { WorksUnder = direct[under[i]] }
            : party)];
    }

    private static Gen<TitleHolding?> Title =>
        from said in Gen.Bool
        from form in Gen.Enum<TitleForm>()
        from persons in Holder.List[2, 4]
        from trust in Line
        from decedent in Holder
        select said ? TitleOf(form, persons, trust, decedent) : null;

    private static Gen<TitleHolder> Holder => Gen.Frequency(
        (1, Line.Select(entity => new TitleHolder { Entity = entity })),
        (3, Gen.Select(Line, Maybe(Line), Maybe(Line))
            .Select((surname, given, suffix) => new TitleHolder { Surname = surname, Given = given, Suffix = suffix })));

    private static TitleHolding TitleOf(TitleForm form, List<TitleHolder> persons, string trust, TitleHolder decedent) => new()
    {
        Form = form,
        Persons = form is TitleForm.Company or TitleForm.PublicEntity ? [] : persons,
        Trust = form == TitleForm.Trust ? trust : null,
        Decedent = form == TitleForm.Estate ? decedent : null,
    };

    private static Gen<Claimant> Claimant(string[] ids) =>
        from name in Line
        from role in Gen.Enum<ClaimantRole>()
        from address in Maybe(Lines)
        from hiredBy in MaybeOneOf(ids)
        from hasSigner in Gen.Bool
        from signer in Gen.Select(Line, Maybe(Line))
        from hasLicense in Gen.Bool
        from license in License
        from telephone in Maybe(Line)
        from email in Maybe(Line)
        from installs in MaybeValue(Gen.Bool)
        from dumpTrucks in MaybeValue(Gen.Bool)
        select new Claimant
        {
            Name = name,
            Role = role,
            Address = address,
            HiredBy = hiredBy,
            Signer = hasSigner ? new Signer(signer.Item1, signer.Item2) : null,
            License = hasLicense ? license : null,
            Telephone = telephone,
            Email = email,
            Installs = role is ClaimantRole.Supplier or ClaimantRole.EquipmentLessor ? installs : null,
            DumpTrucks = dumpTrucks,
        };

    private static Gen<License> License =>
        from required in Gen.Bool
        from number in Maybe(Line)
        from classification in Maybe(Line)
        from start in Day
        from lengths in Gen.Int[0, 700].Array[0, 3]
        from goesOn in Gen.Bool
        from putBack in MaybeValue(Gen.Int[0, 400])
        from cause in MaybeValue(Gen.Enum<LapseCause>())
        from sent in MaybeValue(Day)
        from beyondControl in MaybeValue(Gen.Bool)
        from never in Gen.Frequency((4, Gen.Const(false)), (1, Gen.Const(true)))
        from said in MaybeValue(Gen.Bool).Array[4]
        select new License
        {
            Required = required,
            Number = never ? null : number,
            Class = classification,
            Active = never ? [] : Spans(start, lengths, goesOn, putBack, cause, sent, beyondControl),
            Never = never,
            SameEntity = said[0],
            FitsWork = said[1],
            InsuranceOnFile = said[2],
            GoodFaith = said[3],
        };

    private static List<LicenseSpan> Spans(LocalDate start, int[] lengths, bool goesOn, int? putBack, LapseCause? cause, LocalDate? sent,
        bool? beyondControl)
    {
        var spans = new List<LicenseSpan>();
        foreach (var length in lengths)
        {
            var isLast = spans.Count == lengths.Length - 1;
            spans.Add(new LicenseSpan(start, isLast && goesOn
                ? null : start.PlusDays(length), isLast && putBack is { } days ? start.PlusDays(days) : null)
            {
                Cause = isLast ? cause : null,
                Sent = isLast ? sent : null,
                BeyondControl = isLast && cause != LapseCause.Renewal ? beyondControl : null,
            });
            start = start.PlusDays(length + 1);
        }

        return spans;
    }
}
