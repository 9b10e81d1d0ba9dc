using NodaTime.Text;
using Stringline.LawWatch;

const string Usage = """
    Usage: eng/law-watch FOLDER                     compares the Legislature's text with the one that the rules were written from
           eng/law-watch FOLDER --keep DAY SOURCE   keeps the fingerprints of this text, last updated on DAY, for what stands on it
    """;
try
{
    return args switch
    {
        [var folder] when folder[0] != '-' => Watch.Compare(Environment.CurrentDirectory, folder, Console.Out),
        [var folder, "--keep", var text, var source] when LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var day } =>
            Watch.Keep(Environment.CurrentDirectory, folder, day, source, Console.Out),
        _ => Wrong(Usage),
    };
}
catch (UnreadableException e)
{
    return Wrong(e.Message);
}

static int Wrong(string message)
{
    Console.Error.WriteLine(message);
    return 2;
}
