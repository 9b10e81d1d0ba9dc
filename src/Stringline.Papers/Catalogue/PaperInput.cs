namespace Stringline.Papers.Catalogue;

/// <summary>Something a paper may be told with the request; see <see cref="PaperOptions"/>.</summary>
public enum PaperInput
{
    /// <summary><see cref="PaperOptions.To"/>.</summary>
    To,

    /// <summary><see cref="PaperOptions.Through"/>.</summary>
    Through,

    /// <summary><see cref="PaperOptions.Amount"/>.</summary>
    Amount,

    /// <summary><see cref="PaperOptions.Maker"/>.</summary>
    Maker,

    /// <summary><see cref="PaperOptions.Payee"/>.</summary>
    Payee,

    /// <summary><see cref="PaperOptions.Disputed"/>.</summary>
    Disputed,

    /// <summary><see cref="PaperOptions.PaymentCleared"/>.</summary>
    PaymentCleared,

    /// <summary><see cref="PaperOptions.Releases"/>.</summary>
    Releases,

    /// <summary><see cref="PaperOptions.ThroughAgain"/>.</summary>
    ThroughAgain,

    /// <summary><see cref="PaperOptions.Bonded"/>.</summary>
    Bonded,

    /// <summary><see cref="PaperOptions.Until"/>.</summary>
    Until,

    /// <summary><see cref="PaperOptions.Words"/>.</summary>
    Words,

    /// <summary><see cref="PaperOptions.Day"/>.</summary>
    Day,

    /// <summary><see cref="PaperOptions.Number"/>.</summary>
    Number,

    /// <summary><see cref="PaperOptions.Grounds"/>.</summary>
    Grounds,

    /// <summary><see cref="PaperOptions.ExtensionDays"/>.</summary>
    ExtensionDays,

    /// <summary><see cref="PaperOptions.Documents"/>.</summary>
    Documents,

    /// <summary><see cref="PaperOptions.Structure"/>.</summary>
    Structure,

    /// <summary><see cref="PaperOptions.FormerOwner"/>.</summary>
    FormerOwner,

    /// <summary><see cref="PaperOptions.WholeWork"/>.</summary>
    WholeWork,

    /// <summary><see cref="PaperOptions.Notice"/>.</summary>
    Notice,
}
