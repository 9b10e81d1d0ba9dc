using CsCheck;
using Stringline.Web.Entering;
using Stringline.Office.Entering;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>What is typed becomes the entry that was meant, or is refused beside its field.</summary>
public sealed class DraftTests
{
    private static readonly LocalDate Late = new(2060, 1, 1);

    /// <summary>The kinds of entry come from the law library, by reflection: a kind without a form fails here.</summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void Every_kind_of_entry_has_a_form_and_its_form_gives_the_same_entry_back()
    {
        var met = new HashSet<Type>();
        JobFileGen.Job.Sample(
            job =>
            {
                for (var i = 0; i < job.Entries.Count; i++)
                {
                    var before = job with { Entries = [.. job.Entries.Take(i)] };
                    var (what, typed) = Typed.Of(job.Entries[i]);
                    var draft = EntryDraft.Of(before, EntryForms.Find(what)!, typed, Late, job.Entries[i].Supersedes);
                    Assert.True(draft.Faults.None, $"{what}: {draft.Faults.Whole}");
                    Assert.NotNull(draft.Entry!.Id);
                    var meant = job with { Entries = [.. job.Entries.Take(i), job.Entries[i] with { Id = draft.Entry.Id }] };
                    Assert.Null(JobFileDifference.Between(meant, draft.Job!));
                    met.Add(job.Entries[i].GetType());
                }
            },
            iter: 400,
            threads: 1);
        var kinds = typeof(Entry).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Entry)) && !type.IsAbstract).ToHashSet();
        Assert.Equal(kinds, met);
        Assert.Equal(kinds.Count, EntryForms.All.Count);
    }

    [Fact]
    [Slow(Slow.Lasting)]
    public void The_parts_of_the_file_give_the_same_file_back_when_nothing_is_changed() => JobFileGen.Job.Sample(
        job =>
        {
            foreach (var part in HeadForms.All)
            {
                var draft = HeadDraft.Of(job, part, HeadDraft.Typed(job, part));
                Assert.True(draft.Faults.None, $"{part.Word}: {draft.Faults.Whole}");
                Assert.Equal(JournalText.Head(job), JournalText.Head(draft.Job!));
            }
        },
        iter: 150,
        threads: 1);

    [Theory]
    [InlineData("amount", "12,5x", "amount")]
    [InlineData("amount", "", "amount")]
    [InlineData("amount", "0", "amount")]
    [InlineData("when-on", "2026-02-30", "when")]
    [InlineData("when-on", "", "when")]
    [InlineData("when", "unknown", "when")]
    [InlineData("when", "", "when")]
    [InlineData("when-first", "2026-05-01", "when")]
    [InlineData("toward", "NO-SUCH-REF", "toward")]
    [InlineData("learned", "2026-13-01", "learned")]
    [InlineData("learned", "2061-01-01", "learned")]
    public void What_cannot_be_taken_is_said_beside_its_field(string field, string value, string beside)
    {
        var typed = Payment("1500.00");
        typed.Set(field, value);
        var draft = EntryDraft.Of(Owed(), EntryForms.Find("paid")!, typed, Late, null);
        Assert.Null(draft.Job);
        Assert.NotNull(draft.Faults.Of(beside));
    }

    /// <summary>
    /// The demand is what is due after deducting all just credits and offsets (Civ. Code § 8416(a)(1)): $10,000.00 less $1,500.00.
    /// </summary>
    [Fact]
    public void A_payment_takes_its_dollars_off_the_demand_and_the_table_says_so()
    {
        var row = Assert.Single(Changes(Owed(), "paid", Payment("1,500.00")), row => row.What == "The demand");
        Assert.Equal(("$10,000.00", "$8,500.00", "$1,500.00 less"), (row.Before.ToString(), row.After.ToString(), row.Moves));
    }

    /// <summary>
    /// Completed on Monday 1 June 2026: 90 days after (Civ. Code § 8412(a)) is Sunday 30 August, so the day to plan on is Friday 28 August.
    /// Weekdays from the calendar of 2026.
    /// </summary>
    [Fact]
    public void A_completion_sets_the_last_day_and_the_table_says_so()
    {
        var typed = On("2026-06-01");
        typed.Set("by", "actual");
        var rows = Changes(Owed(), "completed", typed).Where(row => row.Finding == "claim-of-lien.last-day").ToList();
        Assert.Equal("2026-08-28 (Fri)", Assert.Single(rows, row => row.Aspect == "act by").After.ToString());
        Assert.Contains("2026-08-30 (Sun)", Assert.Single(rows, row => row.Aspect == "days").After.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_changes_nothing_has_an_empty_table()
    {
        var assessment = UseCases.Assess(Owed(), new LocalDate(2026, 7, 15));
        Assert.Empty(WhatChanges.Between(assessment, UseCases.Assess(Owed(), new LocalDate(2026, 7, 15))).Rows);
    }

    /// <summary>
    /// Forms of Civ. Code §§ 8134 and 8138: enforceable on signing, "even if you have not been paid"; those of §§ 8132 and 8136 only once
    /// the claimant has received payment.
    /// </summary>
    [Theory]
    [InlineData("8138", "binds on signing, paid or not; it releases $10,000.00")]
    [InlineData("8136", "does not bind until the payment it describes clears; then it releases $10,000.00")]
    public void A_waiver_says_what_it_releases_before_it_is_written(string form, string told)
    {
        var typed = On("2026-06-30");
        typed.Set("form", form);
        typed.Set("amount", "10000");
        var draft = EntryDraft.Of(Owed(), EntryForms.Find("waived")!, typed, Late, null);
        Assert.Contains(told, WaiverWords.Of(draft.Entry!, UseCases.Assess(draft.Job!, new LocalDate(2026, 7, 15))),
            StringComparison.Ordinal);
    }

    private static IReadOnlyList<Changed> Changes(JobFile job, string what, Typed typed)
    {
        var asOf = new LocalDate(2026, 7, 15);
        var draft = EntryDraft.Of(job, EntryForms.Find(what)!, typed, Late, null);
        Assert.True(draft.Faults.None);
        return WhatChanges.Between(UseCases.Assess(job, asOf), UseCases.Assess(draft.Job!, asOf)).Rows;
    }

    private static Typed On(string day)
    {
        var typed = new Typed();
        typed.Set(WhenTyped.Choice, WhenTyped.On);
        typed.Set(WhenTyped.Day, day);
        return typed;
    }

    private static Typed Payment(string amount)
    {
        var typed = On("2026-06-15");
        typed.Set("amount", amount);
        return typed;
    }

    // A direct contractor to whom $10,000.00 is owed, and who needs no preliminary notice: no lender (Civ. Code § 8200(e)(2)).
    internal static JobFile Owed(string name = "Sawpit Row") => new()
    {
        Name = name,
        Work = new Work { Kind =
            WorkKind.Private, Use = WorkUse.Commercial, Site = new Site { Street = "12 Sawpit Row", City = "Woodland", County = "Yolo" } },
        Claimant = new Claimant { Name = "Quillback Masonry, Inc.", Role = ClaimantRole.DirectContractor, HiredBy = "p1",
            License = new License { Required =
                true, Number = "0000417", Class = "C-29", Active = [new LicenseSpan(new LocalDate(2020, 1, 1), null)] } },
        Parties = [new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Alder Holdings, LLC" }],
        Contract = new Contract { On = new LocalDate(2026, 1, 5), Written = true, Price = 10_000m },
        Entries =
        [
            new Furnished { Index = 0, Id = "e1", On = DayFact.On(new LocalDate(2026, 3, 2)), Until = DayFact.On(new LocalDate(2026, 3, 2)),
                Amount = 10_000m, Ref = "INV-1" },
            new FurnishingEnded { Index = 1, Id = "e2", On = DayFact.On(new LocalDate(2026, 3, 2)) },
        ],
    };
}
