using System.Reflection;
using System.Runtime.CompilerServices;
using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Facts;

/// <summary>Every kind of entry is described once, and wholly.</summary>
public sealed class EntryKindTests
{
    private static readonly Type[] Records = [.. typeof(Entry).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Entry)))];

    private static readonly string[] OfEveryEntry = [.. typeof(Entry).GetProperties().Select(property => property.Name)];

    private static readonly Entry[] Blanks = [.. EntryKinds.All.Select(kind => kind.Blank(3, DayFact.On(new LocalDate(2026, 3, 2))))];

    [Fact]
    public void Every_record_has_exactly_one_description()
    {
        Assert.Equal(Records.OrderBy(type => type.Name), Blanks.Select(entry => entry.GetType()).OrderBy(type => type.Name));
        Assert.All(Blanks, entry => Assert.Same(EntryKinds.Find(EntryKinds.Of(entry).Name), EntryKinds.Of(entry)));
        Assert.Equal(EntryKinds.All, Blanks.Select(EntryKinds.Of));
        Assert.Equal(EntryKinds.All.Count, EntryKinds.All.Select(kind => kind.Name).Distinct().Count());
    }

    /// <summary>A gap would be a number that a kind lost; a double would make two kinds change places from one run to the next.</summary>
    [Fact]
    public void The_places_among_the_kinds_are_counted_from_one()
    {
        Assert.Equal(Enumerable.Range(1, EntryKinds.All.Count), EntryKinds.All.Select(kind => kind.InFormat));
        Assert.Equal(Enumerable.Range(1, EntryKinds.All.Count), EntryKinds.All.Select(kind => kind.InJournal).Order());
        Assert.Equal(EntryKinds.All.OrderBy(kind => kind.Name), EntryKinds.InForms.OrderBy(kind => kind.Name));
    }

    /// <summary>A property without a field is lost when the entry is written; two fields of one property fight.</summary>
    [Fact]
    public void Every_property_has_exactly_one_field()
    {
        foreach (var blank in Blanks)
        {
            var own = Own(blank.GetType()).Select(property => property.Name).Order().ToList();
            var changed = EntryKinds.Of(blank).Fields.Select(field => PropertyOf(field, blank));
            Assert.Equal(own, changed.Order());
        }
    }

    /// <summary>What a field gives is what it was given, and no other field sees it.</summary>
    [Fact]
    public void A_field_gives_what_it_was_given()
    {
        foreach (var blank in Blanks)
        {
            foreach (var field in EntryKinds.Of(blank).Fields)
            {
                var changed = Changed(field, blank);
                Assert.NotEqual(0, EntryOrder.Compare(blank, changed));
                Assert.Equal(0, EntryOrder.Compare(changed, field.Copied(changed, blank)));
            }
        }
    }

    [Fact]
    public void What_is_required_cannot_be_left_out_of_the_record_nor_the_other_way_round()
    {
        foreach (var blank in Blanks)
        {
            var required = Own(blank.GetType()).Where(property => property.GetCustomAttribute<RequiredMemberAttribute>() is not null);
            var asked = EntryKinds.Of(blank).Fields.Where(field => field.Required || field is Field.LastDay);
            Assert.Equal(required.Select(property => property.Name).Order(), asked.Select(field => PropertyOf(field, blank)).Order());
        }
    }

    [Fact]
    public void The_names_of_the_fields_are_told_apart_and_every_field_is_asked_for()
    {
        foreach (var kind in EntryKinds.All)
        {
            Assert.Equal(kind.Fields.Count, kind.Fields.Select(field => field.Name).Distinct().Count());
            Assert.Equal(kind.Fields.OrderBy(field => field.Name), kind.FormOrder.OrderBy(field => field.Name));
            Assert.All(kind.Fields, field => Assert.True(field is Field.LastDay || field.Label.Length > 0));
        }
    }

    [Fact]
    public void A_field_of_words_has_as_many_for_a_person_as_for_the_file()
    {
        foreach (var field in EntryKinds.All.SelectMany(kind => kind.Fields))
        {
            switch (field)
            {
                case Field.Word word:
                    Assert.Equal(word.Table.Words.Count, word.Choices.Count);
                    Assert.Equal(word.Said.Length == 0 ? word.SaidWords.Count : word.Table.Words.Count, word.SaidWords.Count);
                    break;
                case Field.Words words:
                    Assert.Equal((words.Table.Words.Count, words.Table.Words.Count), (words.Choices.Count, words.SaidWords.Count));
                    break;
            }
        }
    }

    [Fact]
    public void Another_entry_is_named_by_a_kind_that_there_is()
    {
        var texts = EntryKinds.All.SelectMany(kind => kind.Fields).OfType<Field.Text>().ToList();
        Assert.All(texts, field => Assert.Equal(field.Holds == TextHolds.Entry, EntryKinds.Find(field.Of) is not null));
    }

    [Fact]
    public void What_the_description_takes_from_an_entry_makes_the_entry_again() =>
        JobFileGen.Job.Sample(job => Assert.All(job.Entries, MadeAgain));

    private static void MadeAgain(Entry entry)
    {
        var kind = EntryKinds.Of(entry);
        var made = kind.Fields.Aggregate(kind.Blank(entry.Index, entry.On), (copy, field) => field.Copied(entry, copy)) with
        {
            Id = entry.Id, Supersedes = entry.Supersedes, Learned = entry.Learned,
        };
        // The words of an action are made anew from their places, and a record compares lists by being the same list.
        if (entry is ActionFiled had && made is ActionFiled filed)
        {
            Assert.Equal(had.Enforces, filed.Enforces);
            made = filed with { Enforces = had.Enforces };
        }

        Assert.Equal(entry, made);
    }

    [Fact]
    public void The_order_of_weighing_is_total_and_agrees_with_equality() =>
        Gen.Select(JobFileGen.Job, JobFileGen.Job).Sample((one, other) =>
        {
            Entry[] entries = [.. one.Entries.Take(12), .. other.Entries.Take(12), .. one.Entries.Take(12).Select(Copy)];
            foreach (var a in entries)
            {
                foreach (var b in entries)
                {
                    Assert.Equal(Math.Sign(EntryOrder.Compare(a, b)), -Math.Sign(EntryOrder.Compare(b, a)));
                    Assert.Equal(Said(a) == Said(b), EntryOrder.Compare(a, b) == 0);
                }
            }

            Array.Sort(entries, EntryOrder.Compare);
            for (var i = 0; i < entries.Length; i++)
            {
                for (var j = i + 1; j < entries.Length; j++)
                    Assert.True(EntryOrder.Compare(entries[i], entries[j]) <= 0);
            }
        });

    private static Entry Copy(Entry entry) => entry with { Index = entry.Index + 100 };

    // All that a record says, its kind with it, in one text; lists by what is in them.
    private static string Said(Entry entry) => entry.GetType().Name + string.Concat(entry.GetType().GetProperties()
        .Where(property => property.Name is not (nameof(Entry.Index) or nameof(Entry.Path)))
        .Select(property => $"\n{property.Name}: {Spelled(property.GetValue(entry))}"));

    private static string Spelled(object? value) => value switch
    {
        null => "nothing",
        string text => $"«{text}»",
        System.Collections.IEnumerable list => $"[{string.Join(", ", list.Cast<object>().Select(Spelled))}]",
        decimal dollars => dollars.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    private static string PropertyOf(Field field, Entry entry) =>
        Assert.Single(Own(entry.GetType()), property => Differs(entry, Changed(field, entry), property.Name)).Name;

    private static IEnumerable<PropertyInfo> Own(Type record) =>
        record.GetProperties().Where(property => property.SetMethod is not null && !OfEveryEntry.Contains(property.Name));

    private static bool Differs(Entry one, Entry other, string property)
    {
        var value = one.GetType().GetProperty(property)!;
        return Spelled(value.GetValue(one)) != Spelled(value.GetValue(other));
    }

    private static Entry Changed(Field field, Entry entry) => field switch
    {
        Field.Text text => text.With(entry, "x"),
        Field.Money money => money.With(entry, 12.5m),
        Field.Day day => day.With(entry, new LocalDate(2026, 5, 4)),
        Field.Days days => days.With(entry, [new LocalDate(2026, 5, 4)]),
        Field.LastDay last => last.With(entry, DayFact.On(new LocalDate(2026, 5, 4))),
        Field.Count count => count.With(entry, 2),
        Field.YesNo yesNo => yesNo.With(entry, true),
        Field.Tick tick => tick.With(entry, true),
        Field.Word word => word.With(entry, word.Table.Words.Count - 1),
        Field.Words words => words.With(entry, [1, 0]),
        Field.Parties parties => parties.With(entry, ["p1", "p2"]),
        _ => throw new InvalidOperationException($"No such field: {field.GetType().Name}."),
    };
}
