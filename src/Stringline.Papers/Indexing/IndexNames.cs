using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Indexing;

/// <summary>
/// The names of owners and claimant as recorders index them. That a paper shows the names in which the interest appears of record
/// is Gov. Code § 27288.1(a), and that each ten names after the first ten cost more § 27361.8; the form of the entries (surname
/// first, trustees and trust, decedent and representatives, each other name by itself) is common practice, no source.
/// </summary>
public static partial class IndexNames
{
    /// <summary>The names of a paper that burdens owners in favor of a claimant, owners first, each name once.</summary>
    /// <param name="claimant">The claimant's name as the paper gives it; null leaves it out.</param>
    /// <param name="owners">The owners.</param>
    /// <param name="isPerson">Whether the claimant is a natural person, whose entry has the surname first, as an owner's.</param>
    public static IReadOnlyList<IndexName> Of(string? claimant, IEnumerable<Party> owners, bool isPerson = false) =>
    [
        .. owners.SelectMany(OfOwner)
            .Concat(claimant is null ? [] : OfEntity(claimant)
                .Select((name, i) => new IndexName(IndexSide.Claimant, isPerson && i == 0 ? SurnameFirst(name) : name, name)))
            .DistinctBy(name => $"{name.Side} {name.Indexed.ToUpperInvariant()}"),
    ];

    /// <summary>The names of one owner; the party's own name, as written, where the file does not say how title is held.</summary>
    public static IReadOnlyList<IndexName> OfOwner(Party owner)
    {
        ArgumentNullException.ThrowIfNull(owner);
        var isPerson = owner.NaturalPerson == true && !Several().IsMatch(owner.Name);
        var asWritten = OfEntity(owner.Name)
            .Select((name, i) => new IndexName(IndexSide.Owner, isPerson && i == 0 ? SurnameFirst(name) : name, name));
        if (owner.HoldsTitleAs is not { } holding)
            return [.. asWritten];
        var persons = holding.Persons.Select(p => Person(p, owner.Name));
        return holding.Form switch
        {
            TitleForm.Individual or TitleForm.JointTenants => [.. persons],
            TitleForm.Trust => [.. persons, .. Clean(holding.Trust) is null ? asWritten : Entity(holding.Trust)],
            TitleForm.Estate => [.. holding.Decedent is { } decedent ? [OfEstate(decedent, owner.Name)] : asWritten, .. persons],
            TitleForm.Company or TitleForm.PublicEntity => [.. asWritten],
            _ => throw new ArgumentOutOfRangeException(nameof(owner), holding.Form, "Not a form of title."),
        };
    }

    /// <summary>How title is held, in the words of a deed: <c>Ana Ibarra and Tomás Ibarra, as joint tenants</c>.</summary>
    public static string TitleWords(Party owner)
    {
        ArgumentNullException.ThrowIfNull(owner);
        if (owner.HoldsTitleAs is not { } holding)
            return Line(owner.Name);
        var persons = And([.. holding.Persons.Select(p => Person(p, owner.Name).Written)]);
        return holding.Form switch
        {
            TitleForm.Individual => persons,
            TitleForm.JointTenants => $"{persons}, as joint tenants",
            TitleForm.Trust => $"{persons}, {(holding.Persons.Count == 1 ? "trustee" : "trustees")} of "
                + $"{The(Line(Clean(holding.Trust) ?? owner.Name))}",
            TitleForm.Estate when holding.Decedent is { } decedent =>
                (persons.Length == 0 ? "" : $"{persons}, {(holding.Persons.Count == 1 ? "representative" : "representatives")} of ")
                + $"the estate of {Person(decedent, owner.Name).Written}, deceased",
            TitleForm.Estate => persons.Length == 0 ? Line(owner.Name)
                : $"{persons}, {(holding.Persons.Count == 1 ? "representative" : "representatives")} of {The(Line(owner.Name))}",
            TitleForm.Company or TitleForm.PublicEntity => Line(owner.Name),
            _ => throw new ArgumentOutOfRangeException(nameof(owner), holding.Form, "Not a form of title."),
        };
    }

    /// <summary>
    /// Whether a paper that bears the owner's name alone leaves out a name to be indexed, or that somebody holds title for a trust or an
    /// estate: its name may hold the names of its trustees without saying that they are trustees.
    /// </summary>
    public static bool NeedsTitleWords(Party owner)
    {
        ArgumentNullException.ThrowIfNull(owner);
        return owner.HoldsTitleAs?.Form is TitleForm.Trust or TitleForm.Estate
            ? !Line(owner.Name).Equals(TitleWords(owner), StringComparison.OrdinalIgnoreCase)
            : OfOwner(owner).Any(name => !Line(owner.Name).Contains(name.Written, StringComparison.OrdinalIgnoreCase));
    }

    // The entry of an estate keeps the word: the dead own nothing.
    private static IndexName OfEstate(TitleHolder decedent, string owner)
    {
        var name = Person(decedent, owner);
        return name with { Indexed = $"{name.Indexed}, Estate of" };
    }

