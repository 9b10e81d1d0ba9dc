using System.Globalization;
using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Counts the text of one cell, over the pieces in which it is formatted, without holding it.</summary>
internal sealed class CellText
{
    private readonly char[] buffer = new char[4096];
    private int length;
    private int pieces;

    /// <summary>The first characters of what was added last.</summary>
    public ReadOnlySpan<char> Head => buffer.AsSpan(0, headLength);

    private int headLength;

    /// <summary>Another cell begins.</summary>
    public void Begin() => (length, pieces, headLength) = (0, 0, 0);

    /// <summary>An element inside the cell.</summary>
    /// <param name="reader">Stands at it.</param>
    /// <param name="place">Where, in words.</param>
    public void Piece(XmlReader reader, string place)
    {
        if (reader.LocalName is "t" or "v" or "r" && ++pieces > 2 * TableLimits.MostPiecesOfACell)
            throw new TooLargeException($"{place} in thousands of pieces",
                $"at most {TableLimits.MostPiecesOfACell} pieces of different looks in a cell");
    }

    /// <summary>Text inside the cell.</summary>
    /// <param name="reader">Stands at it, and is read to its end.</param>
    /// <param name="place">Where, in words.</param>
    /// <returns>Its length.</returns>
    public int Add(XmlReader reader, string place)
    {
        var added = 0;
        int read;
        while ((read = reader.ReadValueChunk(buffer, 0, buffer.Length)) > 0)
        {
            headLength = added == 0 ? read : 0;
            added += read;
            if ((length += read) > TableLimits.LongestCell)
            {
                throw new TooLargeException(
                    $"{place} with more than {TableLimits.LongestCell.ToString("N0", CultureInfo.InvariantCulture)} characters",
                    "cells as long as a spreadsheet lets them be");
            }
        }

        return added;
    }
}
