using System.Text;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Recording;
using Stringline.Papers.Waiver;

namespace Stringline.Cli.Terminal;

/// <summary>What a person reads after a packet was written: files, days, fee, and how the papers passed their preflight.</summary>
internal static class PacketText
{
    /// <summary>The text, ending in a line break.</summary>
    public static string Of(WrittenPacket packet)
    {
        var text = new StringBuilder();
        text.AppendLine(Assessment.Caution).AppendLine();
        if (packet.Made.Outlook is { } outlook)
            text.AppendLine(WaiverOutlookText.Of(outlook)).AppendLine();
        foreach (var (file, path) in packet.Made.Files.Zip(packet.Files))
            text.AppendLine($"{path}\n    {file.Title}, {file.Pages} {(file.Pages == 1 ? "page" : "pages")}");
        if (packet.Deadline is { } deadline)
            Days(text, packet.Assessment, deadline);
        if (packet.Made.Fee is { } fee)
            Fee(text, fee);
        if (packet.Made.InTheWay.Count > 0)
        {
            text.AppendLine().AppendLine("Marked DRAFT, not for the counter, because:");
            foreach (var reason in packet.Made.InTheWay)
                text.AppendLine($"    {reason}");
        }

        text.AppendLine().AppendLine("Preflight, each paper read back:");
        foreach (var report in packet.Made.Preflight)
        {
            foreach (var check in report.Checks)
                text.AppendLine($"    {(check.Passed ? "good" : "NOT GOOD"),-8}  {report.Paper}: {check.Name}: {check.Words}");
        }

        return text.ToString();
    }

    private static void Fee(StringBuilder text, FeeEstimate fee)
    {
        text.AppendLine().AppendLine($"Check for the recorder, estimated: {LawText.Money(fee.Total)}");
        if (fee.AtMost > fee.Total)
            text.AppendLine($"    Be ready to pay up to {LawText.Money(fee.AtMost)}: prices marked “ask” may be higher.");
        foreach (var part in fee.Parts)
            text.AppendLine(
                $"    {LawText.Money(part.Amount),9}  {part.Words}{(part.Ask
                    ? " (ask)" : "")}{(part.Section.Length == 0 ? "" : $" ({part.Section})")}");
    }

    private static void Days(StringBuilder text, Assessment assessment, string deadline)
    {
        if (assessment.Find(deadline) is not { } claim)
            return;
        text.AppendLine();
        if (!claim.IsDeadline)
        {
            if (claim.Band is { } from)
                text.AppendLine($"Not before {LawText.Day((from.Latest ?? from.Earliest).Day)}.");
            return;
        }

        if (claim.ActBy is { } actBy)
            text.AppendLine($"Act by {LawText.Day(actBy)}.");
        if (claim.Band is { } band)
            text.AppendLine($"Last day {LawText.Day(band.Earliest.Day)}, on the reading "
                + $"«{band.Earliest.Name}»{(band.Latest is { } latest && latest.Day != band.Earliest.Day
                    ? $"; at the latest {LawText.Day(latest.Day)}, on the reading «{latest.Name}»" : "")}.");
    }
}
