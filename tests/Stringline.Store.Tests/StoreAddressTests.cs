using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>What is nearly an address is understood or refused, and no message repeats any of it.</summary>
public sealed class StoreAddressTests
{
    // Each half of it stands for a password; Npgsql's connection strings end an unquoted one at the semicolon.
    private const string Secret = "opensesame";
    private const string Half = "xylograph";

    /// <summary>Near misses that are refused. PW stands for a password, and PW;HALF for one with a semicolon that is not quoted.</summary>
    public static TheoryData<string> Refused =>
    [
        "", " ", "\t", "postgres:", "postgres: ", "postgres:;", "postgres:office.stringline", "postgres:PW", "Postgres:db",
        "postgres://me:PW@db/office", "POSTGRES://me:PW@db/office", "postgresql://me:PW@db/office", "PostgreSQL://me:PW@db:5432/office",
        "postgres: //me:PW@db/office", "//me:PW@db/office", "me:PW@db/office", "me:PW@db", "http://db/office?password=PW",
        "jdbc:postgresql://db/office?user=me&password=PW",
        "sqlite://office.stringline", "sqlite:office.stringline", "sqlite3:office.stringline", "file:office.stringline",
        "file:office?mode=memory", "FILE:///office",
        ":memory:", "|DataDirectory|office.stringline", "x|y", "mssql:Server=db;Password=PW", "mysql:db", "redis:PW", "db:5432/office",
        "postgre:Host=db;Password=PW", "postgress:Host=db;Password=PW", "postgresql:Host=db;Password=PW", "pg:Host=db;Password=PW",
        "psql:Host=db;Password=PW",
        "postgres;Host=db;Password=PW", "postgres Host=db;Password=PW", "postgres =Host=db;Password=PW", "postgres :Host=db;Password=PW",
        "pos tgres:PW",
        "Host=db;Database=office;Password=PW", "host = db; password = PW", "HOST=db", "Server=db;Pwd=PW", "server=db",
        "Data Source=db;User Id=me;Password=PW",
        "Password=PW", "PASSWORD = PW", "office.stringline;Password=PW", "Data Source=office.stringline;Password=PW", "a=b;c=PW",
        "host=db dbname=office user=me password=PW",
        "./Password=PW", "folder/Host=db;Password=PW", "\"postgres:Host=db;Password=PW\"", "'postgres:Host=db;Password=PW'",
        "“postgres:Host=db;Password=PW”", "`postgres:PW`",
        " office.stringline", "office.stringline ", "office\n.stringline", "office\u0000", "\"office.stringline\"", "'office.stringline",
        "office.stringline\"",
        "postgres:Host=db;Password=PW;HALF", "postgres:Host=db;Password=PW;HALF;Timeout=3", "postgres:Host=db;Password=\"PW",
        "postgres:Host=db;Password='PW;Database=office",
        "postgres:Host=db;Pasword=PW", "postgres:Hast=db;Password=PW", "postgres:Database=office;Password=PW", "postgres:Host=;Password=PW",
        "postgres:Port=PW;Host=db",
        "postgres:Host=db Password=PW", "postgres:Host=db,Password=PW", "postgres:Host=me:PW@db", "postgres:Host=db:PW",
        "postgres:Host=//me:PW@db/office", "postgres:Host='db;Password=PW'",
        "postgres:Host=db;Username=me Password=PW", "postgres:Host=db;Username=me:PW", "postgres:Host=db;Username=me/PW",
        "postgres:Host=db;Database=office Password=PW",
        "postgres:Host=db;Database=office?password=PW", "postgres:Host=db;Search Path=office Password=PW",
        "postgres:Host=db;Search Path=a,b", "postgres:Host=db;Search Path=Office",
        "postgres:Host=db;Timeout=PW", "postgres:Host=db;SSL Mode=PW", "postgres:Host=db;Password=PW;Min Pool Size=PW",
        "postgres:postgres:Host=db;Password=PW", "--store=Host=db;Password=PW",
    ];

