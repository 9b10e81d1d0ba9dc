using System.CommandLine;
using Stringline.Cli.Commands;
using Stringline.Cli.Terminal;
using Stringline.Papers.Catalogue;

namespace Stringline.Cli;

/// <summary>The command <c>packet</c>: the list of papers, and one command for each of them.</summary>
internal sealed partial class CommandLine
{
    private Command Packet(bool papers)
    {
        var list = new Option<bool>("--list") { Description = "Print the papers that can be made: id, title, section." };
        var command =
            new Command("packet", "Make a paper with the sheet that goes with it. stringline packet --list names the papers.") { list };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(list))
            {
                Print(PaperListText.Of(PaperCatalogue.All), ascii: false);
                return Done;
            }

            errors.WriteLine("Name a paper: stringline packet ID FILE --out DIR. See stringline packet --list.");
            return WrongUsage;
        });
        command.Add(Claim());
        if (!papers)
            return command;
        command.Add(new WaiverBatchCommand(output, errors, clock).Command());
        foreach (var paper in PaperCatalogue.All.Where(p => p != PaperCatalogue.ClaimOfLien))
            command.Add(PaperCommand(paper));
        return command;
    }

    private Command PaperCommand(Paper paper)
    {
        var (file, folder, asOf, replace) = (File(), Folder(), AsOf(), Replace());
        var draft = new Option<bool>("--draft") { Description = "Make the paper in spite of every reason against it, marked as a draft." };
        var told = paper.Asks.Select(PaperOption.Of).ToList();
        var command = new Command(paper.Id, $"{paper.Title} ({paper.Sections}). {paper.Words}") { file, folder, asOf, draft, replace };
        foreach (var option in told)
            command.Add(option.Option);
        command.SetAction(parsed => Answer(
            UseCases.PreparePaper(
                paper,
                parsed.GetRequiredValue(file),
                Day(parsed.GetValue(asOf)),
                told.Aggregate(new PaperOptions { Draft = parsed.GetValue(draft) }, (options, option) => option.Take(parsed, options)),
                parsed.GetRequiredValue(folder),
                parsed.GetValue(replace)),
            packet => Print(PacketText.Of(packet), ascii: false)));
        return command;
    }
}
