using System.Globalization;
using Stringline.Store;

namespace Stringline.Cli.Terminal;

/// <summary>
/// Says on standard error how far long work is: on a terminal in one line that renews itself, elsewhere a line at each tenth.
/// </summary>
/// <param name="errors">Standard error.</param>
/// <param name="isTerminal">Whether somebody looks at it as it grows.</param>
/// <param name="worthTelling">Where it is no terminal: work of fewer parts is done before anybody could read a line.</param>
internal sealed class ProgressLine(TextWriter errors, bool isTerminal, long worthTelling = 1000) : IProgress<StoreProgress>
{
    // Where nobody knows the whole, a line for each so many.
    private const int Step = 50_000;

    private const int BarWidth = 24;

    private string work = "";
    private long told = -1;
    private bool open;

    /// <inheritdoc/>
    public void Report(StoreProgress value)
    {
        var step = value.Total > 0 ? value.Done * (isTerminal ? 100 : 10) / value.Total : value.Done / (isTerminal ? 1000 : Step);
        if (value.What == work && step == told)
            return;
        if (value.What != work)
            End();
        (work, told) = (value.What, step);
        var text = value.Total > 0
            ? string.Create(CultureInfo.InvariantCulture,
                $"{value.What}: {value.Done * 100 / value.Total} % ({value.Done:N0} of {value.Total:N0})")
            : string.Create(CultureInfo.InvariantCulture, $"{value.What}: {value.Done:N0}");
        if (isTerminal)
            errors.Write("\r" + (value.Total > 0 ? Bar(value) : "") + text);
        else if (step > 0 && (value.Total == 0 || value.Total >= worthTelling))
            errors.WriteLine(text);
        open = isTerminal;
    }

    private static string Bar(StoreProgress value)
    {
        var full = (int)Math.Min(BarWidth, value.Done * BarWidth / value.Total);
        return $"[{new string('#', full)}{new string('.', BarWidth - full)}] ";
    }

    /// <summary>Ends the line, before anything else is written.</summary>
    public void End()
    {
        if (open)
            errors.WriteLine();
        open = false;
    }
}
