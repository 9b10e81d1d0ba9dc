namespace Stringline.Store.Upkeep;

/// <summary>A backup in a folder of backups.</summary>
/// <param name="Path">Its file.</param>
/// <param name="At">When it was made, as its name says.</param>
public sealed record DatedBackup(string Path, LocalDateTime At);
