using System.Text.RegularExpressions;
using Stringline.Law.Facts;

namespace Stringline.Papers;

/// <summary>
/// A paper that is recorded is open to everyone for good: a number that looks like a social security number is never printed on one,
/// on a draft neither.
/// </summary>
internal static partial class SocialSecurityNumber
{
    /// <summary>Id of the refusal.</summary>
    public const string Id = "social-security-number";

    /// <summary>Whether the refusal is of this kind: nothing is printed, a draft neither.</summary>
    public static bool Is(Refusal refusal) => refusal.Id == Id;

    /// <summary>One refusal for each field from which a printed text takes such a number.</summary>
    /// <param name="job">The facts.</param>
    /// <param name="printed">Everything the paper says.</param>
    public static IEnumerable<Refusal> On(JobFile job, IEnumerable<string> printed)
    {
        var found = printed.SelectMany(Numbers).ToHashSet(StringComparer.Ordinal);
        if (found.Count == 0)
            return [];
        List<Place> fields =
            [.. Fields(job).Where(f => Numbers(f.Text ?? "").Any(found.Contains)).Select(f => f.Field).Distinct()];
        return fields.DefaultIfEmpty(Place.PaperTexts).Select(field => new Refusal(Id, field,
            $"A number stands there that looks like a social security number.",
            $"Take it out, or leave its last four digits: a recorded paper is open to everyone. If it is another number, write it so that "
                + $"it "
            + $"does not look like one.", "common practice, not verified"));
    }

    private static IEnumerable<string> Numbers(string text) =>
        Bare().Matches(text).Concat(Told().Matches(text)).Select(m => string.Concat(m.Value.Where(char.IsAsciiDigit)));

    private static IEnumerable<(Place Field, string? Text)> Fields(JobFile job) =>
    [
        .. Head(job).Select(f => ((Place)new Place.OfHead(f.Path), f.Text)),
        .. job.Parties.SelectMany(p => OfParty(p).Select(f => (Place.Of(job, p, f.Field), f.Text))),
        .. job.Entries.Select(e => (Place.Of(e), (string?)e.ToString())),
    ];

    private static IEnumerable<(string Path, string? Text)> Head(JobFile job) =>
    [
        ("name", job.Name),
        ("claimant.name", job.Claimant.Name), ("claimant.address", job.Claimant.Address),
        ("claimant.telephone", job.Claimant.Telephone), ("claimant.email", job.Claimant.Email),
        ("claimant.signer.name", job.Claimant.Signer?.Name), ("claimant.signer.title", job.Claimant.Signer?.Title),
        ("claimant.license.number", job.Claimant.License?.Number), ("claimant.license.class", job.Claimant.License?.Class),
        ("contract.work", job.Contract.Work),
        ("work.site.street", job.Work.Site.Street), ("work.site.city", job.Work.Site.City), ("work.site.zip", job.Work.Site.Zip),
        ("work.site.apn", job.Work.Site.Apn), ("work.site.legal", job.Work.Site.Legal),
        ("work.permit.number", job.Work.Permit?.Number), ("work.permit.authority", job.Work.Permit?.Authority),
        ("work.permit.ownerAddress", job.Work.Permit?.OwnerAddress),
        .. job.Work.Structures.Select((s, i) => ($"work.structures[{i}].text", s.Text)),
    ];

    private static IEnumerable<(string Field, string? Text)> OfParty(Party party) =>
    [
        ("name", party.Name), ("address", party.Address), ("telephone", party.Telephone), ("email", party.Email),
        .. party.HoldsTitleAs is not { } title ? Array.Empty<(string, string?)>()
        : [("holdsTitleAs.trust", title.Trust),
            .. title.Persons.SelectMany((h, i) => Holder(h, $"holdsTitleAs.persons[{i}]")),
            .. title.Decedent is { } decedent ? Holder(decedent, "holdsTitleAs.decedent") : []],
    ];

    private static IEnumerable<(string Field, string? Text)> Holder(TitleHolder holder, string field) =>
    [
        ($"{field}.surname", holder.Surname), ($"{field}.given", holder.Given), ($"{field}.suffix", holder.Suffix),
        ($"{field}.entity", holder.Entity),
    ];

    private const string Dash = "-\u2010-\u2015\u2212";

    [GeneratedRegex(
        $"(?<![0-9A-Za-z]|[0-9A-Za-z][{Dash}])[0-9]{{3}}[{Dash}][0-9]{{2}}[{Dash}][0-9]{{4}}(?![0-9A-Za-z]|[{Dash}][0-9A-Za-z])",
        RegexOptions.CultureInvariant)]
    private static partial Regex Bare();

    // Looked for from its digits, since few texts have nine of them.
    [GeneratedRegex(
        $@"(?<=(?:\bSSN?\b|\bS\.S\.(?:N\.)?|\bsocial\s+security\b|\bsoc\.?\s*sec\b)[^0-9]{{0,24}})"
        + $@"[0-9](?:[{Dash}\s.]{{0,2}}[0-9]){{8}}(?![0-9])",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Told();
}
