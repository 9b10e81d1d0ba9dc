using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Writing;

/// <summary>Prints a bundle with its sheet, reads every paper back, and hands over what passed.</summary>
internal static class Binding
{
    /// <summary>Prints it, or says why not.</summary>
    public static PacketOutcome Print(Paper paper, Matter matter, Bundle bundle)
    {
        var draft = matter.Options.Draft || bundle.AlwaysDraft is not null;
        var measure = new Measure();
        if (paper.Use == PaperUse.Recorded)
        {
            foreach (var refusal in SocialSecurityNumber.On(matter.Job, bundle.Papers.SelectMany(l => l.Texts)))
                matter.Refuse(refusal);
        }

        CheckLetters(paper, matter, bundle);
        CheckRoom(matter, bundle, measure);
        if (!matter.Clear && !matter.Options.Draft)
            return new PacketOutcome.Refused(matter.Refusals);
        if (matter.Refusals.Where(SocialSecurityNumber.Is).ToList() is { Count: > 0 } secrets)
            return new PacketOutcome.Refused(secrets);
        if (matter.Refusals.FirstOrDefault(r => r.Id == "return-block-full" || TooLong.Is(r)) is { } full)
            return new PacketOutcome.Refused([full]);

        List<Refusal> inTheWay = [.. matter.Refusals, .. bundle.AlwaysDraft is { } always ? [always] : Array.Empty<Refusal>()];
        List<PaperFile> files = [];
        var only = bundle.Guide.To is [var single] ? single.Name : null;
        List<PreflightReport> reports = [];
        foreach (var leaf in bundle.Papers)
        {
            var printed = Press.Print(leaf.Plan(matter.Facts.Claimant, matter.AsOf, draft), measure);
            files.Add(new PaperFile(leaf.FileName, leaf.Title, printed.Pages, printed.Bytes) { Addressee = leaf.Addressee?.Name ?? only });
            reports.Add(PaperPreflight.Check(files[^1], leaf.Expected(printed.Pages, draft)));
        }

        var fee = bundle.Guide.Recording is { } recording ? Fee(matter, recording, files[0].Pages, Until(paper, matter, bundle)) : null;
        ISheet sheet = bundle.Sheet is { } own && fee is not null ? own(fee, files[0].Pages, inTheWay)
            : new GuideSheet(paper, matter, bundle, files, fee, inTheWay);
        var plan = sheet.Plan(draft, measure);
        if (UnsetOnSheet(plan, inTheWay) is { } unset)
        {
            if (!matter.Options.Draft)
                return new PacketOutcome.Refused([unset]);
            inTheWay.Add(unset);
        }

        var page = Press.Print(plan, measure);
        files.Add(new PaperFile(sheet.FileName, sheet.Title, page.Pages, page.Bytes) { IsSheet = true, Addressee = only });
        reports.Add(PaperPreflight.Check(files[^1], new PaperExpectations { Pages = page.Pages, Draft = draft, InOrder = plan.Says }));

        var failed = reports.SelectMany(r => r.Checks.Where(c => !c.Passed).Select(c => Failed(r, c))).ToList();
        return failed.Count > 0 && !draft
            ? new PacketOutcome.Refused(failed)
            : new PacketOutcome.Made(files, fee, reports, [.. inTheWay, .. failed]) { Outlook = matter.Outlook };
    }

    /// <summary>A paper that fails its check is not handed over.</summary>
    private static Refusal Failed(PreflightReport report, PreflightCheck check) =>
        new("preflight", new Place.InWords($"{report.Paper}: {check.Name}"), Sentence.Of(check.Words),
            $"The paper does not meet what the recorder or the statute wants; it is not handed over.", check.Section);

    private static LocalDate? Until(Paper paper, Matter matter, Bundle bundle) =>
        bundle.Guide.ActBy ?? (paper.Deadline is { } id ? matter.Assessment.Find(id)?.ActBy : null);

    private static FeeEstimate Fee(Matter matter, Recording recording, int pages, LocalDate? until) => RecordingFee.Of(
        matter.Options.Office
        ?? (matter.Facts.County is { } county ? RecorderTable.For(county, matter.AsOf)
        : RecorderTable.Unnamed),
        new FeeRequest
        {
            Paper = recording.Kind,
            Pages = pages + recording.Certificates + recording.ProofPages,
            Parcels = matter.Facts.Parcels.Count,
            ParcelsTold = matter.Facts.Parcels,
            Names = recording.IsOwners ? Math.Max(1, matter.Facts.Names.Count(n => n.Side == Indexing.IndexSide.Owner))
                : Math.Max(2, matter.Facts.Names.Count),
            References = recording.References,
            ConformedCopy = true,
            NamesAtEachAddress = recording.NamesAtEachAddress,
            ServedWithCertificateOfMailing = recording.ServedWithCertificateOfMailing,
            Until = until,
        });

    private static void CheckLetters(Paper paper, Matter matter, Bundle bundle)
    {
        List<string> texts = [.. bundle.Papers.SelectMany(l => l.Texts)];
        foreach (var refusal in TooLong.In(texts, bundle.Papers.SelectMany(l => l.UnderSignatures)))
            matter.Refuse(refusal);
        if (Unset(texts, Face.Serif, Place.PaperTexts) is { } unset)
        {
            matter.Refuse(paper.Use != PaperUse.Recorded ? unset : unset with
            {
                Right = $"Write it in Latin letters, with any accents, as the deed does.",
                Section = "Gov. Code § 27201(a)",
            });
        }
    }

    /// <summary>
    /// Letters of a sheet for which its typeface has no shape; null where it has all, or where letters are in the way already.
    /// </summary>
    private static Refusal? UnsetOnSheet(PaperPlan plan, List<Refusal> inTheWay) =>
        Unset(plan.Says, Face.Sans, new Place.InWords("the texts of the sheet")) is { } unset && inTheWay.TrueForAll(r => r.Id != unset.Id)
        ? unset : null;

    // Letters for which the typeface has no shape; null where it has all.
    private static Refusal? Unset(IEnumerable<string> texts, Face face, Place where)
    {
        var missing = texts.SelectMany(t => Fonts.Missing(face, t)).Distinct().ToList();
        return missing.Count == 0 ? null : new Refusal("letters-missing", where,
            $"The typeface has no letter for {string.Join(" ", missing.Select(m => $"'{m}' (U+{char.ConvertToUtf32(m, 0):X4})"))}.",
            $"Write it in Latin letters, with any accents.", "");
    }

    private static void CheckRoom(Matter matter, Bundle bundle, Measure measure)
    {
        if (bundle.Papers.Any(l => l.Return is { } block && !block.Fits(measure)))
        {
            matter.Refuse("return-block-full", new Place.OfHead("claimant.address"),
                $"Name and address do not fit in the 3½ by 2½ inches that the first page has for them, even in the smallest type.",
                $"Shorten the mailing address.", "Gov. Code § 27361.6");
        }
    }
}
