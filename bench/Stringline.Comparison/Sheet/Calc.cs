using System.Diagnostics;
using System.Globalization;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Sheet;

/// <summary>LibreOffice Calc without a window: it opens a spreadsheet, works it out and saves it as CSV.</summary>
/// <param name="soffice">The program.</param>
/// <param name="folder">A folder for its profile and its output, of its own.</param>
internal sealed class Calc(string soffice, string folder)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    /// <summary>Opens, works out and saves a spreadsheet, and says what that took from start to exit.</summary>
    /// <exception cref="InvalidOperationException">The program failed, did not end, or wrote nothing.</exception>
    public Spent Convert(string path, out string csv)
    {
        csv = Path.Combine(folder, Path.GetFileNameWithoutExtension(path) + ".csv");
        File.Delete(csv);
        var start = new ProcessStartInfo(soffice) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])
            [$"-env:UserInstallation=file://{Path.Combine(folder, "profile")}", "--headless", "--norestore", "--convert-to", "csv",
                "--outdir", folder, path])
            start.ArgumentList.Add(argument);

        var output = csv;
        return Spent.OnChildren(() => Run(start, path, output));
    }

    private static void Run(ProcessStartInfo start, string path, string csv)
    {
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{start.FileName} did not start.");
        var said = process.StandardOutput.ReadToEndAsync();
        var complained = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new InvalidOperationException($"{start.FileName} had not ended after {Patience.TotalMinutes} minutes with {path}.");
        }

        if (process.ExitCode != 0 || !File.Exists(csv))
            throw new InvalidOperationException(
                $"{start.FileName} made no CSV of {path} (exit {process.ExitCode}): {said.Result} {complained.Result}");
    }

    /// <summary>Reads the six days back from the CSV.</summary>
    /// <exception cref="FormatException">A cell holds no day number, such as an error of a formula.</exception>
    public static void Read(string csv, SixDays[] answers)
    {
        var lines = File.ReadAllLines(csv);
        if (lines.Length != answers.Length + 1)
            throw new FormatException($"{csv}: {lines.Length - 1} rows, not {answers.Length}.");
        for (var i = 0; i < answers.Length; i++)
        {
            var cells = lines[i + 1].Split(',');
            answers[i] = new SixDays(Day(0), Day(1), Day(2), Day(3), Day(4), Day(5));

            int Day(int answer) =>
                int.TryParse(cells.ElementAtOrDefault(SheetFile.FirstAnswer + answer), NumberStyles.None, CultureInfo.InvariantCulture,
                    out var day)
                ? day
                : throw new FormatException($"{csv}, row {i + 2}: the cell of \"{SixDays.Names[answer]}\" holds no day "
                    + $"number: {lines[i + 1]}");
        }
    }
}
