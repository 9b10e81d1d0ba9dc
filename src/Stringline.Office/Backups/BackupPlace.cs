using System.Security.Cryptography;
using System.Text;
using Stringline.Office.Settings;
using Stringline.Store;
using Stringline.Store.Upkeep;

namespace Stringline.Office.Backups;

/// <summary>Where the backups of a store lie.</summary>
internal static class BackupPlace
{
    /// <summary>
    /// The folder that the office named; else one beside the store, or for a store on a server one in the user's own folder.
    /// </summary>
    /// <param name="store">The store's address.</param>
    /// <param name="settings">What the office has set.</param>
    public static BackupFolder Of(string store, OfficeSettings settings) => Of(store, settings.BackupFolder);

    /// <summary>
    /// The folder that is named; else the one of the settings; where the store cannot be read, the usual one: the backups of a lost store
    /// are what is looked for.
    /// </summary>
    /// <param name="store">The store's address.</param>
    /// <param name="folder">The folder that is named; null for the usual one.</param>
    /// <param name="clock">For the store.</param>
    public static BackupFolder Of(string store, string? folder, IClock clock)
    {
        if (folder is not null)
            return Of(store, folder);
        try
        {
            using var journal = Journals.Open(store, clock, OpenStore.ReadOnly);
            return Of(store, OfficeSettings.Of(journal));
        }
        catch (StoreException)
        {
            return Of(store, (string?)null);
        }
    }

    private static BackupFolder Of(string store, string? named)
    {
        var (folder, name) = StoreAddress.Read(store) switch
        {
            StoreAddress.InFile file => (Path.GetFullPath(file.Path) + ".backups", Path.GetFileName(file.Path)),
            StoreAddress.OnServer server => (Path.Combine(DeskOptions.UserFolder, "backups"), "server-" + Hash(server.ToString())),
            _ => throw new InvalidOperationException("No such address."),
        };
        return new BackupFolder(named ?? folder, name);
    }

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..12];
}