    /// <summary>What is understood, and what is shown of it.</summary>
    public static TheoryData<string, string> Understood => new()
    {
        { "office.stringline", "office.stringline" },
        { "./report: May.stringline", "./report: May.stringline" },
        { "/srv/our office/jobs, 2026 (new).db", "/srv/our office/jobs, 2026 (new).db" },
        { "C:\\Users\\ana\\office.stringline", "C:\\Users\\ana\\office.stringline" },
        { "C:\\Users\\ana@work\\office.stringline", "C:\\Users\\ana@work\\office.stringline" },
        { "postgres", "postgres" },
        { "año/büro.stringline", "año/büro.stringline" },
        { "a=b", "a=b" },
        { "ana@work.stringline", "ana@work.stringline" },
        { "postgres:Host=db;Password=PW", "postgres:Host=db;Port=5432;Database=;Search Path=stringline" },
        { "Postgres:Host=db;Database=office;Password=PW", "postgres:Host=db;Port=5432;Database=office;Search Path=stringline" },
        { "POSTGRES: host = db ; password = PW ", "postgres:Host=db;Port=5432;Database=;Search Path=stringline" },
        { " postgres:Server=db;Password=PW\n", "postgres:Host=db;Port=5432;Database=;Search Path=stringline" },
        { "postgres:Host=db;Password=\"PW;HALF\";Database=office", "postgres:Host=db;Port=5432;Database=office;Search Path=stringline" },
        { "postgres:Host=db;Password='PW;HALF \"x'", "postgres:Host=db;Port=5432;Database=;Search Path=stringline" },
        { "postgres:Host=db;Password=PW=HALF", "postgres:Host=db;Port=5432;Database=;Search Path=stringline" },
        { "postgres:Host=db.office.lan;Username=ana@work;Password=PW;Search Path=office_2",
            "postgres:Host=db.office.lan;Port=5432;Database=;Search Path=office_2" },
        { "postgres:Host=/var/run/postgresql;Database=office",
            "postgres:Host=/var/run/postgresql;Port=5432;Database=office;Search Path=stringline" },
        { "postgres:Host=::1;Database=office", "postgres:Host=::1;Port=5432;Database=office;Search Path=stringline" },
        { "postgres:Host=db1,db2:5433;Database=office", "postgres:Host=db1,db2:5433;Port=5432;Database=office;Search Path=stringline" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    [Attack("near misses of a store’s address")]
    public void A_near_miss_is_refused_without_a_word_of_it(string form)
    {
        var address = Filled(form);
        MustHide(Assert.Throws<StoreException>(() => StoreAddress.Read(address)), address);

        // Every way in reads it alike, and makes nothing.
        var before = Directory.GetFileSystemEntries(Directory.GetCurrentDirectory());
        foreach (var open in Enum.GetValues<OpenStore>())
            MustHide(Assert.Throws<StoreException>(() => Journals.Open(address, SystemClock.Instance, open)), address);
        MustHide(Assert.Throws<StoreException>(() => Upkeep.Restore.From("nothing", address, replace: true, SystemClock.Instance)),
            address);
        MustHide(Assert.Throws<StoreException>(() => Upkeep.Move.To(address, "nothing", SystemClock.Instance)), address);
        MustHide(Assert.Throws<StoreException>(() => StoreAddress.ReadFile(address, "the backup")), address);
        Assert.Equal(before, Directory.GetFileSystemEntries(Directory.GetCurrentDirectory()));
    }

    [Theory]
    [MemberData(nameof(Understood))]
    [Attack("near misses of a store’s address")]
    public void What_is_understood_is_shown_without_the_password(string form, string shown)
    {
        var address = StoreAddress.Read(Filled(form));
        Assert.Equal(shown, address.ToString());
        Assert.Equal(form.Contains("PW", StringComparison.Ordinal) || form.Contains("Host=", StringComparison.Ordinal),
            address is StoreAddress.OnServer);
    }

    [Fact]
    public void A_backup_or_an_export_never_goes_to_the_address_of_a_server()
    {
        using var place = new SqlitePlace();
        var journal = place.Open();
        var address = Filled("postgres:Host=127.0.0.1;Port=1;Password=PW");
        MustHide(Assert.Throws<StoreException>(() => Upkeep.Backup.Make(journal, address)), address);
        MustHide(Assert.Throws<StoreException>(() => Upkeep.Export.To(journal, address)), address);
        MustHide(Assert.Throws<StoreException>(
            () => Upkeep.Restore.From(address, place.Address + "2", replace: false, SystemClock.Instance)), address);
    }

    [Theory]
    [InlineData("postgres:Host=127.0.0.1;Port=1;Username=app;Password=PW;Timeout=5")]
    [InlineData("postgres:Host=127.0.0.1;Port=1;Username=app;Password=PW;Timeout=5;Multiplexing=true;Pooling=false")]
    [InlineData("postgres:Host=no-such-host.invalid;Username=app;Password=PW;Timeout=5")]
    [Attack("password in messages, help, stack")]
    public void A_server_that_cannot_be_used_is_told_without_the_password(string form)
    {
        var address = Filled(form);
        MustHide(Assert.Throws<StoreException>(() => Journals.Open(address, SystemClock.Instance)), address);
    }

    // The whole of an exception, with what caused it and its stack: that is what a log holds.
    private static void MustHide(Exception told, string address)
    {
        for (Exception? one = told; one is not null; one = one.InnerException)
        {
            Assert.DoesNotContain(Secret, one.ToString(), StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(Half, one.ToString(), StringComparison.OrdinalIgnoreCase);
        }

        Assert.True(address.Trim().Length == 0 || told.Message.Length > 20);
    }

    private static string Filled(string form) =>
        form.Replace("PW", Secret, StringComparison.Ordinal).Replace("HALF", Half, StringComparison.Ordinal);
}
