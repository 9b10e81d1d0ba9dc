using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>What the lien reaches, and how much of it a contractor can enforce.</summary>
public sealed class PropertyBoundTests
{
    private static Finding Property(Func<Work, Work> work, Action<JobBuilder>? more = null)
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Work(work);
        more?.Invoke(job);
        return job.On("2026-06-01").Get("lien-right.property");
    }

    [Fact]
    [Proves("Civ. Code § 8440")]
    public void It_reaches_the_work_and_the_land_under_it() 
    {
        Assert.Contains("Civ. Code § 8440", Property(w => w).Sections);
        Assert.Equal(Standing.Open, Property(w => w).Standing);
    }

    [Theory]
    [InlineData(true, "Civ. Code § 8442", false)]
    [InlineData(false, null, false)]
    [InlineData(null, "Civ. Code § 8442(a)", true)]
    [Proves("Civ. Code § 8442")]
    public void Whether_a_tenant_ordered_the_work_decides_whose_interest_is_bound(bool? tenant, string? section, bool asks)
    {
        var property = Property(w => w with { OrderedByTenant = tenant });
        Assert.Equal(section is null
            ? [] : tenant == true
            ? [section, "Civ. Code § 8442(b)"]
            : [section], property.Sections.Where(s => s.StartsWith("Civ. Code § 8442", StringComparison.Ordinal)));
        Assert.Equal(asks, property.Asks("Did a tenant"));
    }

    // Hayward Lumber & Investment v. Ross (1939) 32 Cal.App.2d 455: it must follow knowledge of actual work. Jay Bailey Construction v.
    // Berry Hotel (1963) 221 Cal.App.2d 135: talk of a project is no knowledge of work. Commenced 1 August 2025.
    [Theory]
    [InlineData("2025-05-14", "2025-05-13", "2025-08-01", Standing.Open)]
    [InlineData("2025-08-04", "2025-07-31", "2025-08-01", Standing.Open)]
    [InlineData("2025-07-31", "2025-08-04", "2025-08-01", Standing.Open)]
    [InlineData("2025-08-01", "2025-08-01", "2025-08-01", Standing.Narrowed)]
    [InlineData("2025-07-28", "2025-07-28", "2025-07-21", Standing.InDoubt)] // after talk of it, before the work
    [InlineData("2025-07-20", "2025-07-20", "2025-07-21", Standing.Open)]
    [InlineData("2025-08-04", "2025-08-04", "2025-08-11", Standing.Narrowed)] // after the work began, before that owner knew
    [InlineData("2025-07-30..2025-07-31", "2025-08-01", "2025-08-01", Standing.Open)]
    [InlineData("2025-07-31..2025-08-01", "2025-08-01", "2025-08-01", Standing.InDoubt)]
    [InlineData("2025-08-04", "2025-07-28", "2025-07-21", Standing.InDoubt)] // posted after talk of it and before the work
    [InlineData("2025-07-28", "2025-08-04", "2025-07-21", Standing.InDoubt)] // recorded so
    [InlineData("2025-07-31..2025-08-01", "2025-08-01", "2025-07-21", Standing.InDoubt)]
    [InlineData("2025-08-01..2025-08-02", "2025-08-01", "2025-07-31", Standing.Narrowed)]
    [Proves("Civ. Code § 8444")]
    public void A_notice_of_nonresponsibility_before_the_work_began_does_nothing(string recorded, string posted, string knew,
        Standing expected)
    {
        var property = Property(w =>
            w with { OrderedByTenant = true, Commenced = JobBuilder.Day("2025-08-01") }, j => j.Nonresponsibility(recorded, posted, knew));
        Assert.Equal(expected, property.Standing);
        Assert.Equal(expected == Standing.Open, property.RuledOut("Civ. Code § 8444"));
    }

    [Theory]
    [InlineData(null, Standing.InDoubt, true)]
    [InlineData(true, Standing.Open, false)]
    [InlineData(false, Standing.Narrowed, false)]
    [Proves("Civ. Code § 8442(b)")]
    public void The_fee_is_bound_only_with_the_knowledge_of_its_owner(bool? knew, Standing expected, bool asks)
    {
        var property = Property(w => w with { OrderedByTenant = true }, j => j.PartyWith("owner", p => p with { KnewOfWork = knew }));
        Assert.Equal(expected, property.Standing);
        Assert.Equal(asks, property.Questions.Any(q => q.Text.EndsWith("(parties.knewOfWork)", StringComparison.Ordinal)));
        Assert.Equal(knew == true, property.Says("keep the proof"));
        Assert.Equal(Standing.Open,
            Property(w => w with { OrderedByTenant = false }, j => j.PartyWith("owner", p => p with { KnewOfWork = knew })).Standing);
    }

    // A notice that came too late frees nothing; that the owner did not know of the work frees the fee all the same, and that it knew is
    // said.
    [Theory]
    [InlineData(false, Standing.Narrowed, "did not know of the work")]
    [InlineData(true, Standing.Open, "keep the proof of that knowledge")]
    [InlineData(null, Standing.Open, null)]
    [Proves("Civ. Code § 8442(b)")]
    [Proves("Civ. Code § 8444")]
    public void Beside_a_notice_of_nonresponsibility_the_knowledge_of_the_owner_counts(bool? knew, Standing expected, string? says)
    {
        // A co-owner of whom nothing is known changes nothing of what is known.
        foreach (var another in (bool[])[false, true])
        {
            var property = Property(w => w with { OrderedByTenant = true }, j =>
            {
                j.PartyWith("owner", p => p with { KnewOfWork = knew }).Nonresponsibility("2026-03-12", "2026-03-20", "2026-03-02");
                if (another)
                    j.Party("co-owner", PartyCapacity.Owner);
            });
            Assert.Equal(expected, property.Standing);
            Assert.Equal(says is not null, property.Sections.Contains("Civ. Code § 8442(b)"));
            Assert.True(says is null || property.Says(says));
            Assert.True(property.RuledOut("Civ. Code § 8444"));
        }
    }

    // Civ. Code § 8442(b): "the interest of a person ... with the knowledge of that person": each of two owners is judged for itself.
    [Theory]
    [InlineData(true, Standing.Narrowed, "keep the proof")]
    [InlineData(null, Standing.Narrowed, "judged for itself")]
    [InlineData(false, Standing.Narrowed, null)]
    [Proves("Civ. Code § 8442(b)")]
    public void Of_two_owners_the_interest_of_the_one_that_knew_of_the_work_is_bound(bool? other, Standing expected, string? says)
    {
        var property = Property(w => w with { OrderedByTenant = true }, j => j.PartyWith("owner", p => p with { KnewOfWork = false })
            .Party("co-owner", PartyCapacity.Owner).PartyWith("co-owner", p => p with { KnewOfWork = other }));
        Assert.Equal(expected, property.Standing);
        Assert.True(says is null || property.Says(says) || property.Asks(says));
        Assert.Equal(other is not false, property.Says("its interest in the fee is not bound"));
    }

    [Theory]
    [InlineData(null, Standing.Narrowed)]
    [InlineData("its verification", Standing.InDoubt)]
    [Proves("Civ. Code § 8444")]
    public void A_notice_that_lacks_what_the_section_asks_frees_nothing_as_a_fact(string? lacks, Standing expected)
    {
        var property = Property(w => w with { OrderedByTenant = true }, j => j.Nonresponsibility("2026-03-12", "2026-03-12", "2026-03-02")
            .Which(e => (NonresponsibilityRecorded)e with { Lacks = lacks }));
        Assert.Equal(expected, property.Standing);
        Assert.Equal(lacks is not null, property.Says("its verification"));
    }

    // Known Monday 2 March: the tenth day is Thursday 12 March. Known Thursday 5 March: Sunday 15 March, which rolls to Monday for the
    // owner.
    [Theory]
    [InlineData("2026-03-12", "2026-03-12", "2026-03-02", false, Standing.Narrowed)]
    [InlineData("2026-03-13", "2026-03-12", "2026-03-02", false, Standing.Open)]
    [InlineData("2026-03-12", "2026-03-13", "2026-03-02", false, Standing.Open)]
    [InlineData("2026-03-16", "2026-03-16", "2026-03-05", false, Standing.Narrowed)]
    [InlineData("2026-03-17", "2026-03-16", "2026-03-05", false, Standing.Open)]
    // the owner gets the doubt: the safer side for a claimant
    [InlineData("2026-03-12..2026-03-14", "2026-03-12", "2026-03-02", false, Standing.Narrowed)]
    [InlineData("2026-03-13..2026-03-14", "2026-03-12", "2026-03-02", false, Standing.Open)]
    [InlineData("2026-03-12", null, "2026-03-02", false, Standing.InDoubt)]
    [InlineData("2026-03-04..2026-03-05", "2026-03-05", "2026-03-05", false, Standing.InDoubt)] // perhaps before any knowledge
    [InlineData("2026-03-04", "2026-03-05", "2026-03-05", false, Standing.Open)]
    [InlineData("2026-03-05", "2026-03-04", "2026-03-05", false, Standing.Open)]
    [InlineData("2026-03-05", "2026-03-05", "2026-03-05", false, Standing.Narrowed)]
    [InlineData("2026-03-12", "2026-03-12", null, false, Standing.InDoubt)]
    [InlineData("?", "2026-03-12", "2026-03-02", false, Standing.InDoubt)]
    // Howard S. Wright Construction v. Superior Court (2003) 106 Cal.App.4th 314
    [InlineData("2026-03-12", "2026-03-12", "2026-03-02", true, Standing.InDoubt)]
    [InlineData("2026-03-12", "2026-03-12", "2026-03-02", null, Standing.InDoubt)]
    [Proves("Civ. Code § 8444")]
    public void A_notice_of_nonresponsibility_frees_the_fee_only_if_both_posted_and_recorded_within_ten_days_of_knowledge(string recorded,
        string? posted, string? knew, bool? lease, Standing expected) =>
        Assert.Equal(expected,
            Property(w => w with { OrderedByTenant = true }, j => j.Nonresponsibility(recorded, posted, knew, lease)).Standing);

    [Fact]
    [Proves("Civ. Code § 8444")]
    public void Of_several_notices_the_one_that_does_most_counts()
    {
        var late = Property(w => w with { OrderedByTenant = true }, j => j.Nonresponsibility("2026-03-10", "2026-03-20", "2026-03-02")
            .Nonresponsibility("2026-03-12", "2026-03-12", "2026-03-02"));
        Assert.Equal(Standing.Narrowed, late.Standing);
        static Finding Two(Func<JobBuilder, JobBuilder> first, Func<JobBuilder, JobBuilder> second) =>
            Property(w => w with { OrderedByTenant = true }, j => second(first(j)));
        static JobBuilder Good(JobBuilder j) => j.Nonresponsibility("2026-03-12", "2026-03-12", "2026-03-02");
        static JobBuilder Doubtful(JobBuilder j) => j.Nonresponsibility("2026-03-12", null, "2026-03-02");
        static JobBuilder Useless(JobBuilder j) => j.Nonresponsibility("2026-03-12", "2026-03-20", "2026-03-02");
        Assert.Equal(Standing.Narrowed, Two(Good, Useless).Standing);
        Assert.Equal(Standing.Narrowed, Two(Good, Doubtful).Standing);
        Assert.Equal(Standing.Narrowed, Two(Doubtful, Good).Standing);
        Assert.Equal(Standing.InDoubt, Two(Useless, Doubtful).Standing);
        Assert.Equal(Standing.Narrowed, Two(Doubtful, j => j.PartyWith("owner", p => p with { KnewOfWork = false })).Standing);
        Assert.Equal(Standing.InDoubt, Two(Doubtful, j => j.PartyWith("owner", p => p with { KnewOfWork = true })).Standing);
        Assert.Equal(Standing.InDoubt, Two(Doubtful, Useless).Standing);
    }

    // Howard S. Wright Construction v. Superior Court (2003) 106 Cal.App.4th 314: the lease decides.
    [Theory]
    [InlineData("2026-03-12", false, "A good notice of nonresponsibility", null, false)]
    [InlineData("2026-03-12", true, "does not shield an owner", null, false)]
    [InlineData("2026-03-12", null, "does not shield an owner", "Does the lease require", false)]
    [InlineData(null, false, "within 10 days of knowledge is open", "When did the landlord learn", false)]
    [InlineData("2026-03-20", false, null, null, true)]
    [Proves("Civ. Code § 8444")]
    public void The_reasons_say_what_a_notice_of_nonresponsibility_does_and_what_to_ask(string? posted, bool? lease, string? says,
        string? asks, bool ruledOut)
    {
        var property =
            Property(w => w with { OrderedByTenant = true }, j => j.Nonresponsibility("2026-03-12", posted, "2026-03-02", lease));
        Assert.Equal(says is null ? 0 : 1, property.Why.Count(w => w.Section == "Civ. Code § 8444" && w.Applied));
        Assert.True(says is null || property.Says(says));
        Assert.Equal(asks is null
            ? 0 : 1, property.Questions.Count(q => q.Text.Contains("landlord", StringComparison.Ordinal)
                || q.Text.Contains("lease", StringComparison.Ordinal)));
        Assert.True(asks is null || property.Asks(asks));
        Assert.Equal(ruledOut, property.RuledOut("Civ. Code § 8444"));
    }

    [Theory]
    [InlineData(10, true, false)]
    [InlineData(2, true, false)]
    [InlineData(1, false, false)]
    [InlineData(null, false, true)]
    [Proves("Civ. Code § 8448")]
    [Proves("Civ. Code § 8446")]
    public void Of_several_residential_structures_each_completes_alone(int? structures, bool says, bool asks)
    {
        var property = Property(w => w with { Use = WorkUse.Residential, ResidentialStructures = structures });
        Assert.Equal(says, property.Says("completes alone"));
        Assert.Equal(says, property.Says("split under Civ. Code § 8446"));
        Assert.Equal(asks, property.Asks("separate residential structures"));
        Assert.Equal(asks, Property(w => w with { Use = WorkUse.OwnerOccupiedOneToFour, ResidentialStructures = structures })
            .Asks("separate residential structures"));
        Assert.False(Property(w => w with { ResidentialStructures = null }).Asks("separate residential structures"));
    }

    [Theory]
    [InlineData(true, true, false)]
    [InlineData(false, false, false)]
    [InlineData(null, false, true)]
    [Proves("Civ. Code § 4615")]
    public void In_a_condominium_a_unit_is_bound_only_for_what_its_owner_agreed_to(bool? common, bool says, bool asks)
    {
        var property = Property(w => w with { Use = WorkUse.Residential, CommonInterest = common });
        Assert.Equal(says, property.Sections.Contains("Civ. Code § 4615"));
        Assert.Equal(asks, property.Asks("common interest development"));
        Assert.False(Property(w => w with { CommonInterest = common }).Asks("common interest development"));
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(null, false)]
    [Proves("Civ. Code § 8454")]
    public void Site_improvement_under_its_own_contract_is_a_work_of_its_own(bool? site, bool says) =>
        Assert.Equal(says, Property(w => w with { SiteImprovement = site }).Sections.Contains("Civ. Code § 8454"));

    [Theory]
    [InlineData(true, true, true, false)]
    [InlineData(null, true, false, true)]
    [InlineData(null, false, false, false)]
    [InlineData(false, true, false, false)]
    [Proves("Civ. Code § 8186")]
    public void Several_direct_contracts_are_said_or_asked_once_a_notice_is_recorded(bool? several, bool recorded, bool says, bool asks)
    {
        var property = Property(w => w with { SeveralDirectContracts = several }, j => { if (recorded) j.OwnerRecorded("2026-05-04"); });
        Assert.Equal(says, property.Sections.Contains("Civ. Code § 8186"));
        Assert.Equal(asks, property.Asks("one direct contract only"));
    }

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", 700)]
    [InlineData(ClaimantRole.Subcontractor, "direct", 700)]
    [InlineData(ClaimantRole.Supplier, "direct", null)]
    [InlineData(ClaimantRole.Laborer, "direct", null)]
    [Proves("Civ. Code § 8434")]
    public void A_contractor_enforces_its_demand_less_the_claims_of_those_under_it(ClaimantRole role, string hiredBy, int? enforceable)
    {
        var assessment = new JobBuilder().Role(role, hiredBy).Notice("2026-03-02").Furnished("2026-03-02", 1000m)
            .LowerTier("2026-05-04", 200m).LowerTier("2026-05-11", 100m).On("2026-06-01");
        Assert.Equal((decimal?)enforceable, assessment.Find("claim-of-lien.enforceable")?.Amount);
        Assert.Equal(1000m, assessment.Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8434")]
    public void It_never_falls_below_nothing_and_is_asked_where_the_file_names_none()
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Notice("2026-03-02").Furnished("2026-03-02", 1000m);
        var none = job.On("2026-06-01").Get("claim-of-lien.enforceable");
        Assert.True(none.Asks("claimed a lien"));
        Assert.Equal(Standing.Open, none.Standing);
        var some = job.LowerTier("2026-05-04", 1000.01m).On("2026-06-01").Get("claim-of-lien.enforceable");
        Assert.Equal(0m, some.Amount);
        Assert.Empty(some.Questions);
    }
}
