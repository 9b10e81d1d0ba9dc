using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

public sealed class ClaimPacketTests
{
    private static readonly Reading Saturday = new($"completion by occupation on March 29, 2026", Day("2026-06-27"), Day("2026-06-29"));
    private static readonly Reading July = new($"completion by actual finish on May 1, 2026", Day("2026-07-30"));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_mailing_that_was_taken_back_or_not_yet_learned_of_is_not_on_the_affidavit(bool takenBack)
    {
        var mailed = new ClaimServed { Index = 2, Id = "mailed", On = DayFact.On(Day("2026-05-04")), To = ["p1"],
            Manner = Manner.CertifiedMail };
        var job = takenBack
            ? Demo().With(mailed, new Withdrawn { Index = 3, On = DayFact.On(Day("2026-05-05")), Supersedes = "mailed" })
            : Demo().With(mailed with { Learned = Day("2026-05-20") });
        Assert.Equal(Kept.Packet("never-mailed", Demo()).Claim().Text, Kept.Packet(takenBack ? "taken-back" : "not-learned", job)
            .Claim().Text);
    }

    [Fact]
    public void A_packet_for_the_demo_job_passes_its_preflight()
    {
        var made = Kept.Packet("demo", Demo());
        Assert.All(made.Preflight, r => Assert.True(r.Passed, r.ToString()));
        Assert.Empty(made.InTheWay);
        Assert.Equal(["claim-of-mechanics-lien.pdf", "counter-sheet.pdf"], made.Files.Select(f => f.Name));
    }

    /// <summary>
    /// Civ. Code § 8416(a)(1)-(8), read in the Civil Code as updated 10 July 2026: each paragraph's content stands in the claim.
    /// </summary>
    [Theory]
    [InlineData("$12,345.67")]
    [InlineData("after deducting all just credits and offsets")]
    [InlineData("Alder Court Partners, LLC (reputed owner)")]
    [InlineData("Cut limestone, sills, copings and mortar")]
    [InlineData("Łukasz Masonry, Inc. (subcontractor)")]
    [InlineData("418 Alder Court, Woodland, California 95695")]
    [InlineData("County of Yolo")]
    [InlineData("027-310-014-000")]
    [InlineData("Lot 14 of Alder Court Subdivision")]
    [InlineData("2200 Plumb Street Sacramento, CA 95811")]
    [InlineData("VERIFICATION")]
    [InlineData("NOTICE OF MECHANICS LIEN ATTENTION!")]
    [InlineData("PROOF OF SERVICE AFFIDAVIT")]
    public void The_claim_holds_what_section_8416_asks_for(string text) =>
        Assert.Contains(text, Kept.Packet("contents", Demo()).Claim().Text, StringComparison.Ordinal);

    [Fact]
    public void The_claim_bears_no_acknowledgment_of_a_notary() =>
        Assert.DoesNotContain("notary", Kept.Packet("notary", Demo()).Claim().Text, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void An_unserved_claim_leaves_the_affidavit_blank_and_the_counter_sheet_says_so_first()
    {
        var made = Kept.Packet("unserved", Demo());
        var affidavit = made.Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1];
        Assert.Contains("Alder Court Partners, LLC", affidavit, StringComparison.Ordinal);
        Assert.DoesNotContain("2026", affidavit, StringComparison.Ordinal);
        var sheet = made.Sheet().Text;
        Assert.True(sheet.IndexOf("Serve before you record", StringComparison.Ordinal) < sheet.IndexOf("ACT BY", StringComparison.Ordinal));
    }

