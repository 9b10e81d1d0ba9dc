using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>Draws one job file: first who takes part, then what happened.</summary>
internal sealed class RemedyJob(Drawing draw)
{
    private readonly List<Entry> entries = [];

    private readonly List<Party> parties = [];

    private WorkKind kind;

    private Claimant claimant = new() { Name = "Teasel Supply Co.", Role = ClaimantRole.Supplier };

    // The days that the file turns on: work, completion, ends of periods. A day of asking is drawn about one of them.
    private readonly List<LocalDate> turns = [];

    private LocalDate first;

    private LocalDate last;

    private LocalDate complete;

    private LocalDate timeEnds;

    /// <summary>The file.</summary>
    public (JobFile Job, LocalDate AsOf) Build()
    {
        kind = draw.From(0, 99) switch { < 58 => WorkKind.Private, < 86 => WorkKind.Public, _ => WorkKind.Federal };
        first = new LocalDate(2026, 1, 5).PlusDays(draw.From(0, 420));
        Who();
        Work();
        Completion();
        var events = new RemedyEvents(draw, entries, parties, claimant, turns) { Kind = kind, First = first, Last = last,
            Complete = complete, TimeEnds = timeEnds };
        events.Add();
        var bond = Bond();
        var work = TheWork(bond, events.Commenced);
        Doubt();
        var asOf = draw.In100(70)
            && turns.Count > 0 ? draw.Of<LocalDate>([.. turns]).PlusDays(draw.From(-2, 4)) : first.PlusDays(draw.From(0, 420));
        return (new JobFile
        {
            Name = "Tansy Yard",
            Work = work,
            Claimant = claimant,
            Parties = parties,
            Contract = new Contract { On = first.PlusDays(-20), Written = draw.In100(90) ? true : null, Price = draw.In100(40)
                ? 20_000m : null },
            Entries = [.. Lacking()],
        }, asOf < first ? first : asOf);
    }

    // Drawn last, so that the files of a seed stay what they were.
    private IEnumerable<Entry> Lacking() => entries.Select(entry => entry is ClaimRecorded { Lien: not LienKind.Design } claim
        && claimant.Role != ClaimantRole.DesignProfessional && draw.In100(4) ? claim with { Lacks = "its verification" } : entry);

    private void Who()
    {
        var role = draw.From(0, 99) switch
        {
            < 38 => ClaimantRole.Supplier,
            < 64 => ClaimantRole.Subcontractor,
            < 77 => ClaimantRole.DirectContractor,
            < 88 => ClaimantRole.DesignProfessional,
            < 94 => ClaimantRole.Laborer,
            _ => ClaimantRole.EquipmentLessor,
        };
        parties.Add(new Party
        {
            Id = "own",
            Capacity = kind == WorkKind.Private ? PartyCapacity.Owner : PartyCapacity.PublicEntity,
            Name = "Tansy Land",
            Address = "1 Tansy Road, Oroville, CA 95965",
            BankruptSince = draw.In100(3) ? first.PlusDays(draw.From(0, 200)) : null,
            TookTitleBy = draw.In100(20) ? draw.Of(TitleSource.Sale, TitleSource.Sale, TitleSource.Foreclosure) : null,
        });
        if (role != ClaimantRole.DirectContractor)
            parties.Add(new Party { Id = "gc", Capacity = PartyCapacity.DirectContractor, Name = "Sorrel Builders" });
        if (draw.In100(10))
            parties.Add(new Party { Id = "gc2", Capacity = PartyCapacity.DirectContractor, Name = "Yarrow Builders" });
        var hirer = role == ClaimantRole.DirectContractor
            ? "own" : draw.From(0, 99) switch { < 38 => "gc", < 88 => "sub", < 96 => "own", _ => "sup" };
        if (role == ClaimantRole.DesignProfessional && draw.In100(70))
            hirer = "own";
        parties.Add(new Party { Id = "sub", Capacity = PartyCapacity.Subcontractor, Name = "Bracken Works",
            WorksUnder = draw.In100(30) ? "gc" : null });
        if (hirer == "sup")
            parties.Add(new Party { Id = "sup", Capacity = PartyCapacity.Supplier, Name = "Fescue Mill", MadeToPlans = draw.Maybe(70) });
        if (kind == WorkKind.Private && draw.In100(45))
            parties.Add(new Party { Id = "len", Capacity = PartyCapacity.ConstructionLender, Name = "Clover Bank",
                KnownSince = draw.In100(25) ? first.PlusDays(draw.From(-20, 30)) : null });
        parties.Add(new Party { Id = "sur", Capacity = PartyCapacity.Surety, Name = "Vetch Surety" });
        if (draw.In100(10))
            parties.Add(new Party { Id = "arch", Capacity = PartyCapacity.Architect, Name = "Rue Architects" });
        if (draw.In100(5))
            parties.Add(new Party { Id = "agent", Capacity = PartyCapacity.OwnersAgent, Name = "Basil Management" });
        claimant = claimant with { Role = role, HiredBy = hirer, License = License(role) };
    }

