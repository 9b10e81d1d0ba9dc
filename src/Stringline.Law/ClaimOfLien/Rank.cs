using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Whether the lien stands before or behind the deed of trust of a construction lender (Civ. Code §§ 8316, 8450-8458).</summary>
public static class Rank
{
    // How it stands toward one lender, and why.
    private sealed record Toward(Standing Standing, Reason Why, Question? Ask = null);

    /// <summary>The finding <c>lien-right.rank</c>; null where the file names no lender.</summary>
    public static Finding? Finding(FactsAsOf facts, Reach reach)
    {
        var lenders = facts.Job.In(PartyCapacity.ConstructionLender);
        if (lenders.Count == 0)
            return null;
        var each = new Toward[lenders.Count];
        var standing = Standing.Open;
        for (var i = 0; i < each.Length; i++)
        {
            each[i] = Of(facts, lenders[i], reach);
            standing = Worse(standing, each[i].Standing);
        }

        return new Finding
        {
            Id = "lien-right.rank",
            Title = "Rank of the lien",
            Standing = standing,
            Explain = () => [.. each.Select(t => t.Why)],
            Ask = () => [.. each.Select(t => t.Ask).OfType<Question>().Distinct()],
        };
    }

    private static Standing Worse(Standing a, Standing b) =>
        a == Standing.InDoubt || b == Standing.InDoubt ? Standing.InDoubt : a == Standing.Narrowed ? a : b;

    private static Toward Of(FactsAsOf facts, Party lender, Reach reach)
    {
        if (IsDesignLien(facts))
            return BehindAlways(lender);
        if (lender.DeedRecorded is not { } deed)
            return new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8450", $"The lien stands before a deed of trust that attached after the work commenced at the site, "
                    + $"and behind one recorded before; the file does not say when that of {lender.Name} was recorded."),
                new Question($"When was the deed of trust of {lender.Name} recorded?{HeadField.PartiesDeedRecorded:aside}"));
        if (facts.Job.Work.Commenced is not { } commenced)
            return new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8450", $"The deed of trust of {lender.Name} was recorded {deed}; whether the work had commenced at "
                    + $"the site by then decides."),
                new Question($"On which day did the work commence, and what was visible at the site that day? Take photographs, and keep "
                    + $"those there are.{HeadField.WorkCommenced:aside}"));
        var stands = facts.Job.Work.SiteImprovement == true
            ? OfSiteImprovement(facts, lender, deed, commenced) : OfTheWork(facts, lender, deed, commenced);
        return stands.Standing == Standing.Open && !reach.Toward(lender).GivenToAll
            ? new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8200(a)(3)", $"Preliminary notice did not surely reach {lender.Name} for all the work, so that it "
                    + $"may say that the lien is none toward it.", stands.Why))
            : reach.Toward(lender).Kind == ReachKind.Late && stands.Standing == Standing.Open
                ? new Toward(Standing.InDoubt,
                    Reason.Of("Civ. Code § 8204(a)", $"Preliminary notice reached {lender.Name} late: for work "
                        + $"before {reach.Toward(lender).From!.Value.Latest} it may say that the lien is none toward it.", stands.Why))
                : stands;
    }

    private static bool IsDesignLien(FactsAsOf facts)
    {
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (claim.Lien == LienKind.Design)
                return true;
        }

        return false;
    }

    [Rule("Civ. Code § 8316")]
    private static Toward BehindAlways(Party lender) => new(Standing.Narrowed,
        Reason.Of("Civ. Code § 8316", $"A design professional's lien is behind whatever was recorded before it, and behind the loan "
            + $"of {lender.Name} for the work always."));

    /// <summary>
    /// Before what attached after the work commenced, or was unrecorded then and unknown; a bond that names the deed, of 75 percent of it,
    /// turns it round for later work.
    /// </summary>
    [Rule("Civ. Code § 8450")]
    [Rule("Civ. Code § 8452")]
    private static Toward OfTheWork(FactsAsOf facts, Party lender, LocalDate deed, LocalDate commenced)
    {
        if (deed < commenced)
            return new Toward(Standing.Narrowed,
                Reason.Of("Civ. Code § 8450", $"Behind the deed of trust of {lender.Name}: it was recorded {deed}, before the work "
                    + $"commenced {commenced}."));
        if (deed == commenced)
            return new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8450", $"The deed of trust of {lender.Name} was recorded on the day the work "
                    + $"commenced, {commenced}: the hour decides. Keep photographs of the site."));
        var before =
            Reason.Of("Civ. Code § 8450", $"Before the deed of trust of {lender.Name}: the work commenced {commenced}, and the deed was "
                + $"recorded {deed}. Commencement is visible work or material at the site (Walker v. Lytton Savings (1970) 2 Cal.3d 152): "
                + $"keep photographs.");
        return facts.Job.Work.PaymentBond is { Recorded: { } bond }
            ? new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8452", $"A payment bond was recorded {bond}: if it names the deed of trust "
                    + $"of {lender.Name} and is at least {facts.Numbers.On(Number.BondBeforeDeed, bond)} of its principal, the deed stands "
                    + $"before the lien for work after that day. Look at the bond.", before))
            : new Toward(Standing.Open, before);
    }

    /// <summary>
    /// A site improvement lien stands before an earlier deed too, if that was given to finance it; a bond of 50 percent turns it round.
    /// </summary>
    [Rule("Civ. Code § 8458")]
    private static Toward OfSiteImprovement(FactsAsOf facts, Party lender, LocalDate deed, LocalDate commenced)
    {
        if (deed <= commenced)
            return new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8458", $"The deed of trust of {lender.Name} was recorded {deed}, not after the site improvement "
                    + $"commenced {commenced}: the lien stands before it only if the loan was given solely or primarily to finance the "
                    + $"site improvement."));
        var before =
            Reason.Of("Civ. Code § 8458", $"Before the deed of trust of {lender.Name}: the site improvement commenced {commenced}, and the "
                + $"deed was recorded {deed}. Keep photographs.");
        return facts.Job.Work.PaymentBond is { Recorded: { } bond }
            ? new Toward(Standing.InDoubt,
                Reason.Of("Civ. Code § 8458",
                    $"A payment bond was recorded {bond}: one of at "
                        + $"least {facts.Numbers.On(Number.BondBeforeSiteImprovement, bond)} of the principal, recorded before completion, "
                        + $"puts the deed first.", before))
            : new Toward(Standing.Open, before);
    }
}
