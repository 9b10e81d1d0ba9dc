namespace Stringline.Tables.Sheets.Columns;

/// <summary>What the rows of a table are.</summary>
public enum TableKind
{
    /// <summary>A row a job, with its site, its people and its contract.</summary>
    Jobs,

    /// <summary>A row an invoice or delivery; it may say of its job what a row of jobs says.</summary>
    Invoices,

    /// <summary>A row a payment, or a part of one that was applied to an invoice.</summary>
    Payments,
}

/// <summary>What a column of a table means.</summary>
public enum Column
{
    /// <summary>The job's number: its key in the store.</summary>
    Job,

    /// <summary>The job's name.</summary>
    JobName,

    /// <summary>Who hired the claimant; of a payment, who paid.</summary>
    Customer,

    /// <summary>The customer's address.</summary>
    CustomerAddress,

    /// <summary>What the customer is on the work.</summary>
    CustomerIs,

    /// <summary>Street and number of the site.</summary>
    Street,

    /// <summary>City of the site.</summary>
    City,

    /// <summary>ZIP code of the site.</summary>
    Zip,

    /// <summary>County of the site.</summary>
    County,

    /// <summary>Assessor's parcel number.</summary>
    Apn,

    /// <summary>Owner, or reputed owner.</summary>
    Owner,

    /// <summary>The owner's address.</summary>
    OwnerAddress,

    /// <summary>Direct contractor, or reputed direct contractor.</summary>
    DirectContractor,

    /// <summary>The direct contractor's address.</summary>
    DirectContractorAddress,

    /// <summary>Construction lender, or reputed construction lender.</summary>
    Lender,

    /// <summary>The lender's address.</summary>
    LenderAddress,

    /// <summary>Private, public or federal.</summary>
    WorkKind,

    /// <summary>The agreed price.</summary>
    ContractPrice,

    /// <summary>The day of the contract.</summary>
    ContractDay,

    /// <summary>The invoice's or delivery ticket's number.</summary>
    Invoice,

    /// <summary>The invoice's day.</summary>
    InvoiceDay,

    /// <summary>The day on which it was furnished, or the first of them.</summary>
    Furnished,

    /// <summary>The last day on which it was furnished.</summary>
    Until,

    /// <summary>Dollars and cents.</summary>
    Amount,

    /// <summary>What it was.</summary>
    Text,

    /// <summary>The payment's, cheque's or receipt's number.</summary>
    Payment,

    /// <summary>The day on which the money was received.</summary>
    PaidDay,

    /// <summary>The invoice to which the debtor directed it.</summary>
    Toward,

    /// <summary>The customer's telephone number.</summary>
    CustomerTelephone,

    /// <summary>The customer's e-mail address.</summary>
    CustomerEmail,

    /// <summary>The owner's telephone number.</summary>
    OwnerTelephone,

    /// <summary>The owner's e-mail address.</summary>
    OwnerEmail,

    /// <summary>The direct contractor's telephone number.</summary>
    DirectContractorTelephone,

    /// <summary>The direct contractor's e-mail address.</summary>
    DirectContractorEmail,

    /// <summary>The lender's telephone number.</summary>
    LenderTelephone,

    /// <summary>The lender's e-mail address.</summary>
    LenderEmail,

    /// <summary>Whether a row is an invoice, a credit memo or a payment.</summary>
    RowType,
}