    private License? License(ClaimantRole role)
    {
        if (role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor) && draw.In100(90))
            return null;
        var draws = draw.From(0, 99);
        if (draws < 75)
            return new License { Required = true, Active = [new LicenseSpan(first.PlusDays(-2000), null)] };
        return draws switch
        {
            < 79 => null,
            < 82 => new License { Required = false },
            < 85 => new License { Required = true, Never = true },
            < 88 => new License { Required = true },
            < 92 => new License { Required = true, Active = [new LicenseSpan(first.PlusDays(draw.From(-1, 20)), null)] },
            < 96 => new License
            {
                Required = true,
                Active = [new LicenseSpan(first.PlusDays(-2000), first.PlusDays(draw.From(-3, 40)))],
                GoodFaith = draw.Maybe(40),
            },
            _ => PutBack(),
        };
    }

    private License PutBack()
    {
        var end = first.PlusDays(draw.From(-3, 20));
        var putBack = end.PlusDays(draw.Of(30, 88, 89, 90, 91, 92, 120));
        var (cause, beyondControl) =
            draw.Of<(LapseCause?, bool?)>((null, null), (null, false), (LapseCause.Renewal, null), (LapseCause.Renewal, null),
            (LapseCause.Insurance, null), (LapseCause.Insurance, false), (LapseCause.Insurance, true), (LapseCause.Other, null));
        var span = new LicenseSpan(end.PlusDays(1), null, putBack)
        {
            Cause = cause,
            Sent = draw.In100(30) ? end.PlusDays(draw.Of(60, 89, 90, 91)) : null,
            BeyondControl = beyondControl,
        };
        return new License { Required = true, Active = [new LicenseSpan(first.PlusDays(-2000), end), span], GoodFaith = draw.Maybe(30) };
    }

    private void Work()
    {
        last = first;
        var spans = draw.From(1, 3);
        for (var i = 0; i < spans; i++)
        {
            var on = i == 0 ? first : last.PlusDays(draw.From(0, 35));
            var until = draw.In100(50) ? on : on.PlusDays(draw.From(1, 30));
            entries.Add(new Furnished { Index = entries.Count, On = DayFact.On(on), Until = DayFact.On(until),
                Amount = draw.From(10, 900) * 10m });
            last = until > last ? until : last;
        }

        turns.Add(first.PlusDays(20));
        if (draw.In100(75))
            entries.Add(new FurnishingEnded { Index = entries.Count, On = DayFact.On(last.PlusDays(draw.In100(70)
                ? 0 : draw.From(1, 12))) });
    }

    private void Completion()
    {
        complete = last.PlusDays(draw.From(0, 40));
        if (draw.In100(claimant.Role == ClaimantRole.DesignProfessional ? 35 : 68))
            Completed(complete, contested: draw.In100(10));
        if (draw.In100(6))
            Completed(complete.PlusDays(draw.From(-20, 40)), contested: draw.In100(50));
        if (draw.In100(14))
        {
            var ceased = last.PlusDays(draw.From(-12, 20));
            entries.Add(new LaborCeased { Index = entries.Count, On = DayFact.On(ceased), Until = draw.In100(20)
                ? ceased.PlusDays(draw.From(20, 80)) : null, Unfinished = draw.In100(40) ? draw.In100(80) : null });
            turns.Add(ceased.PlusDays(60));
            turns.Add(ceased.PlusDays(150));
        }

        timeEnds = complete.PlusDays(90);
        turns.Add(complete.PlusDays(75));
        turns.Add(complete.PlusDays(kind == WorkKind.Federal ? 90 : 30));
        if (draw.In100(30) && kind != WorkKind.Federal)
            OwnersPaper();
        turns.Add(timeEnds);
        turns.Add(timeEnds.PlusDays(90));
        if (draw.In100(15))
            entries.Add(new IndexSearched { Index = entries.Count, On = DayFact.On(complete.PlusDays(draw.From(0, 40))) });
    }

    private void Completed(LocalDate on, bool contested)
    {
        var by = kind == WorkKind.Private
            ? draw.In100(4) ? CompletionTheory.Acceptance : draw.Of(CompletionTheory.Actual, CompletionTheory.Actual,
                CompletionTheory.Occupation)
            : draw.Of(CompletionTheory.Acceptance, CompletionTheory.Acceptance, CompletionTheory.Acceptance,
                CompletionTheory.Acceptance, CompletionTheory.Actual);
        entries.Add(new Completed { Index = entries.Count, On = DayFact.On(on), By = by, Contested = contested });
    }

    private void OwnersPaper()
    {
        var notice = draw.From(0, 99) switch { < 70 => OwnerNotice.Completion, < 92 => OwnerNotice.Cessation, _ => OwnerNotice.Acceptance };
        var recorded = complete.PlusDays(draw.Of(-3, 0, 1, 7, 12, 14, 15, 16, 17, 18, 22, 35));
        if (notice == OwnerNotice.Cessation && draw.In100(80))
        {
            var ceased = recorded.PlusDays(-draw.Of(29, 30, 31, 32, 40));
            entries.Add(new LaborCeased { Index = entries.Count, On = DayFact.On(ceased) });
        }

        entries.Add(new OwnerRecorded
        {
            Index = entries.Count,
            On = DayFact.On(recorded),
            Notice = notice,
            States = draw.In100(25) ? null : draw.In100(60) ? complete : complete.PlusDays(draw.From(-12, 20)),
            Lacks = draw.In100(6) ? "the owner's signature" : null,
            HeldIneffective = draw.In100(6),
            ContractOf = draw.In100(10) ? draw.Of("gc", "gc2") : null,
        });
        var days = claimant.Role == ClaimantRole.DirectContractor ? 60 : 30;
        timeEnds = recorded.PlusDays(days);
        turns.Add(recorded.PlusDays(15));
        turns.Add(complete.PlusDays(90));
        if (kind != WorkKind.Private || draw.In100(45))
            return;
        var came = recorded.PlusDays(draw.Of(0, 2, 5, 9, 10, 11, 12, 20));
        entries.Add(new OwnerToldUs
        {
            Index = entries.Count,
            Notice = notice,
            On = DayFact.On(came),
            Mailed = draw.In100(40) ? came.PlusDays(-draw.From(0, 4)) : null,
            Manner = draw.In100(60) ? draw.Of(Manner.CertifiedMail, Manner.RegisteredMail, Manner.Email, Manner.FirstClassMail) : null,
        });
    }

    private PaymentBond? Bond()
    {
        if (draw.In100(30))
            return null;
        return new PaymentBond
        {
            Surety = draw.In100(80) ? "sur" : null,
            Recorded = draw.In100(85) ? complete.PlusDays(draw.Of(-90, -40, -1, 0, 1, 10)) : null,
            Principal = draw.In100(25) ? draw.Of(parties.Exists(p => p.Id == "gc") ? "gc" : "own", "sub") : null,
        };
    }

    private Work TheWork(PaymentBond? bond, LocalDate? commenced) => new()
    {
        Kind = kind,
        Use = draw.In100(80) ? draw.Of(WorkUse.Commercial, WorkUse.Commercial, WorkUse.Residential, WorkUse.OwnerOccupiedOneToFour) : null,
        Site = new Site { County = "Butte", AlsoIn = draw.In100(5) ? ["Tehama"] : [] },
        Permit = draw.In100(60) ? new Permit { Number = "B-71" } : null,
        PaymentBond = bond,
        Commenced = commenced,
        SeveralDirectContracts = draw.In100(20) ? true : draw.In100(20) ? false : null,
        StateContractAct = kind == WorkKind.Public ? draw.In100(15) ? true : draw.In100(60) ? false : null : null,
        SubjectToAcceptanceBy = kind == WorkKind.Private && draw.In100(4) ? "Butte County" : null,
        PublicTakesOver = draw.Maybe(),
    };

    // At most two days of a file are in doubt, within a few days; now and then nobody knows the day.
    private void Doubt()
    {
        for (var times = draw.From(0, 99) switch { < 72 => 0, < 92 => 1, _ => 2 }; times > 0; times--)
        {
            var i = draw.From(0, entries.Count - 1);
            if (entries[i].On is not DayFact.Exact(var day) || entries[i] is Furnished { Until: DayFact.Exact(var until) } && until != day)
                continue;
            var unknown = entries[i] is NoticeGiven or BondNoticeGiven or StopPaymentGiven && draw.In100(15);
            var fact = unknown
                ? new DayFact.Unknown() : (DayFact)new DayFact.Between(day.PlusDays(-draw.From(0, 3)), day.PlusDays(draw.From(0, 3)));
            entries[i] = entries[i] is Furnished work ? work with { On = fact, Until = fact } : entries[i] with { On = fact };
        }

        if (draw.In100(4))
        {
            var i = draw.From(0, entries.Count - 1);
            entries[i] = entries[i] with { Learned = first.PlusDays(draw.From(0, 200)) };
        }
    }
}