    /// <summary>Whether more than one owns: several parties, or several persons in one, who are not the trustees of one trust.</summary>
    public static bool AreSeveral(IReadOnlyCollection<Party> owners)
    {
        ArgumentNullException.ThrowIfNull(owners);
        return owners.Count > 1 || owners.Any(o => Persons(o).Count > 1);
    }

    /// <summary>
    /// The persons who own in their own right, as the owner's name has them; empty where the file does not say, or none does.
    /// </summary>
    public static IReadOnlyList<string> Persons(Party owner)
    {
        ArgumentNullException.ThrowIfNull(owner);
        return owner.HoldsTitleAs is { Form: TitleForm.Individual or TitleForm.JointTenants } holding
            ? [.. holding.Persons.Select(p => Person(p, owner.Name).Written)] : [];
    }

    /// <summary>The trustees of a trust, or the representatives of an estate, each with whether a person; empty for any other.</summary>
    internal static IReadOnlyList<(string Name, bool IsPerson)> Holders(Party owner) =>
        owner.HoldsTitleAs is { Form: TitleForm.Trust or TitleForm.Estate } holding
            ? [.. holding.Persons.Select(p => (Person(p, owner.Name).Written, Clean(p.Entity) is null))] : [];

    // The owner's name may have the surname first; a paper writes it as the name has it.
    private static string AsNamed(string person, string owner)
    {
        var own = person.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var words = Line(owner).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var sorted = own.Select(Bare).Order(StringComparer.OrdinalIgnoreCase).ToArray();
        for (var from = 0; from + own.Length <= words.Length; from++)
        {
            var there = words[from..(from + own.Length)];
            if (there.SkipLast(1).All(w => !w.EndsWith(',') && !w.EndsWith(';'))
                && there.Select(Bare).Order(StringComparer.OrdinalIgnoreCase).SequenceEqual(sorted, StringComparer.OrdinalIgnoreCase))
                return string.Join(' ', there).TrimEnd(',', ';');
        }

        return person;

        static string Bare(string word) => word.Trim(',', ';');
    }

    private static IndexName Person(TitleHolder person, string owner)
    {
        if (Clean(person.Entity) is { } entity)
            return new IndexName(IndexSide.Owner, OneLine(entity), OneLine(entity));
        var (surname, given, suffix) = (Line(person.Surname ?? ""), Line(person.Given ?? ""), Line(person.Suffix ?? ""));
        return new IndexName(
            IndexSide.Owner,
            string.Join(' ', new[] { given.Length + suffix.Length > 0 ? surname + "," : surname, given,
                suffix }.Where(part => part.Length > 0)),
            AsNamed(string.Join(' ', new[] { given, surname, suffix }.Where(part => part.Length > 0)), owner));
    }

    // The last word, with the particles before it and the suffix behind: a file says of its own claimant only the whole name.
    private static string SurnameFirst(string name)
    {
        List<string> words = [.. name.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        var suffix = words.Count > 2 && Suffixes.Contains(words[^1].Trim('.', ',').ToUpperInvariant()) ? words[^1] : null;
        if (suffix is not null)
            words.RemoveAt(words.Count - 1);
        var at = words.Count - 1;
        while (at > 1 && Particles.Contains(words[at - 1].ToLowerInvariant()))
            at--;
        var surname = string.Join(' ', words.Skip(at)).TrimEnd(',') + ",";
        return at < 1 ? name : string.Join(' ', new[] { surname, string.Join(' ', words.Take(at)), suffix }.OfType<string>());
    }

    private static readonly HashSet<string> Suffixes = ["JR", "SR", "II", "III", "IV"];

    private static readonly HashSet<string> Particles =
        ["de", "del", "la", "las", "los", "da", "das", "do", "dos", "di", "du", "le", "van", "von", "der", "den", "ten", "ter", "bin",
            "ibn", "al", "y"];

    private static IEnumerable<IndexName> Entity(string? name) =>
        Clean(name) is { } clean ? [new IndexName(IndexSide.Owner, OneLine(clean), OneLine(clean))] : [];

    /// <summary>The name, and each other name it gives itself (aka, dba): a recorder may count each.</summary>
    private static IEnumerable<string> OfEntity(string name) =>
        OtherName().Split(Line(name)).Select(part => part.Trim(' ', ',', ';')).Where(part => part.Length > 0);

    private static string The(string trust) =>
        trust.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? "the" + trust[3..] : "the " + trust;

    private static string And(List<string> names) =>
        names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";

    private static string Line(string text) => Clean(text) is { } clean ? OneLine(clean) : "";

    // Two persons in one name, or words of title behind it.
    [GeneratedRegex(@"[,;&]|\s(?:and|trustees?|estate)\s", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Several();

    [GeneratedRegex(
        @"[,;]?\s+(?:aka|a/k/a|a\.k\.a\.|dba|d/b/a|d\.b\.a\.|also known as|doing business as)\s+",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex OtherName();
}
