namespace Stringline.Law.Recording;

/// <summary>What may be known of a county recorder's office, one fact each.</summary>
public enum RecorderField
{
    /// <summary>The city in which the counter is, where no street was read.</summary>
    City,

    /// <summary>Where papers are taken: building, street, room, city.</summary>
    Counter,

    /// <summary>Another counter of the office. There may be several.</summary>
    Branch,

    /// <summary>Telephone.</summary>
    Phone,

    /// <summary>Office hours.</summary>
    Hours,

    /// <summary>The last time of day at which a paper is taken to be recorded that day.</summary>
    RecordUntil,

    /// <summary>What the page says of recording while one waits, and of who may bring papers.</summary>
    SameDay,

    /// <summary>To whom the check is made out.</summary>
    Payee,

    /// <summary>What the office takes as payment.</summary>
    Payment,

    /// <summary>The envelope for what comes back.</summary>
    Envelope,

    /// <summary>Whether and how copies are conformed.</summary>
    Copies,

    /// <summary>Address for the mail.</summary>
    Mail,

    /// <summary>Address for overnight services.</summary>
    Courier,

    /// <summary>How long the original takes to come back.</summary>
    MailBack,

    /// <summary>Which system takes electronic recordings.</summary>
    Electronic,

    /// <summary>What the office wants of a page beyond the sections.</summary>
    FirstPage,

    /// <summary>Recording and indexing the first page of one title (Gov. Code §§ 27361, 27361.4), without fraud and homes fees.</summary>
    Base,

    /// <summary>Each further page (Gov. Code § 27361(a)(1)).</summary>
    ExtraPage,

    /// <summary>Real estate fraud fee on a mechanics lien (Gov. Code § 27388); 0 where the county's list leaves it out.</summary>
    Fraud,

    /// <summary>
    /// Fraud fee on the papers of the county's own list where that list leaves mechanics liens out; the list was not read whole, so a
    /// paper other than a claim of lien may be on it.
    /// </summary>
    FraudOnOthers,

    /// <summary>Whether the homes fee (Gov. Code § 27388.1) is counted for each parcel: yes or no.</summary>
    ParcelsCounted,

    /// <summary>Restrictive covenant fee (Gov. Code § 27388.2).</summary>
    Covenant,

    /// <summary>Each ten names, or part of ten, after the first ten (Gov. Code § 27361.8).</summary>
    NamesPerTen,

    /// <summary>Each reference to a recorded paper beyond the first (Gov. Code § 27361.2).</summary>
    FurtherReference,

    /// <summary>Notice of involuntary lien (Gov. Code §§ 27297.5, 27387): the first group of names at one address.</summary>
    NoticeFirst,

    /// <summary>The same: each further group.</summary>
    NoticeNext,

    /// <summary>Names in a group, where not every name is charged.</summary>
    NoticeGroup,

    /// <summary>Conformed copy, flat.</summary>
    ConformedCopy,

    /// <summary>Conformed copy, each page.</summary>
    ConformedPerPage,

    /// <summary>Filing a preliminary notice, which is not recorded (Civ. Code § 8214).</summary>
    FiledNotice,

    /// <summary>What must be known beside the prices.</summary>
    Note,
}

/// <summary>How the value of a field is written.</summary>
public enum RecorderValue
{
    /// <summary>Words.</summary>
    Words,

    /// <summary>Dollars.</summary>
    Dollars,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A whole number above 0.</summary>
    Count,
}

/// <summary>What kind of thing each field is.</summary>
public static class RecorderFields
{
    /// <summary>How its value is written.</summary>
    public static RecorderValue Kind(RecorderField field) => field switch
    {
        RecorderField.ParcelsCounted => RecorderValue.YesNo,
        RecorderField.NoticeGroup => RecorderValue.Count,
        RecorderField.Note => RecorderValue.Words,
        >= RecorderField.Base => RecorderValue.Dollars,
        _ => RecorderValue.Words,
    };

    /// <summary>Whether it is a price of recording, or says how one is counted.</summary>
    public static bool IsPrice(RecorderField field) => Kind(field) != RecorderValue.Words && field != RecorderField.FiledNotice;

    /// <summary>Whether an office may have several at once, each beside the other.</summary>
    public static bool HasSeveral(RecorderField field) => field is RecorderField.Branch or RecorderField.Note;
}
