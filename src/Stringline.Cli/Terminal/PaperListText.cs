using System.Text;
using Stringline.Law;
using Stringline.Papers.Catalogue;

namespace Stringline.Cli.Terminal;

/// <summary>The list of papers, as a table.</summary>
internal static class PaperListText
{
    /// <summary>The text, ending in a line break.</summary>
    public static string Of(IReadOnlyList<Paper> papers)
    {
        var page = new StringBuilder();
        page.Wrapped("Papers that can be made from a job file: stringline packet ID FILE --out DIR. What a paper needs to be told besides: "
            + "stringline packet ID --help.", "", "");
        page.Append('\n');
        Row("id", "title", "section", "work", "it is");
        page.Append('─', Layout.Width).Append('\n');
        foreach (var paper in papers)
            Row(paper.Id, paper.Title, paper.Sections, paper.WorksWords, paper.UseWord);
        page.Append('\n');
        page.Wrapped(Assessment.Caution, "", "");
        return page.ToString();

        void Row(string id, string title, string section, string work, string use) =>
            page.Row(new Cell(Layout.Unbroken(id), 28), new Cell(title, 28), new Cell(section, 17), new Cell(work, 9), new Cell(use, 8));
    }
}
