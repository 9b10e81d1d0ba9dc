namespace Stringline.Published;

/// <summary>C-39: a license suspended during the work.</summary>
public sealed class SubstantialCompliance
{
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void C_39_one_licensed_at_the_start_must_be_heard() => new CaseNote
    {
        Number = "C-39",
        Citation = "Pacific Caisson & Shoring v. Bernards Bros. (2011) 198 Cal.App.4th 681 and (2015) 236 Cal.App.4th 1246",
        Read = "excerpts; notes",
        Law = "Bus. & Prof. Code § 7031(a), (e), current law",
        Facts = "Subcontractor on a hospital, licensed when the work began; its license was suspended for two and a half months during the "
            + "work. Days and sums below are made up.",
        Question = "Is all recovery barred, or may a court find substantial compliance?",
        Held = "In 2011: it was duly licensed before the performance, so the rest must be heard. In 2015, after the hearing: no "
            + "substantial compliance; nothing recovered.",
        Then = "Current law.",
        Now = "In doubt, with the three questions of the statute; lost once the file says that there was no good faith.",
        Takes =
        [
            new("as it stood in 2011", Job(null),
                "2008-06-30",
                Is("license", Standing.InDoubt),
                Asks("license", "before this work began"),
                Asks("license", "in good faith to keep the license"),
                Asks("license", "promptly and in good faith")),

            new("as it stood in 2015", Job(false),
                "2008-06-30",
                Is("license", Standing.Lost)),

            new("had it first been licensed after the work began: nothing to hear", Job(null, from: "2007-03-06"),
                "2008-06-30",
                Is("license", Standing.Lost)),
        ],
    }.Holds();

    private static JobBuilder Job(bool? goodFaith, string from = "1990-01-02") => new JobBuilder().Role(ClaimantRole.Subcontractor)
        .Claimant(c => c with
        {
            License = new License
            {
                Required = true,
                GoodFaith = goodFaith,
                Active = [new LicenseSpan(JobBuilder.Day(from), JobBuilder.Day("2007-06-30")),
                    new LicenseSpan(JobBuilder.Day("2007-09-15"), null)],
            },
        })
        .Furnished("2007-03-05", 10_000m, until: "2008-02-29").Ended("2008-02-29");
}
