using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads how a party holds title.</summary>
internal sealed class TitleReading(Source source)
{
    /// <summary>The holding; null where the party has no such field.</summary>
    public TitleHolding? Holding(Fields? fields)
    {
        if (fields is null)
            return null;
        var holding = new TitleHolding
        {
            Form = (TitleForm)fields.RequiredWord("form", JobFileWords.TitleForm),
            Persons = Persons(fields),
            Trust = fields.Line("trust"),
            Decedent = Person(fields.Object("decedent")),
        };
        fields.Finish();
        if (JobFileWords.TitleForm.IndexOf(fields.Raw("form")?.Text) is not null)
            Whole(fields, holding);
        return holding;
    }

    /// <summary>Checks that the form has what it needs, and nothing that would be passed over.</summary>
    private static void Whole(Fields fields, TitleHolding holding)
    {
        var (least, who) = holding.Form switch
        {
            TitleForm.Individual => (1, "each owner"),
            TitleForm.JointTenants => (2, "each of two or more joint tenants"),
            TitleForm.Trust => (1, "each trustee"),
            TitleForm.Company or TitleForm.PublicEntity => (0, ""),
            TitleForm.Estate => (0, "each representative, where there is one"),
            _ => throw new InvalidOperationException("Not a form of title."),
        };
        if (holding.Persons.Count < least)
            fields.Fault(holding.Persons.Count == 1 ? "1 person" : $"{holding.Persons.Count} persons", $"`persons` with {who}");
        if (who.Length == 0 && holding.Persons.Count > 0)
            fields.Fault("persons", fields.Raw("persons")!, "no persons: a company or public entity is indexed under the party's own "
                + "`name`");
        if (holding.Form == TitleForm.Trust && holding.Trust is null)
            fields.Fault("a trust without its name", "`trust` with the trust's name as the deed gives it");
        if (holding.Form != TitleForm.Trust && holding.Trust is not null)
            fields.Fault("trust", fields.Raw("trust")!, "no trust's name unless the form is \"trust\"");
        if (holding.Form == TitleForm.Estate && holding.Decedent is null)
            fields.Fault("an estate without its decedent", "`decedent` with the name of the one who died");
        if (holding.Form != TitleForm.Estate && holding.Decedent is not null)
            fields.Fault("decedent", fields.Raw("decedent")!, "no decedent unless the form is \"estate\"");
    }

    private List<TitleHolder> Persons(Fields fields)
    {
        var persons = new List<TitleHolder>();
        foreach (var (item, path) in fields.Items("persons"))
        {
            if (Fields.Of(source, item, path, "a person: { \"surname\": text, \"given\": text } or { \"entity\": text }") is { } person
                && Person(person) is { } read)
                persons.Add(read);
        }

        return persons;
    }

    private static TitleHolder? Person(Fields? fields)
    {
        if (fields is null)
            return null;
        var person = new TitleHolder
        {
            Surname = fields.Line("surname"),
            Given = fields.Line("given"),
            Suffix = fields.Line("suffix"),
            Entity = fields.Line("entity"),
        };
        fields.Finish();
        if (person.Entity is null == person.Surname is null)
            fields.Fault(person.Entity is null
                ? "no name" : "an entity with a surname", "the `surname` of a natural person, or the whole name of an `entity`, and not "
                    + "both");
        else if (person.Entity is not null && (person.Given ?? person.Suffix) is not null)
            fields.Fault("an entity with a given name or suffix", "an `entity` alone");
        return person;
    }
}
