using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Writing;

/// <summary>Writes the claimant and the parties.</summary>
internal static class PeopleWriting
{
    public static void Claimant(Utf8JsonWriter json, Claimant claimant)
    {
        json.WriteStartObject("claimant");
        json.WriteString("name", claimant.Name);
        json.WriteString("role", JobFileWords.Word(claimant.Role));
        json.Text("address", claimant.Address);
        json.Text("hiredBy", claimant.HiredBy);
        if (claimant.Signer is { } signer)
        {
            json.WriteStartObject("signer");
            json.WriteString("name", signer.Name);
            json.Text("title", signer.Title);
            json.WriteEndObject();
        }

        if (claimant.License is { } license)
        {
            json.WriteStartObject("license");
            json.WriteBoolean("required", license.Required);
            json.Text("number", license.Number);
            json.Text("class", license.Class);
            JobFileWriter.Rows(json, "active", license.Active, Span);
            json.Flag("never", license.Never);
            json.Truth("sameEntity", license.SameEntity);
            json.Truth("fitsWork", license.FitsWork);
            json.Truth("insuranceOnFile", license.InsuranceOnFile);
            json.Truth("goodFaith", license.GoodFaith);
            json.WriteEndObject();
        }

        json.Text("telephone", claimant.Telephone);
        json.Text("email", claimant.Email);
        json.Truth("installs", claimant.Installs);
        json.Truth("dumpTrucks", claimant.DumpTrucks);
        json.WriteEndObject();
    }

    private static void Span(Utf8JsonWriter json, LicenseSpan span)
    {
        json.WriteString("from", DayText.Write(span.From));
        json.Day("to", span.To);
        json.Day("putBack", span.Reinstated);
        json.Text("cause", span.Cause is { } cause ? JobFileWords.Word(cause) : null);
        json.Day("sent", span.Sent);
        json.Truth("beyondControl", span.BeyondControl);
    }

    public static void Party(Utf8JsonWriter json, Party party)
    {
        json.WriteString("id", party.Id);
        json.WriteString("capacity", JobFileWords.Word(party.Capacity));
        json.WriteBoolean("reputed", party.Reputed);
        json.WriteString("name", party.Name);
        json.Text("address", party.Address);
        if (party.HoldsTitleAs is { } holding)
            Title(json, holding);
        json.Day("knownSince", party.KnownSince);
        json.Truth("madeToPlans", party.MadeToPlans);
        json.Text("addressKind", party.AddressKind is { } kind ? JobFileWords.Word(kind) : null);
        json.Text("telephone", party.Telephone);
        json.Text("email", party.Email);
        json.Truth("naturalPerson", party.NaturalPerson);
        json.Day("bankruptSince", party.BankruptSince);
        json.Day("bankruptUntil", party.BankruptUntil);
        json.Text("worksUnder", party.WorksUnder);
        json.Text("tookTitleBy", party.TookTitleBy is { } source ? JobFileWords.Word(source) : null);
        json.Day("soldOn", party.SoldOn);
        json.Truth("knewOfWork", party.KnewOfWork);
        json.Day("deedRecorded", party.DeedRecorded);
    }

    private static void Title(Utf8JsonWriter json, TitleHolding holding)
    {
        json.WriteStartObject("holdsTitleAs");
        json.WriteString("form", JobFileWords.Word(holding.Form));
        if (holding.Persons.Count > 0)
        {
            json.WriteStartArray("persons");
            foreach (var person in holding.Persons)
            {
                json.WriteStartObject();
                Person(json, person);
            }

            json.WriteEndArray();
        }

        json.Text("trust", holding.Trust);
        if (holding.Decedent is { } decedent)
        {
            json.WriteStartObject("decedent");
            Person(json, decedent);
        }

        json.WriteEndObject();
    }

    private static void Person(Utf8JsonWriter json, TitleHolder person)
    {
        json.Text("surname", person.Surname);
        json.Text("given", person.Given);
        json.Text("suffix", person.Suffix);
        json.Text("entity", person.Entity);
        json.WriteEndObject();
    }
}
