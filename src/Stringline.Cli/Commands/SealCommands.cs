using System.Globalization;
using Stringline.Store;

namespace Stringline.Cli.Commands;

/// <summary>Seals as the user gives and gets them.</summary>
internal static class SealCommands
{
    private static readonly DateTimeZone California = DateTimeZoneProviders.Tzdb["America/Los_Angeles"];

    /// <summary>Reads the file of a seal, or its line.</summary>
    public static Seal? Read(string named, out string? fault)
    {
        if (!File.Exists(named))
        {
            if (Seal.ReadLine(named, out var line) is { } typed)
            {
                fault = null;
                return typed;
            }

            fault = $"--against\n  is:        {(named.Contains(' ', StringComparison.Ordinal)
                ? "a line that is no seal" : "no such file")}\n  should be: {line}; or the file of a seal";
            return null;
        }

        try
        {
            var seal = SealFile.Read(File.ReadAllBytes(named), out var expected);
            fault = seal is null ? $"{named}\n  is:        no seal, or one that was changed\n  should be: {expected}" : null;
            return seal;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = $"{named}\n  is:        {e.Message}\n  should be: a file that can be read";
            return null;
        }
    }

    /// <summary>Writes the file of a seal; gives why not.</summary>
    public static IReadOnlyList<string>? Write(Seal seal, string path)
    {
        var full = Path.GetFullPath(path);
        return FileDrop.WriteAll(Path.GetDirectoryName(full)!, [new FinishedFile(Path.GetFileName(full), SealFile.Write(seal))],
            replace: false)
            is Outcome<IReadOnlyList<string>>.Refused refused ? refused.Why : null;
    }

    /// <summary>What is said of a new seal.</summary>
    public static string Words(Seal seal, string? file)
    {
        var where = file is null ? "this line" : $"this line or {file}";
        var more = file is null ? "; with --out FILE a seal also says where" : ", the file also where";
        return string.Create(CultureInfo.InvariantCulture,
            $"Sealed: {seal.Jobs:N0} jobs and {seal.Changes:N0} changes, up to {Moment(seal.At)}.\n\n  {seal.Line()}\n\n"
            + $"Keep {where} where nobody can change it who can write to the store: on paper, or in another system. At any later time\n"
            + $"`stringline store check --against` it says whether anything from before was rewritten{more}.")
            + (seal.NotInLine == 0 ? "" : string.Create(CultureInfo.InvariantCulture,
                $"\nThe line does not say anything of {seal.NotInLine:N0} changes that a clock dated into the future; the file does."));
    }

    /// <summary>What is said where everything stands as it was sealed.</summary>
    public static string Same(Seal seal, SealReport report) => string.Create(
        CultureInfo.InvariantCulture,
        $"Nothing from before the seal of {Moment(seal.At)} was rewritten: all of its {seal.Jobs:N0} jobs stand as they were. Since "
            + $"then: {report.JobsSince:N0} jobs and {report.ChangesSince:N0} changes.");

    /// <summary>What is said where not; nothing where there is no seal.</summary>
    public static IEnumerable<string> Differs(Seal? seal, SealReport? report)
    {
        if (seal is null || report is null)
            yield break;
        if (report.Broken.Count == 0)
        {
            yield return Same(seal, report);
            yield break;
        }

        yield return $"The store does not hold what was sealed on {Moment(seal.At)}:";
        foreach (var link in report.Broken)
            yield return "  " + link;
        yield return "Keep the store as it is, and look at the last backup from before. A backup of that day is compared with the seal in "
            + "the same way.";
    }

    private static string Moment(Instant at) =>
        at.InZone(California).ToString("dddd, MMMM d, uuuu, h:mm:ss tt", CultureInfo.InvariantCulture);
}
