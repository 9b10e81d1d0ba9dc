using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stringline.Exchange.Writing;
using Stringline.Law.Facts;

namespace Stringline.Exchange;

/// <summary>Writes JSON job files, always the same bytes for the same job: what it writes, <see cref="JobFileReader"/> reads as the same job.</summary>
public static class JobFileWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",

        // The file stands alone, never inside a web page, so names keep their accents.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a job as UTF-8 JSON that ends with a line break; parties, entries and spans stand one on a line.</summary>
    /// <remarks>The index of an entry is its place in the list; whatever <see cref="Entry.Index"/> says is not written.</remarks>
    /// <exception cref="ArgumentException">The job holds what the format cannot say, such as a span of work between days in doubt.</exception>
    public static byte[] Write(JobFile job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            Head(json, job);
            Rows(json, "entries", job.Entries, EntryWriting.Write);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Writes the fields of everything but the entries.</summary>
    internal static void Head(Utf8JsonWriter json, JobFile job)
    {
        json.WriteString("format", JobFileReader.Format);
        json.WriteString("name", job.Name);
        Work(json, job.Work);
        Claimant(json, job.Claimant);
        Rows(json, "parties", job.Parties, Party);
        if (job.Contract != new Contract())
            Contract(json, job.Contract);
    }

    private static void Work(Utf8JsonWriter json, Work work)
    {
        json.WriteStartObject("work");
        json.WriteString("kind", JobFileWords.Word(work.Kind));
        json.Text("use", work.Use is { } use ? JobFileWords.Word(use) : null);
        json.WriteStartObject("site");
        json.Text("street", work.Site.Street);
        json.Text("city", work.Site.City);
        json.Text("zip", work.Site.Zip);
        json.WriteString("county", work.Site.County);
        json.Text("apn", work.Site.Apn);
        json.Text("legal", work.Site.Legal);
        json.WriteEndObject();
        if (work.Permit is { } permit)
        {
            json.WriteStartObject("permit");
            json.Text("number", permit.Number);
            json.Text("authority", permit.Authority);
            json.Text("ownerAddress", permit.OwnerAddress);
            json.WriteEndObject();
        }

        if (work.PaymentBond is { } bond)
        {
            json.WriteStartObject("paymentBond");
            json.Day("recorded", bond.Recorded);
            json.Text("surety", bond.Surety);
            json.WriteEndObject();
        }

        json.Text("subjectToAcceptanceBy", work.SubjectToAcceptanceBy);
        json.Day("commenced", work.Commenced);
        json.Truth("severalDirectContracts", work.SeveralDirectContracts);
        if (work.ResidentialStructures is { } structures)
            json.WriteNumber("residentialStructures", structures);
        json.Truth("commonInterest", work.CommonInterest);
        json.Truth("siteImprovement", work.SiteImprovement);
        json.Truth("orderedByTenant", work.OrderedByTenant);
        json.Truth("lowRiseResidential", work.LowRiseResidential);
        json.Truth("stateContractAct", work.StateContractAct);
        json.WriteEndObject();
    }

    private static void Claimant(Utf8JsonWriter json, Claimant claimant)
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
            Rows(json, "active", license.Active, Span);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Span(Utf8JsonWriter json, LicenseSpan span)
    {
        json.WriteString("from", DayText.Write(span.From));
        json.Day("to", span.To);
        json.Day("putBack", span.PutBack);
    }

    private static void Party(Utf8JsonWriter json, Party party)
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

    private static void Contract(Utf8JsonWriter json, Contract contract)
    {
        json.WriteStartObject("contract");
        json.Day("on", contract.On);
        json.Truth("written", contract.Written);
        json.Money("price", contract.Price);
        json.Money("reasonableValue", contract.ReasonableValue);
        json.Text("work", contract.Work);
        json.WriteEndObject();
    }

    /// <summary>Writes a list with each item's object on one line.</summary>
    private static void Rows<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        var buffer = new ArrayBufferWriter<byte>();
        foreach (var item in items)
        {
            buffer.ResetWrittenCount();
            using (var row = new Utf8JsonWriter(buffer, Options with { IndentSize = 0 }))
            {
                row.WriteStartObject();
                write(row, item);
                row.WriteEndObject();
            }

            // Texts hold no raw line break in JSON, so every one here stands between two fields.
            var line = buffer.WrittenSpan.ToArray();
            line.AsSpan().Replace((byte)'\n', (byte)' ');
            json.WriteRawValue(line, skipInputValidation: true);
        }

        json.WriteEndArray();
    }
}
