namespace Stringline.Office;

/// <summary>How a desk is opened.</summary>
/// <param name="Store">Address of the store, as <see cref="Store.Journals.Open"/> takes it.</param>
/// <param name="Port">The port on the loopback address; 0 for one that is free.</param>
internal sealed record DeskOptions(string Store, int Port)
{
    /// <summary>The port a desk takes where none is asked for.</summary>
    public const int UsualPort = 8414;

    /// <summary>What to do where no store is.</summary>
    public Store.OpenStore Opening { get; init; } = Stringline.Store.OpenStore.OrMakeOnWriting;

    /// <summary>The day the desk takes for today, for tests and demonstrations; null for today in California.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>The largest table that an import takes, in bytes.</summary>
    public long LargestTable { get; init; } = 200L * 1024 * 1024;

    /// <summary>Under whose name entries are written.</summary>
    public string Who { get; init; } = Environment.UserName is { Length: > 0 } user ? user : "desk";

    /// <summary>Whether the desk makes a backup a day.</summary>
    public bool Backups { get; init; }

    /// <summary>
    /// The folder for the keys that seal forms; null: they end with the process, and a form that is open then must be opened again.
    /// </summary>
    public string? KeyFolder { get; init; }

    /// <summary>The folder for what belongs to this user: stores and keys.</summary>
    public static string UserFolder { get; } =
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
            "stringline");

    /// <summary>The store of this user where no other is named.</summary>
    public static string UsualStore { get; } = Path.Combine(UserFolder, "office.stringline");
}
