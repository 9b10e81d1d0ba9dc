using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>The head of a job file as it would be, or what is wrong with what was typed. Nothing is written here.</summary>
/// <param name="Job">The job file with that head; null where something is wrong.</param>
/// <param name="Faults">What is wrong, by the field's path.</param>
internal sealed record HeadDraft(JobFile? Job, Faults Faults)
{
    /// <summary>What is added to an item's field for the tick that takes the item out.</summary>
    public const string TakeOut = "out";

    /// <summary>Puts one part of what was typed in the place of what the head says.</summary>
    public static HeadDraft Of(JobFile before, HeadPart part, Typed typed)
    {
        var faults = new Faults();
        var head = JsonNode.Parse(JournalText.Head(before))!.AsObject();
        foreach (var asked in part.Fields)
            head.Put(asked.Name, AnswerReading.Read(asked, typed, faults));
        var places = new List<int>();
        if (part.List is { } list)
            head.Put(list.Path, Items(list, before, typed, places, faults));
        DropEmpty(head, JsonNode.Parse(JournalText.Head(before))!.AsObject());
        return faults.None ? Checked(before, part, head, places, faults) : new HeadDraft(null, faults);
    }

    /// <summary>What would have been typed for a job's head as it is.</summary>
    public static Typed Typed(JobFile job, HeadPart part)
    {
        var head = JsonNode.Parse(JournalText.Head(job))!.AsObject();
        var typed = new Typed();
        foreach (var asked in part.Fields)
            typed.Set(asked.Name, HeadPaths.Text(head.At(asked.Name)));
        if (part.List is { } list && head.At(list.Path) is JsonArray items)
        {
            for (var i = 0; i < items.Count; i++)
            {
                foreach (var asked in list.Fields)
                    typed.Set(Field(list, i, asked), TitleText.IsTitle(asked.Name)
                        ? TitleText.Write(items[i]!.AsObject().At(asked.Name)) : HeadPaths.Text(items[i]!.AsObject().At(asked.Name)));
            }
        }

        return typed;
    }

    /// <summary>The field of an item of a list.</summary>
    public static string Field(HeadList list, int item, Asked asked) =>
        string.Create(CultureInfo.InvariantCulture, $"{list.Path}[{item}].{asked.Name}");

    /// <summary>How many items of a list are shown: those that are typed or there, and two blank ones.</summary>
    public static int Shown(HeadList list, Typed typed)
    {
        var last = -1;
        foreach (var (field, value) in typed.All)
        {
            if (value.Length > 0 && field.StartsWith(list.Path + "[", StringComparison.Ordinal)
                && int.TryParse(field[(list.Path.Length + 1)..].Split(']')[0], NumberStyles.None, CultureInfo.InvariantCulture,
                    out var item))
                last = Math.Max(last, item);
        }

        return Math.Min(last, 200) + 3;
    }

    private static JsonArray Items(HeadList list, JobFile job, Typed typed, List<int> places, Faults faults)
    {
        var items = new JsonArray();
        List<string> named = list.Path switch
        {
            "parties" => [.. job.Parties.Select(party => party.Id)],
            "work.structures" => [.. job.Work.Structures.Select(structure => structure.Id)],
            _ => [],
        };
        var ids = named.ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < Math.Max(Shown(list, typed), list.Path == "work.structures" ? named.Count : 0); i++)
        {
            var isBlank =
                list.Fields.All(asked => typed[Field(list, i, asked)].Length == 0) && !(list.Path == "work.structures" && i < named.Count);
            if (isBlank || typed[$"{list.Path}[{i}].{TakeOut}"] == "true")
                continue;
            var item = new JsonObject();
            if (list.IdLetter is { } letter)
                item["id"] = i < named.Count ? named[i] : NewId(letter, ids);
            foreach (var asked in list.Fields)
            {
                var field = Field(list, i, asked);
                item.Put(asked.Name, TitleText.IsTitle(asked.Name)
                    ? TitleText.Read(asked.Name, typed[field], field, faults) : AnswerReading.Read(asked, field, typed, faults));
            }

            places.Add(i);
            items.Add(item);
        }

        return items;
    }

    private static string NewId(char letter, HashSet<string> taken)
    {
        for (var number = 1; ; number++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"{letter}{number}");
            if (taken.Add(id))
                return id;
        }
    }

    // A permit, bond, signer or license of which all that was said is taken away is none. One of which nothing was said before stays: it
    // may be known that there is a bond, and nothing else of it.
    private static void DropEmpty(JsonObject head, JsonObject before)
    {
        foreach (var path in (string[])["work.permit", "work.paymentBond", "work.directContract", "claimant.signer", "contract"])
        {
            if (head.At(path) is JsonObject { Count: 0 } && before.At(path) is not JsonObject { Count: 0 })
                head.Put(path, null);
        }

        if (head.At("claimant.license") is JsonObject license
            && license.All(field =>
                field.Value is null or JsonArray { Count: 0 } || (field.Key == "never" && !field.Value.GetValue<bool>())))
            head.Put("claimant.license", null);
        foreach (var party in (head["parties"] as JsonArray ?? []).OfType<JsonObject>())
        {
            if (party["holdsTitleAs"] is JsonObject { Count: 0 })
                party.Remove("holdsTitleAs");
        }
    }

    private static HeadDraft Checked(JobFile before, HeadPart part, JsonObject head, List<int> places, Faults faults)
    {
        List<ReadOnlyMemory<byte>> entries = [.. before.Entries.Select(entry => (ReadOnlyMemory<byte>)JournalText.Entry(entry))];
        switch (JournalText.ReadAdded(before.Name, Encoding.UTF8.GetBytes(head.ToJsonString()), entries, newHead: true,
            known: entries.Count))
        {
            case JobFileResult.Read read:
                return new HeadDraft(read.Job, faults);
            case JobFileResult.Refused refused:
                foreach (var fault in refused.Faults)
                    faults.Add(FieldOf(part, fault.Path, places), Say(part, fault));
                return new HeadDraft(null, faults);
            default:
                throw new InvalidOperationException("Neither read nor refused.");
        }
    }

    private static string Say(HeadPart part, Fault fault) => fault.Path.StartsWith("entries[", StringComparison.Ordinal)
        ? $"An entry names someone who would be gone ({fault.Path}: {fault.Found})."
        : $"It should be {FieldsInWords.Of(fault.Expected, [.. part.Fields, .. part.List?.Fields ?? []])}.";

    // A place in the file is one in the form, where some items are blank or taken out.
    private static string FieldOf(HeadPart part, string path, List<int> places)
    {
        if (part.List is { } list && path.StartsWith(list.Path + "[", StringComparison.Ordinal))
        {
            var close = path.IndexOf(']', StringComparison.Ordinal);
            var place = places[int.Parse(path[(list.Path.Length + 1)..close], CultureInfo.InvariantCulture)];
            var name = path[(close + 1)..].TrimStart('.');
            var asked = list.Fields.FirstOrDefault(asked => asked.Name == name
                || name.StartsWith(asked.Name + "[", StringComparison.Ordinal)
                || name.StartsWith(asked.Name + ".", StringComparison.Ordinal))
                ?? list.Fields.FirstOrDefault(asked => name.Length > 0 && asked.Name.StartsWith(name + ".", StringComparison.Ordinal))
                ?? list.Fields[0];
            return Field(list, place, asked);
        }

        return part.Fields.FirstOrDefault(asked => asked.Name == path || asked.Name.StartsWith(path + ".", StringComparison.Ordinal))?.Name
            ?? "";
    }
}
