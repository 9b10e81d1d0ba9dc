namespace Stringline.Published;

/// <summary>
/// C-30, C-31, C-38: an owner's notice of nonresponsibility before the work, and a preliminary notice that lacks its statement.
/// </summary>
public sealed class NoticesThatLack
{
    [Fact]
    [Proves("Civ. Code § 8442")]
    [Proves("Civ. Code § 8444")]
    public void C_30_a_notice_of_nonresponsibility_before_the_work_protects_nobody() => new CaseNote
    {
        Number = "C-30",
        Citation = "Hayward Lumber & Investment v. Ross (1939) 32 Cal.App.2d 455",
        Read = "excerpt; summary",
        Law = "Code Civ. Proc. § 1192 → Civ. Code §§ 8442(b), 8444",
        Facts = "A supplier to alterations for a tenant in Bakersfield. The owner posted and recorded its notice months before the work "
            + "began, and none after; it knew of the lease and of nothing under way. The days are ours.",
        Question = "Does a notice posted before any work protect the owner's fee?",
        Held = "No. It must follow knowledge of actual construction. Reversed for the supplier.",
        Then = "The fee is bound.",
        Now = "The same.",
        Takes =
        [
            new("as the court held", ForTenant(Supplier()).Nonresponsibility("2025-05-14", "2025-05-13", "2025-08-01"), "2025-12-01",
                Is("lien-right.property", Standing.Open),
                RuledOut("lien-right.property", "Civ. Code § 8444")),
        ],
    }.Holds();

    [Fact]
    [Proves("Civ. Code § 8444")]
    public void C_31_talk_of_a_project_is_no_knowledge_of_work() => new CaseNote
    {
        Number = "C-31",
        Citation = "Jay Bailey Construction v. Berry Hotel (1963) 221 Cal.App.2d 135",
        Read = "excerpt; summary",
        Law = "Code Civ. Proc. § 1183.1 → Civ. Code §§ 8442, 8444",
        Facts = "A direct contractor of the lessee of a hotel bar in Sacramento. The owner had a letter about a project, posted and "
            + "recorded on the day it saw work, and again within ten days after it saw this claimant's work. The days are ours.",
        Question = "Was the first too early, the second too late?",
        Held = "Neither. No lien on the fee.",
        Then = "The fee is not bound.",
        Now = "The same, unless the lease makes the tenant build.",
        Takes =
        [
            new("as the court held: known when work was seen", ForTenant(DirectContractor())
                .Nonresponsibility("2025-08-01", "2025-08-01", "2025-08-01").Nonresponsibility("2025-08-14", "2025-08-14", "2025-08-05"),
                "2025-12-01",
                Is("lien-right.property", Standing.Narrowed)),
            new("the lease makes the tenant build", ForTenant(DirectContractor())
                .Nonresponsibility("2025-08-01", "2025-08-01", "2025-08-01", leaseRequiresWork: true), "2025-12-01",
                Is("lien-right.property", Standing.InDoubt)),
            new("had the letter been answered with a notice before the work", ForTenant(DirectContractor())
                .Nonresponsibility("2025-07-10", "2025-07-10", "2025-07-07"), "2025-12-01",
                Is("lien-right.property", Standing.InDoubt),
                Says("lien-right.property", "Jay Bailey")),
        ],
    }.Holds();

    private static JobBuilder ForTenant(JobBuilder file) => file
        .Work(w => w with { OrderedByTenant = true, Commenced = JobBuilder.Day("2025-08-01") })
        .Furnished("2025-08-05", 6430.00m).NoticeNotInIssue("2025-08-05");

    [Fact]
    [Proves("Civ. Code § 8102(b)")]
    public void C_38_a_notice_without_its_statement_is_in_doubt_at_best() => new CaseNote
    {
        Number = "C-38",
        Citation = "Harold L. James, Inc. v. Five Points Ranch (1984) 158 Cal.App.3d 1",
        Read = "excerpt",
        Law = "Civ. Code § 3097 → §§ 8102, 8202",
        Facts = "Preliminary notice sent by certified mail, without the statement that the section asks for. The days and the sum are "
            + "ours.",
        Question = "Will it do?",
        Held = "No; foreclosure lost on summary judgment.",
        Then = "No lien.",
        Now = "In doubt: today's § 8102(b) saves a variance where the person told learns in substance what it must know.",
        Takes =
        [
            new("the statement left out", Supplier().Furnished("2025-08-05", 6430.00m)
                    .Add(i => new NoticeGiven { Index = i, On = JobBuilder.When("2025-08-14"), Notice = NoticeKind.Preliminary,
                        To = ["owner", "direct"], Manner = Manner.CertifiedMail, Lacks = "the statement of Civ. Code § 8202(a)(3)" }),
                "2025-12-01",
                Is("preliminary-notice.last-day", Standing.InDoubt),
                Because("preliminary-notice.last-day", "Civ. Code § 8102(b)"),
                Demand(6430.00m)),
        ],
    }.Holds();
}
