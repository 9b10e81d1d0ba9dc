using Stringline.Law.Facts;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>Someone to whom a copy of the claim goes.</summary>
/// <param name="Name">Name.</param>
/// <param name="Address">Address; null leaves a blank.</param>
/// <param name="AddressIs">What the address is, in words.</param>
/// <param name="Capacity">Title or capacity in which served.</param>
/// <param name="Article">Article number; null leaves a blank.</param>
internal sealed record Addressee(string Name, string? Address, string AddressIs, string Capacity, string? Article);

/// <summary>One mailing of copies, or the mailing still to be made.</summary>
/// <param name="Day">Day of deposit; null leaves a blank.</param>
/// <param name="Manner">By which mail; null leaves the boxes empty.</param>
/// <param name="To">To whom.</param>
/// <param name="CannotBeServed">The owners in whose place it went to the lender or direct contractor, because they cannot be served (Civ.
/// Code § 8416(c)(2)); null where it went to an owner.</param>
internal sealed record Mailing(LocalDate? Day, Manner? Manner, IReadOnlyList<Addressee> To, IReadOnlyList<string>? CannotBeServed);

/// <summary>A mailing of a copy that is older than what the claim states now, so that no affidavit can swear to it.</summary>
/// <param name="Day">The day of the mailing.</param>
/// <param name="To">To whom.</param>
/// <param name="Newer">The last of what the claim states and the copy cannot.</param>
internal sealed record OldCopy(LocalDate Day, IReadOnlyList<string> To, Entry Newer);
