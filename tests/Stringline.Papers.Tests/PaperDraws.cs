global using PaperDraw = (string Id, Stringline.Law.Facts.JobFile Job, NodaTime.LocalDate AsOf,
    Stringline.Papers.Catalogue.PaperOptions Options);

using CsCheck;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>Job files and requests drawn at random, for properties that hold of every paper.</summary>
internal static class PaperDraws
{
    private static readonly Gen<LocalDate?> MaybeDay = Gen.OneOf(Gen.Const((LocalDate?)null), JobFileGen.Day.Select(d => (LocalDate?)d));

    private static readonly Gen<decimal?> MaybeMoney = Gen.OneOf(Gen.Const((decimal?)null), JobFileGen.Money.Select(m => (decimal?)m));

    private static readonly Gen<string?> MaybeText = Gen.OneOf((string?[])
        [null, "Fee simple", "Łukasz Masonry, Inc.", "", " ", "木", "a\nb", "x\u0000y",
            string.Concat(Enumerable.Repeat("Schiffahrtsgesellschaft", 30)), string.Concat(Enumerable.Repeat("one two three ", 400))]);

    /// <summary>What may be told with a request, sense or not.</summary>
    public static Gen<PaperOptions> Options { get; } =
        from draft in Gen.OneOf(false, false, false, true)
        from to in Gen.OneOf("p1", "p2", "owner", "nobody").Array[0, 3]
        from days in MaybeDay.Array[4]
        from money in MaybeMoney.Array[2]
        from texts in MaybeText.Array[4]
        from bonded in Gen.Bool
        from grounds in Gen.Enum<ReleaseGround>().Array[0, 2]
        from extension in Gen.OneOf((int?[])[null, null, 1, 30])
        from documents in MaybeText.Array[0, 2]
        from releases in MaybeMoney
        from again in Gen.Bool
        from whole in Gen.Bool
        select new PaperOptions
        {
            WholeWork = whole, FormerOwner = texts[3],
            Grounds = grounds, ExtensionDays = extension, Documents = [.. documents.OfType<string>()],
            Draft = draft, To = to, Through = days[0], PaymentCleared = days[1], Until = days[2], Day = days[3], Amount = money[0],
                Disputed = money[1],
            Releases = releases, ThroughAgain = again ? days[0] : days[1],
            Maker = texts[0], Payee = texts[1], Words = texts[2], Number = texts[3], Bonded = bonded,
        };

    /// <summary>
    /// Files that the format can say, files of plausible liens, and files that fit a paper with some of their texts made strange.
    /// </summary>
    public static Gen<(JobFile Job, LocalDate AsOf)> Files { get; } = Gen.OneOf(
        Gen.Select(JobFileGen.Job, JobFileGen.Day),
        Gen.Select(LienJobGen.HalfAYear.Journal, LienJobGen.HalfAYear.AsOf),
        Gen.Select(Gen.OneOf(PaperCatalogue.All.Select(p => p.Id).ToArray()), Strange, Gen.Int[-40, 60]).Select((id, strange, days) =>
        {
            var (job, asOf, _) = PaperJobs.For(id);
            return (strange(job), asOf.PlusDays(days));
        }));

    private static Gen<Func<JobFile, JobFile>> Strange =>
        from text in MaybeText
        from place in Gen.Int[0, 9]
        select (Func<JobFile, JobFile>)(job => place switch
        {
            0 => job with { Claimant = job.Claimant with { Name = text ?? "" } },
            1 => job with { Claimant = job.Claimant with { Address = text } },
            2 => job with { Claimant = job.Claimant with { Signer = text is null ? null : new Signer(text, text) } },
            3 => job with { Contract = job.Contract with { Work = text } },
            4 => job with { Work = job.Work with { Site = job.Work.Site with { Legal = text, Street = null } } },
            5 => job with { Work = job.Work with { Site = job.Work.Site with { Apn = text, County = text } } },
            6 => job with { Parties = [.. job.Parties.Select(p => p with { Name = text ?? p.Name })] },
            7 => job with { Parties = [.. job.Parties.Select(p => p with { Address = text })] },
            _ => job,
        });

    private static readonly Gen<decimal> Cents = Gen.Int[1, 3_000_000].Select(drawn => drawn / 100m);

    private static readonly Gen<DayFact> Spring = Gen.Int[0, 150].Select(days => DayFact.On(new LocalDate(2026, 2, 16).PlusDays(days)));

