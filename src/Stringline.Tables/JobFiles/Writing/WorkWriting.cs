using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Writing;

/// <summary>Writes the work of improvement.</summary>
internal static class WorkWriting
{
    public static void Write(Utf8JsonWriter json, Work work)
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
        json.SomeTexts("alsoIn", work.Site.AlsoIn);
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
            json.Money("amount", bond.Amount);
            json.Text("principal", bond.Principal);
            json.WriteEndObject();
        }

        json.Text("subjectToAcceptanceBy", work.SubjectToAcceptanceBy);
        json.Day("commenced", work.Commenced);
        json.Truth("severalDirectContracts", work.SeveralDirectContracts);
        json.Count("residentialStructures", work.ResidentialStructures);
        json.Truth("commonInterest", work.CommonInterest);
        json.Truth("siteImprovement", work.SiteImprovement);
        json.Truth("orderedByTenant", work.OrderedByTenant);
        json.Truth("lowRiseResidential", work.LowRiseResidential);
        json.Truth("stateContractAct", work.StateContractAct);
        json.Truth("publicTakesOver", work.PublicTakesOver);
        json.Text("body", work.Body is { } body ? JobFileWords.Word(body) : null);
        json.Truth("substantiallyComplex", work.SubstantiallyComplex);
        json.Truth("publicUtility", work.PublicUtility);
        json.Count("units", work.Units);
        json.Money("expectedCost", work.ExpectedCost);
        json.Truth("securityExempt", work.SecurityExempt);
        if (work.DirectContract is { } contract)
        {
            json.WriteStartObject("directContract");
            json.Day("on", contract.On);
            json.Money("price", contract.Price);
            json.Money("retentionPercent", contract.RetentionPercent);
            json.Day("filed", contract.Filed);
            json.WriteEndObject();
        }

        if (work.Structures.Count > 0)
            JobFileWriter.Rows(json, "structures", work.Structures, Structure);
        json.WriteEndObject();
    }

    private static void Structure(Utf8JsonWriter json, ResidentialStructure structure)
    {
        json.WriteString("id", structure.Id);
        json.Text("text", structure.Text);
        json.Money("share", structure.Share);
    }
}
