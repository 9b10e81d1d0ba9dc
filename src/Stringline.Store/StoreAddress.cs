using System.Globalization;
using System.Text.RegularExpressions;
using Npgsql;
using Stringline.Store.Sql;

namespace Stringline.Store;

/// <summary>
/// Where a store is: a SQLite file, or a schema on a PostgreSQL server. The one reader of it: what is nearly the address of a server is
/// refused and never taken for the name of a file, and no message repeats any of it, since a password may stand in it.
/// </summary>
public abstract partial record StoreAddress
{
    /// <summary>How a refused address is named, in place of itself.</summary>
    public const string Unnamed = "the address of the store";

    private const string Right = "the path of a file such as office.stringline, or postgres: and a connection string such as "
        + "postgres:Host=db;Database=office;Username=me, all of it in quotation marks on a command line";

    private StoreAddress()
    {
    }

    /// <summary>A SQLite file.</summary>
    /// <param name="Path">Its path as it was given.</param>
    public sealed record InFile(string Path) : StoreAddress
    {
        /// <inheritdoc/>
        public override string ToString() => Path;
    }

    /// <summary>A schema on a PostgreSQL server.</summary>
    public sealed record OnServer : StoreAddress
    {
        internal OnServer(NpgsqlConnectionStringBuilder settings) => Settings = settings;

        internal NpgsqlConnectionStringBuilder Settings { get; }

        /// <summary>The server and the place on it, without who opens it and by which password.</summary>
        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"{Journals.PostgresPrefix}Host={Settings.Host};Port={Settings.Port};Database={Settings.Database};"
            + $"Search Path={Settings.SearchPath}");
    }

    /// <summary>Reads an address.</summary>
    /// <param name="text">As it was typed, or as the environment has it.</param>
    /// <exception cref="StoreException">It is none; the message holds nothing of it.</exception>
    public static StoreAddress Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var bare = text.Trim();
        if (bare.StartsWith(Journals.PostgresPrefix, StringComparison.OrdinalIgnoreCase))
            return Server(bare[Journals.PostgresPrefix.Length..]);
        if (FileFault(text) is { } found)
            throw Refused(found);
        return new InFile(text);
    }

    /// <summary>Reads the path of a file that is or will be a store, such as a backup.</summary>
    /// <param name="text">As it was typed.</param>
    /// <param name="what">What it is the path of.</param>
    /// <exception cref="StoreException">It is none; the message holds nothing of it.</exception>
    public static string ReadFile(string text, string what)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FileFault(text) is { } found ? throw new StoreException(StoreFault.NotAllowed, what, found, "the path of a file") : text;
    }

    /// <summary>Whether words that should be something else hold the address of a server, and so perhaps a password.</summary>
    /// <param name="text">The words.</param>
    public static bool MaySpeakOfServer(string text) =>
        ServerScheme().IsMatch(text) || Setting().IsMatch(text) || UserInLink().IsMatch(text);

    private static string? FileFault(string text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return "blank";
        if (text.Any(char.IsControl))
            return "words with a sign that cannot be seen";
        if (text.Contains("://", StringComparison.Ordinal))
            return "an address with ://, which is not the form that this program reads";
        if (Setting().IsMatch(text) || (text.Contains(';', StringComparison.Ordinal) && text.Contains('=', StringComparison.Ordinal)))
            return "the settings of a connection without postgres: before them";
        if (char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]))
            return "a path with a blank before or after it";
        if (text[0] is '"' or '\'' or '`' or '“' or '‘' || text[^1] is '"' or '\'' or '`' or '”' or '’')
            return "a path with a quotation mark at its beginning or end";
        if (text[0] == ':' || text.Contains('|', StringComparison.Ordinal))
            return "a name that SQLite does not take for a file";
        if (Scheme().IsMatch(text))
            return "a word and a colon that begin no address of this program; a file whose name has a colon is written with ./ before it";
        return UserInLink().IsMatch(text) ? "a user and a password before the name of a server" : null;
    }

    private static OnServer Server(string connection)
    {
        if (connection.TrimStart().StartsWith("//", StringComparison.Ordinal))
            throw Refused("an address with ://, which is not the form that this program reads");
        NpgsqlConnectionStringBuilder settings;
        try
        {
            settings = new NpgsqlConnectionStringBuilder(connection);
        }
        catch (Exception e) when (
            e is ArgumentException or KeyNotFoundException or FormatException or InvalidCastException or OverflowException)
        {
            // The driver's message repeats what it could not read, which is half of a password that has a semicolon in it.
            throw new StoreException(StoreFault.NotAllowed, Journals.PostgresPrefix + "…", "a connection string that cannot be read",
                "such as postgres:Host=db;Database=office;Username=me; a password with a semicolon, a blank or a quotation mark stands "
                    + "in quotation marks, such as Password=\"a;b\"");
        }

        settings.SearchPath ??= PostgresDatabase.DefaultSchema;
        Must(settings.Host, Hosts(), "Host", "the name or the number of a server");
        Must(settings.Database, Name(), "Database", "the name of a database");
        Must(settings.Username, Name(), "Username", "the name of a user");
        Must(settings.SearchPath, Schema(), "Search Path", "one schema, its name of lower-case letters, digits and _");
        return new OnServer(settings);
    }

    // A setting that swallowed the one after it would be shown by the driver and by the server.
    private static void Must(string? value, Regex form, string setting, string right)
    {
        if (value is null ? setting == "Host" : !form.IsMatch(value))
            throw new StoreException(
                StoreFault.NotAllowed, Journals.PostgresPrefix + "…", value is null ? $"no {setting}="
                : $"something else after {setting}=", right);
    }

    private static StoreException Refused(string found) => new(StoreFault.NotAllowed, Unnamed, found, Right);

    // Two letters at least: C: is a drive.
    [GeneratedRegex(@"^\s*[A-Za-z][A-Za-z0-9+.\-_ ]+:")]
    private static partial Regex Scheme();

    [GeneratedRegex(@"(^|[\s""'`=])(postgre|pgsql|psql|npgsql|jdbc|odbc)[A-Za-z0-9]*\s*[:;]|://", RegexOptions.IgnoreCase)]
    private static partial Regex ServerScheme();

    [GeneratedRegex(
        @"(host|server|data\s*source|password|passwd|pwd|passfile|(?<![a-z])(user\s*id|user\s*name|uid|user|database|dbname|port))\s*=",
        RegexOptions.IgnoreCase)]
    private static partial Regex Setting();

    [GeneratedRegex(@"^(?![A-Za-z]:[\\/])[^:]*:.*@")]
    private static partial Regex UserInLink();

    [GeneratedRegex(
        @"^(/[^=;:@,'""\s]*|[A-Za-z0-9_.\-]+(:\d{1,5})?|[0-9A-Fa-f:.]+(%[A-Za-z0-9]+)?|\[[0-9A-Fa-f:.]+\](:\d{1,5})?)"
        + @"(,(?!$)(/[^=;:@,'""\s]*|[A-Za-z0-9_.\-]+(:\d{1,5})?|[0-9A-Fa-f:.]+))*$")]
    private static partial Regex Hosts();

    [GeneratedRegex(@"^[^=;:'""/\\\x00-\x1f]{1,63}$")]
    private static partial Regex Name();

    [GeneratedRegex("^[a-z0-9_]{1,60}$")]
    private static partial Regex Schema();
}