    private static readonly Gen<Entry> Sum = Gen.OneOf<Entry>(
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new Paid { Index = 0, On = on, Amount = amount }),
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new Credited { Index = 0, On = on, Amount = amount }),
        Gen.Select(Spring, Cents, Gen.Bool,
            (on, amount, agreed) => (Entry)new Change { Index = 0, On = on, Amount = amount, Agreed = agreed }),
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new Retained { Index = 0, On = on, Amount = amount }),
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new Disputed { Index = 0, On = on, Amount = amount }),
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new Furnished { Index = 0, On = on, Until = on, Amount = amount }),
        Gen.Select(Spring, Cents, (on, amount) => (Entry)new StopPaymentReleased { Index = 0, On = on, Amount = amount }));

    // Any file: as a draft every paper is made, whatever stands against it.
    private static readonly Gen<PaperDraw> Drafts =
        from id in Gen.OneOf(PaperCatalogue.All.Select(p => p.Id).ToArray())
        from file in Files
        from options in Options
        select (id, file.Job, file.AsOf, options with { Draft = true });

    private static readonly Gen<PaperDraw> Fitting =
        from id in Gen.OneOf(PaperCatalogue.All.Select(p => p.Id).ToArray())
        from more in Sum.Array[0, 4]
        from days in Gen.Int[-3, 12]
        from told in Gen.OneOf(Gen.Const((decimal?)null), Cents.Select(c => (decimal?)c))
        from kept in Gen.Int[0, 2]
        from draft in Gen.OneOf(false, false, false, true)
        select Fit(id, more, days, told, kept, draft);

    /// <summary>
    /// The file that fits a paper with more sums entered, and the request that fits it with another sum told, or none; or any file, and a
    /// draft.
    /// </summary>
    public static Gen<PaperDraw> Sums { get; } =
        Gen.Frequency((3, Fitting), (1, Drafts));

    private static PaperDraw Fit(
        string id, Entry[] more, int days, decimal? told, int kept, bool draft)
    {
        var (job, asOf, options) = PaperJobs.For(id);
        // A demand toward the owner leaves retention out, a notice with a bond names its sum, and a claim may be for money alone.
        if (id == "payment-demand" && kept == 1)
            job = PaperJobs.Direct();
        options = options with { Bonded = kept == 0, ExtensionDays = kept == 0 ? null : options.ExtensionDays };
        var entries = job.Entries.Concat(more).Select((entry, index) => entry with { Index = index });
        job = job with { Entries = [.. entries] };
        options = options with { Amount = kept > 0 ? options.Amount : told, Draft = draft };
        return (id, job, asOf.PlusDays(days), PaperJobs.Typed(id, job, asOf.PlusDays(days), options));
    }

    private static readonly Gen<Entry> EarlierWaiver = Gen.Select(Spring, Gen.Int[-30, 5], Gen.Enum<WaiverForm>(), Cents, Gen.Int[0, 3],
        (on, back, form, amount, cleared) => (Entry)new Waived
        {
            Index = 0, On = on, Form = form, Amount = amount,
            Through = form is WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress ? on.Earliest!.Value.PlusDays(back) : null,
            PaymentCleared = cleared == 0 ? on.Latest!.Value.PlusDays(4) : null,
        });

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Waivable = Gen.OneOf(
        Gen.Select(LienJobGen.HalfAYear.Journal, LienJobGen.HalfAYear.AsOf),
        from id in Gen.OneOf("waiver-8132", "waiver-8134", "waiver-8136", "waiver-8138", "payment-demand", "public-stop-payment-notice")
        from sums in Sum.Array[0, 4]
        from waivers in EarlierWaiver.Array[0, 2]
        from days in Gen.Int[-20, 60]
        let fitting = PaperJobs.For(id)
        select (fitting.Job with
            { Entries = [.. fitting.Job.Entries.Concat(sums).Concat(waivers).Select((entry, index) => entry with { Index = index })] },
            fitting.AsOf.PlusDays(days)));

    /// <summary>A waiver of any form on a job with sums, changes, retention and earlier waivers of any form, as a draft.</summary>
    public static Gen<(WaiverForm Form, JobFile Job, LocalDate AsOf, PaperOptions Options)> Waivers { get; } =
        from file in Waivable
        from form in Gen.Enum<WaiverForm>()
        from back in Gen.Int[-20, 120]
        from amount in Cents
        from kept in Gen.OneOf(Gen.Const((decimal?)null), Cents.Select(c => (decimal?)c))
        select (form, file.Job, file.AsOf, new PaperOptions
        {
            Draft = true, Amount = amount, Maker = "Łukasz Masonry, Inc.", PaymentCleared = file.AsOf, Disputed = kept,
            Through = file.AsOf.PlusDays(-back),
        });
}