    /// <summary>Civ. Code § 8416(a)(7): date, manner, name, address, title or capacity; the article number is our own care.</summary>
    [Fact]
    public void A_served_claim_has_its_mailing_in_the_affidavit()
    {
        var made = Kept.Packet("served", Served());
        var affidavit = made.Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1];
        Assert.Contains("May 4, 2026", affidavit, StringComparison.Ordinal);
        Assert.Contains("7012 1010 0000 1234 5678", affidavit, StringComparison.Ordinal);
        Assert.Contains("77 Cordage Way", affidavit, StringComparison.Ordinal);
        Assert.Contains("reputed owner", affidavit, StringComparison.Ordinal);
        Assert.DoesNotContain("Serve before you record", made.Sheet().Text, StringComparison.Ordinal);
    }

    /// <summary>The cross of a ticked box is two slanting lines, so three squares have two more shapes where one is ticked.</summary>
    [Theory]
    [InlineData(Manner.RegisteredMail, "registered")]
    [InlineData(Manner.CertifiedMail, "certified")]
    [InlineData(Manner.CertificateOfMailing, "first-class")]
    public void Only_the_box_of_the_mail_used_is_ticked(Manner manner, string word)
    {
        var page = Kept.Packet($"ticked-{word}", Demo()
            .With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = manner })).Claim().Pages[^1];
        var crosses = page.Shapes.Where(s => s.Bottom - s.Top is > 3 and < 8 && s.Right - s.Left is > 3 and < 8).ToList();
        Assert.Equal(2, crosses.Count);
        var line = page.Words.First(w => w.Text == word && w.Baseline > crosses[0].Top);
        Assert.All(crosses, c => Assert.InRange(line.Baseline - c.Bottom, -2, 4));
    }

    /// <summary>
    /// Civ. Code § 8416(c), read in the Civil Code as updated 10 July 2026: registered, certified, or first-class mail with a certificate
    /// of mailing.
    /// </summary>
    [Theory]
    [InlineData(Manner.Personal, "hand")]
    [InlineData(Manner.OvernightCarrier, "courier")]
    [InlineData(Manner.ExpressMail, "express mail")]
    [InlineData(Manner.Substituted, "leaving and mailing")]
    public void A_copy_sent_by_any_other_means_is_refused_and_said_so(Manner manner, string word)
    {
        var refusal = Assert.Single(Kept.Refusals(Demo()
            .With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = manner })));
        Assert.Equal("served-wrong-manner", refusal.Id);
        Assert.Equal("entries[2].manner", refusal.Where.ToString());
        Assert.Contains(word, refusal.There.ToString(), StringComparison.Ordinal);
        Assert.Contains("Hand and courier do not count", refusal.Right.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_copy_by_courier_beside_a_good_mailing_is_left_out_and_said_so()
    {
        var job = Served().With(new ClaimServed { Index = 3, On = DayFact.On(Day("2026-05-05")), To = ["p1"],
            Manner = Manner.OvernightCarrier });
        var made = Kept.Packet("courier-too", job);
        Assert.DoesNotContain("May 5, 2026", made.Claim().Text, StringComparison.Ordinal);
        Assert.Contains("courier (overnight carrier) (entries[3]) does not count", made.Sheet().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mailing_after_the_day_of_asking_is_not_yet_made()
    {
        var job = Demo().With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-07")), To = ["p1"],
            Manner = Manner.CertifiedMail });
        Assert.Contains("Serve before you record", Kept.Packet("later", job).Sheet().Text, StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8416(c)(2): the lender or the original contractor, only where the owner cannot be served.</summary>
    [Fact]
    public void Service_on_the_direct_contractor_alone_asks_why_the_owner_cannot_be_served()
    {
        var job = Demo().WithOwners(new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Alder Court Partners, LLC" })
            .With(InPlace()) with { Work = Demo().Work with { Permit = null } };
        var made = Kept.Packet("in-place", job);
        var affidavit = made.Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1];
        Assert.Contains("cannot be served in the manner described, because", affidavit, StringComparison.Ordinal);
        Assert.Contains("Owner or reputed owner Alder Court Partners, LLC", affidavit, StringComparison.Ordinal);
        Assert.Contains("Address tried, and how", affidavit, StringComparison.Ordinal);
        Assert.Contains("good only if no owner can be served", made.Sheet().Text, StringComparison.Ordinal);
    }

    private static ClaimServed InPlace() =>
        new() { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p3"], Manner = Manner.CertifiedMail };

    /// <summary>
    /// Civ. Code § 8416(c)(2): the contractor only "if the owner or reputed owner cannot be served by this method"; one whose address is
    /// known was not tried.
    /// </summary>
    [Fact]
    public void Service_in_an_owner_s_place_is_refused_while_an_address_of_the_owner_is_known()
    {
        var refusal = Assert.Single(Kept.Refusals(Demo().With(InPlace())));
        Assert.Equal(("owner-not-served", "parties[0]"), (refusal.Id, refusal.Where.ToString()));
        // The permit's address is one of those of (c)(1).
        Assert.Equal("owner-not-served",
            Assert.Single(Kept.Refusals(Demo()
            .WithOwners(new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Alder Court Partners, LLC" }).With(InPlace()))).Id);
        // The owner was tried, and the contractor besides: both stand in the affidavit.
        var both = Kept.Packet("tried", Demo().With(InPlace() with { To = ["p1", "p3"] }))
            .Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1];
        Assert.Contains("Alder Court Partners, LLC", both, StringComparison.Ordinal);
        Assert.Contains("Çelik & Ōta Builders, Inc.", both, StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8416(c)(1): residence, place of business, the building permit's address, "or as otherwise provided in Section 8174".
    /// </summary>
    [Theory]
    [InlineData(AddressKind.Residence, "(residence)")]
    [InlineData(AddressKind.Business, "(place of business)")]
    [InlineData(AddressKind.Permit, "on the building permit)")]
    [InlineData(AddressKind.TrustDeed, "address in the construction trust deed (Civ. Code § 8174))")]
    [InlineData(null, "(residence or place of business)")]
    public void The_affidavit_says_what_kind_of_address_it_is(AddressKind? kind, string words)
    {
        var job = Served() with { Parties = [.. Served().Parties.Select(p => p.Id == "p1" ? p with { AddressKind = kind } : p)] };
        Assert.Contains(words, Kept.Packet($"address-{kind}", job).Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1],
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_post_office_box_is_no_address_of_the_section()
    {
        var refusals = Kept.Refusals(Served() with { Parties =
            [.. Served().Parties.Select(p => p.Id == "p1" ? p with { AddressKind = AddressKind.PostOfficeBox } : p)] });
        Assert.Equal("served-post-office-box", Assert.Single(refusals).Id);
    }

    /// <summary>
    /// Gov. Code § 27297.5(b)(3): proof of registered or certified mail takes the place of the office's notice; it does not name a
    /// certificate of mailing.
    /// </summary>
    [Theory]
    [InlineData(Manner.CertifiedMail, true)]
    [InlineData(Manner.RegisteredMail, true)]
    [InlineData(Manner.CertificateOfMailing, false)]
    public void The_office_s_notice_falls_away_by_registered_or_certified_mail_only(Manner manner, bool fallsAway)
    {
        var job = Demo().With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = manner }) with { Work =
            Demo().Work with { Site = Demo().Work.Site with { County = "Yolo" } } };
        var part = Kept.Packet($"notice-fee-{manner}", job).Fee!.Part("lien-notice");
        Assert.NotNull(part);
        Assert.Equal(fallsAway, part.Why.Contains("not charged if the office accepts", StringComparison.Ordinal));
    }

    /// <summary>
    /// Civ. Code § 8446(b): one claim on several works designates the amount due for each, or is subordinate to other liens; § 8448(b).
    /// </summary>
    [Fact]
    public void A_claim_on_several_structures_says_what_is_due_for_each()
    {
        var three = Demo() with
        {
            Work = Demo().Work with
            {
                Structures =
                [
                    new ResidentialStructure { Id = "a", Text = "House on Lot 14A", Share = 5_000m },
                    new ResidentialStructure { Id = "b", Text = "House on Lot 14B", Share = 4_000m },
                    new ResidentialStructure { Id = "c", Share = 3_345.67m },
                ],
            },
        };
        var made = Kept.Packet("three-structures", three);
        Assert.All((string[])["Amount due for each", "$5,000.00: House on Lot 14A", "$4,000.00: House on Lot 14B", "$3,345.67: c"],
            item => Assert.Contains(item, made.Claim().Text, StringComparison.Ordinal));
        Assert.DoesNotContain("ranks behind other liens", made.Sheet().Text, StringComparison.Ordinal);
        // A cent too much: the claim would contradict itself.
        var wrong = three with { Work =
            three.Work with { Structures = [.. three.Work.Structures.Select(s => s.Id == "c" ? s with { Share = 3_345.68m } : s)] } };
        Assert.Equal("shares-not-demand", Assert.Single(Kept.Refusals(wrong)).Id);
        // Not said: the claim is good, and the sheet asks.
        var unsaid = Kept.Packet("three-unsaid", Demo() with { Work = Demo().Work with { ResidentialStructures = 3 } });
        Assert.Contains("The work is on 3 structures", unsaid.Sheet().Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Amount due for each work", unsaid.Claim().Text, StringComparison.Ordinal);
        Assert.DoesNotContain("structures",
            Kept.Packet("one-structure", Demo() with { Work = Demo().Work with { ResidentialStructures = 1 } }).Sheet().Text,
            StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8416(c)(1): the address shown by the building permit is a place to serve.</summary>
    [Fact]
    public void An_owner_without_an_address_is_served_at_the_permits()
    {
        var job = Served().WithOwners(new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Alder Court Partners, LLC" });
        var affidavit = Kept.Packet("permit", job).Claim().Text.Split("PROOF OF SERVICE AFFIDAVIT")[1];
        Assert.Contains("77 Cordage Way, Davis, CA 95616", affidavit, StringComparison.Ordinal);
        Assert.Contains("on the building permit)", affidavit, StringComparison.Ordinal);
    }

    public static TheoryData<string, string, JobFile> Incomplete() => new()
    {
        { "claimant-name-missing", "claimant.name", Demo() with { Claimant = Demo().Claimant with { Name = " " } } },
        { "claimant-address-missing", "claimant.address", Demo() with { Claimant = Demo().Claimant with { Address = null } } },
        { "signer-missing", "claimant.signer.name", Demo() with { Claimant = Demo().Claimant with { Signer = null } } },
        { "owner-missing", "parties", Demo().WithOwners() },
        { "work-missing", "contract.work", Demo() with { Contract = Demo().Contract with { Work = "" } } },
        { "hirer-missing", "claimant.hiredBy", Demo() with { Claimant = Demo().Claimant with { HiredBy = null } } },
        { "hirer-missing", "claimant.hiredBy", Demo() with { Claimant = Demo().Claimant with { HiredBy = "p9" } } },
        { "site-missing", "work.site", Demo() with { Work = Demo().Work with { Site = new Site { County = "Yolo" } } } },
        { "county-missing", "work.site.county",
            Demo() with { Work = Demo().Work with { Site = Demo().Work.Site with { County = "Clark" } } } },
        { "owner-address-missing", "parties", Demo()
            .WithOwners(new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Nemo" }) with { Work =
            Demo().Work with { Permit = null } } },
        { "served-day-missing", "entries[2].on", Demo()
            .With(new ClaimServed { Index = 2, On = new DayFact.Unknown(), To = ["p1"], Manner = Manner.CertifiedMail }) },
        { "served-unknown-party", "entries[2].to", Demo()
            .With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p9"], Manner = Manner.CertifiedMail }) },
        { "served-nobody", "entries[2].to", Demo()
            .With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = [], Manner = Manner.CertifiedMail }) },
        { "served-wrong-person", "entries[2].to", Demo()
            .With(new ClaimServed { Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p2"], Manner = Manner.CertifiedMail }) },
        { "letters-missing", "the texts of the paper", Demo() with { Contract = Demo().Contract with { Work = "石 work" } } },
    };

    [Theory]
    [MemberData(nameof(Incomplete), DisableDiscoveryEnumeration = true)]
    public void A_missing_fact_is_a_named_refusal_and_a_draft_prints_anyway(string id, string where, JobFile job)
    {
        var refusal = Assert.Single(Kept.Refusals(job));
        Assert.Equal((id, where), (refusal.Id, refusal.Where.ToString()));
        Assert.NotEmpty(refusal.Right.ToString());
        var draft = Kept.Packet($"draft-{id}", job, draft: true);
        Assert.Contains(draft.InTheWay, r => r.Id == id);
        Assert.Contains("Only a draft. Not to be signed, served or recorded", draft.Sheet().Text, StringComparison.Ordinal);
        Assert.All(draft.Preflight, r => Assert.True(r.Check("DRAFT on each page")?.Passed, r.ToString()));
    }

    [Fact]
    public void All_reasons_are_given_at_once()
    {
        var job = Demo() with { Claimant = Demo().Claimant with { Address = null, Signer = null } };
        Assert.Equal(["demand-not-positive", "claimant-address-missing", "signer-missing"], Kept.Refusals(job, job.Assessed(0m))
            .Select(r => r.Id));
    }

    [Theory]
    [InlineData("lien-right")]
    [InlineData("claim-of-lien.last-day")]
    public void A_lost_right_is_refused_with_its_reasons(string id)
    {
        var lost = id == "lien-right" ? Right(Standing.Lost) : LastDay(Standing.Lost, Saturday);
        var refusal = Assert.Single(Kept.Refusals(Demo(), Demo().Assessed(instead: lost)));
        Assert.Equal(("right-lost", id), (refusal.Id, refusal.Where.ToString()));
        Assert.Contains(lost.Why[0].Text, refusal.There.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_obstacle_that_the_law_names_is_a_refusal()
    {
        var assessment = Demo()
            .Assessed() with { ClaimObstacles = [Reason.Of("Civ. Code § 8200(c)", $"No preliminary notice was given.")] };
        var refusal = Assert.Single(Kept.Refusals(Demo(), assessment));
        Assert.Equal(("law", "No preliminary notice was given.", "Civ. Code § 8200(c)"),
            (refusal.Id, refusal.There.ToString(), refusal.Section));
    }

    [Fact]
    public void A_file_that_does_not_show_the_work_ended_is_refused() =>
        Assert.Equal("not-ceased", Assert.Single(Kept.Refusals(Demo(), Demo().Assessed(instead: FirstDay(Standing.InDoubt)))).Id);

    [Fact]
    public void A_first_day_to_come_stands_on_the_counter_sheet()
    {
        var made = Kept.Packet("too-early", Demo(), Demo()
            .Assessed(instead: FirstDay(Standing.NotYet, new Reading($"the day after the last delivery", Day("2026-05-11")))));
        Assert.Contains("Do not record before Monday, May 11, 2026.", made.Sheet().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_last_day_in_doubt_stands_first_on_the_counter_sheet_in_large_type_with_both_days()
    {
        var made = Kept.Packet("in-doubt", Demo(), Demo().Assessed(instead: LastDay(Standing.InDoubt, Saturday, July)));
        var sheet = made.Sheet();
        Assert.Contains("First The last day is in doubt. It may be Saturday, June 27, 2026, or Thursday, July 30, 2026.", sheet.Text,
            StringComparison.Ordinal);
        Assert.All(sheet.Pages[0].Words.SkipWhile(w => w.Text != "First").Skip(1).TakeWhile(w => w.Text != "Plan"),
            w => Assert.True(w.Points >= 14, w.Text));
        Assert.Contains("rolls to June 29, 2026: an argument only", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_act_by_day_is_set_in_28_points_or_more_with_its_weekday()
    {
        var large = Kept.Packet("act-by", Demo()).Sheet().Pages[0].Words.Where(w => w.Points >= 28).Select(w => w.Text);
        Assert.Equal(["Friday,", "June", "26,", "2026"], large);
    }

    [Fact]
    public void The_counter_sheet_bears_the_caution() =>
        Assert.Contains(Assessment.Caution, Kept.Packet("caution", Demo()).Sheet().Text, StringComparison.Ordinal);

    [Fact]
    public void The_recorded_paper_bears_no_caution_and_no_name_of_the_program()
    {
        var text = Kept.Packet("clean", Demo()).Claim().Text;
        Assert.DoesNotContain("Not legal advice", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Stringline", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_draft_says_so_across_each_page_and_a_good_paper_does_not()
    {
        var draft = Kept.Packet("draft", Demo(), draft: true);
        Assert.All(draft.Preflight, r => Assert.True(r.Passed, r.ToString()));
        Assert.All(draft.Claim().Pages, p => Assert.Equal("DRAFT", string.Concat(p.Letters.Where(l => !l.Upright).Select(l => l.Text))));
        Assert.All(Kept.Packet("fair", Demo()).Claim().Pages, p => Assert.DoesNotContain(p.Letters, l => !l.Upright));
    }

    [Fact]
    public void The_recorder_of_another_county_is_refused() =>
        Assert.Equal("wrong-county", Assert.Single(Assert.IsType<PacketOutcome.Refused>(
            Kept.Claim(Demo(), Demo().Assessed(), draft: false, Fees.RecorderTable.For("Kern", Jobs.Day("2026-11-30"))))
            .Refusals).Id);

    [Fact]
    [Slow(Slow.Lasting)]
    public void A_packet_is_made_for_each_of_the_58_counties()
    {
        foreach (var county in Counties.All)
        {
            var job = Demo() with { Work = Demo().Work with { Site = Demo().Work.Site with { County = county } } };
            var made = Kept.Packet($"county-{county}", job);
            // $70 to $130: common practice, no source, says $70 to $110; counties that list a notice fee of $20 lie above it.
            Assert.InRange(made.Fee!.Total, 70m, 135m);
        }
    }

    [Fact]
    [Slow(Slow.Lasting)]
    public void Packets_made_at_the_same_time_do_not_disturb_each_other()
    {
        var alone = Kept.Packet("alone", Demo()).Claim().Text;
        var texts = new string[16];
        Parallel.For(0, texts.Length, i => texts[i] = Kept.Packet($"thread-{i}", Demo()).Claim().Text);
        Assert.All(texts, t => Assert.Equal(alone, t));
    }
}
