namespace Stringline.Published;

/// <summary>How the job file of a case begins. What was not in issue there is set so that it is not in issue here.</summary>
public static class CaseFile
{
    /// <summary>A direct contractor; hired by the owner, so that preliminary notice is due to a lender only.</summary>
    public static JobBuilder DirectContractor() => Begin(ClaimantRole.DirectContractor, "owner");

    /// <summary>A subcontractor of the direct contractor.</summary>
    public static JobBuilder Subcontractor() => Begin(ClaimantRole.Subcontractor, "direct");

    /// <summary>A material supplier to the direct contractor.</summary>
    public static JobBuilder Supplier() => Begin(ClaimantRole.Supplier, "direct");

    /// <summary>A material supplier to the owner.</summary>
    public static JobBuilder SupplierToOwner() => Begin(ClaimantRole.Supplier, "owner");

    /// <summary>A material supplier or an equipment lessor to a subcontractor.</summary>
    public static JobBuilder ToSubcontractor(ClaimantRole role) =>
        Begin(role, "sub").Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.");

    /// <summary>A design professional hired by the owner.</summary>
    public static JobBuilder DesignProfessional() => Begin(ClaimantRole.DesignProfessional, "owner");

    /// <summary>Any claimant.</summary>
    public static JobBuilder Begin(ClaimantRole role, string hiredBy) => new JobBuilder()
        .Role(role, hiredBy)
        .Claimant(c => c with { License = role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor ? AlwaysLicensed : null });

    private static License AlwaysLicensed { get; } = new() { Required = true, Active = [new LicenseSpan(new LocalDate(1900, 1, 1), null)] };

    /// <summary>Preliminary notice was not in issue: it is entered as given to everyone it is due to, on the first day of work.</summary>
    public static JobBuilder NoticeNotInIssue(this JobBuilder file, string firstDayOfWork) =>
        file.Notice(firstDayOfWork, Manner.CertifiedMail, "owner", "direct");

    /// <summary>A stop payment notice was given, with a bond.</summary>
    public static JobBuilder StopPayment(this JobBuilder file, string on, string to, decimal? amount = null) =>
        file.Add(i => new StopPaymentGiven { Index = i, On = JobBuilder.When(on), To = [to], Amount = amount, Bonded = true });

    /// <summary>The site waits for acceptance by a public authority, which takes over what is built; null where that is not said.</summary>
    public static JobBuilder SubjectToAcceptanceBy(this JobBuilder file, string authority, bool? takesOver = true) =>
        file.Work(w => w with { SubjectToAcceptanceBy = authority, PublicTakesOver = takesOver });
}
