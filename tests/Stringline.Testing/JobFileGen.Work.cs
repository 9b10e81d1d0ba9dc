using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>The work and the contracts.</summary>
public static partial class JobFileGen
{
    private static Gen<Work> Work(List<Party> parties) =>
        from kind in Gen.Enum<WorkKind>()
        from use in MaybeValue(Gen.Enum<WorkUse>())
        from site in Gen.Select(Maybe(Line), Maybe(Line), Maybe(Line), Gen.OneOf(SampleCounties), Maybe(Line), Maybe(Lines))
        from alsoIn in Some(SampleCounties)
        from hasPermit in Gen.Bool
        from permit in Gen.Select(Maybe(Line), Maybe(Line), Maybe(Lines))
        from hasBond in Gen.Bool
        from bond in Gen.Select(MaybeValue(Day), MaybeOneOf(Ids(parties)), MaybeValue(Positive), MaybeOneOf(Principals(parties)))
        from acceptance in Maybe(Line)
        from commenced in MaybeValue(Day)
        from structures in MaybeValue(Gen.Int[1, 9999])
        from said in MaybeValue(Gen.Bool).Array[10]
        from body in MaybeValue(Gen.Enum<PublicBody>())
        from units in MaybeValue(Gen.Int[1, 9999])
        from cost in MaybeValue(Money)
        from hasDirect in Gen.Bool
        from direct in DirectContract
        from built in Structures(structures)
        select new Work
        {
            Kind = kind,
            Use = use,
            Site = new Site
            {
                Street = site.Item1,
                City = site.Item2,
                Zip = site.Item3,
                County = site.Item4,
                Apn = site.Item5,
                Legal = site.Item6,
                AlsoIn = [.. alsoIn.Where(county => county != site.Item4)],
            },
            Permit = hasPermit ? new Permit { Number = permit.Item1, Authority = permit.Item2, OwnerAddress = permit.Item3 } : null,
            PaymentBond = hasBond
                ? new PaymentBond { Recorded = bond.Item1, Surety = bond.Item2, Amount = bond.Item3, Principal = bond.Item4 } : null,
            SubjectToAcceptanceBy = acceptance,
            Commenced = commenced,
            SeveralDirectContracts = said[0],
            ResidentialStructures = structures,
            CommonInterest = said[1],
            SiteImprovement = said[2],
            OrderedByTenant = said[3],
            LowRiseResidential = said[4],
            StateContractAct = said[5],
            PublicTakesOver = kind == WorkKind.Private ? said[6] : null,
            Body = kind == WorkKind.Public ? body : null,
            SubstantiallyComplex = kind == WorkKind.Public ? said[7] : null,
            PublicUtility = kind == WorkKind.Private ? said[8] : null,
            Units = units,
            ExpectedCost = cost,
            SecurityExempt = kind == WorkKind.Private ? said[9] : null,
            DirectContract = hasDirect ? direct : null,
            Structures = built,
        };

    private static Gen<DirectContract> DirectContract =>
        from day in MaybeValue(Day)
        from price in MaybeValue(Money)
        from percent in MaybeValue(Gen.Int[0, 10_000])
        from filed in MaybeValue(Gen.Int[0, 90])
        from filedOn in Day
        select new DirectContract
        {
            On = day,
            Price = price,
            RetentionPercent = percent / 100m,
            Filed = filed is { } days ? (day ?? filedOn).PlusDays(days) : null,
        };

    private static Gen<List<ResidentialStructure>> Structures(int? most) =>
        from count in Gen.Int[0, Math.Min(3, most ?? 3)]
        from built in Gen.Select(Maybe(Line), MaybeValue(Money)).List[count]
        select built.Select((b, i) => new ResidentialStructure { Id = $"b{i + 1}", Text = b.Item1, Share = b.Item2 }).ToList();

    private static string[] Principals(List<Party> parties) =>
        Ids(parties, PartyCapacity.Owner, PartyCapacity.DirectContractor, PartyCapacity.Subcontractor);

    private static Gen<Contract> Contract =>
        from day in MaybeValue(Day)
        from written in MaybeValue(Gen.Bool)
        from price in MaybeValue(Money)
        from value in MaybeValue(Money)
        from work in Maybe(Lines)
        from due in MaybeValue(Gen.Int[0, 9999])
        from notBrought in MaybeValue(Gen.Bool)
        select new Contract { On = day, Written = written, Price = price, ReasonableValue = value, Work = work, PaymentDueDays = due,
            BondNotBrought = notBrought };
}
