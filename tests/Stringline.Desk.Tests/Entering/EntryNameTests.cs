using Stringline.Desk.Entering;
using Stringline.Papers.Writing;

namespace Stringline.Desk.Tests.Entering;

public sealed class EntryNameTests
{
    /// <summary>A sheet sends a person to a fact by the name under which the screen has it.</summary>
    [Fact]
    public void The_names_on_the_sheets_are_those_of_the_forms() => Assert.Equal(
        EntryForms.All.OrderBy(form => form.What, StringComparer.Ordinal).Select(form => (form.What, form.Title)),
        EntryName.All.OrderBy(name => name.Key, StringComparer.Ordinal).Select(name => (name.Key, name.Value)));
}
