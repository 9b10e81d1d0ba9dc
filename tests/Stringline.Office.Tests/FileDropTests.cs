using System.Text;
using Stringline.Testing;

namespace Stringline.Office.Tests;

public sealed class FileDropTests : IDisposable
{
    private readonly string root = Scratch.Folder();

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_folder_that_is_not_there_is_made_with_all_the_files()
    {
        var folder = Path.Combine(root, "a", "b");
        var written =
            Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(
                FileDrop.WriteAll(folder, [File("1.txt", "one"), File("2.txt", "two")], replace: true));
        Assert.Equal([Path.Combine(folder, "1.txt"), Path.Combine(folder, "2.txt")], written.Value);
        Assert.Equal(["1.txt=one", "2.txt=two"], Content(folder));
        Assert.Equal(["b"], Names(Path.Combine(root, "a")));
    }

    [Fact]
    public void In_a_folder_that_is_there_the_same_names_are_replaced_and_others_left()
    {
        Put("1.txt", "old");
        Put("other.txt", "kept");
        Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(
            FileDrop.WriteAll(root, [File("1.txt", "new"), File("2.txt", "two")], replace: true));
        Assert.Equal(["1.txt=new", "2.txt=two", "other.txt=kept"], Content(root));
    }

    [Fact]
    public void When_one_file_cannot_take_its_place_the_folder_is_as_it_was()
    {
        Put("1.txt", "old");
        Directory.CreateDirectory(Path.Combine(root, "2.txt"));
        var refused =
            Assert.IsType<Outcome<IReadOnlyList<string>>.Refused>(
                FileDrop.WriteAll(root, [File("1.txt", "new"), File("2.txt", "two")], replace: true));
        Assert.StartsWith(root + " cannot be written to: ", Assert.Single(refused.Why), StringComparison.Ordinal);
        Assert.Equal(["1.txt=old"], Content(root));
        Assert.Equal(["1.txt", "2.txt"], Names(root));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_refused_and_left_alone()
    {
        Put("folder", "a file");
        var refused =
            Assert.IsType<Outcome<IReadOnlyList<string>>.Refused>(
                FileDrop.WriteAll(Path.Combine(root, "folder"), [File("1.txt", "new")], replace: true));
        Assert.Contains("it is a file, not a folder", Assert.Single(refused.Why), StringComparison.Ordinal);
        Assert.Equal(["folder=a file"], Content(root));
    }

    [Fact]
    public void Other_content_under_the_same_name_is_refused_with_the_file_and_what_to_do_and_nothing_is_written()
    {
        Put("1.txt", "old");
        Put("2.txt", "two");
        Put("3.txt", "olden");
        var refused = Assert.IsType<Outcome<IReadOnlyList<string>>.Refused>(
            FileDrop.WriteAll(root, [File("0.txt", "zero"), File("1.txt", "new"), File("2.txt", "two"), File("3.txt", "older")],
                replace: false));
        Assert.Equal([true, true, false],
            refused.Why.Select(why => why.Contains("is there already with other content", StringComparison.Ordinal)));
        Assert.StartsWith(Path.Combine(root, "1.txt"), refused.Why[0], StringComparison.Ordinal);
        Assert.Contains("--replace", refused.Why[0], StringComparison.Ordinal);
        Assert.StartsWith(Path.Combine(root, "3.txt"), refused.Why[1], StringComparison.Ordinal);
        Assert.Equal(["1.txt=old", "2.txt=two", "3.txt=olden"], Content(root));
        Assert.Equal(["1.txt", "2.txt", "3.txt"], Names(root));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_same_content_is_no_conflict_and_stays_as_it_is(bool replace)
    {
        Put("1.txt", "one");
        var path = Path.Combine(root, "1.txt");
        System.IO.File.SetLastWriteTimeUtc(path, new DateTime(2026, 1, 2, 3, 4, 5, DateTimeKind.Utc));
        var written =
            Assert.IsType<Outcome<IReadOnlyList<string>>.Done>(
                FileDrop.WriteAll(root, [File("1.txt", "one"), File("2.txt", "two")], replace));
        Assert.Equal([path, Path.Combine(root, "2.txt")], written.Value);
        Assert.Equal(new DateTime(2026, 1, 2, 3, 4, 5, DateTimeKind.Utc), System.IO.File.GetLastWriteTimeUtc(path));
        Assert.Equal(["1.txt", "2.txt"], Names(root));
    }

    private static FinishedFile File(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    private static IEnumerable<string> Names(string folder) =>
        Directory.GetFileSystemEntries(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Content(string folder) => Directory.GetFiles(folder)
        .Order(StringComparer.Ordinal).Select(path => $"{Path.GetFileName(path)}={System.IO.File.ReadAllText(path)}");

    private void Put(string name, string text) => System.IO.File.WriteAllText(Path.Combine(root, name), text);
}
