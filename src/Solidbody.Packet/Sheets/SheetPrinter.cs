using System.Globalization;
using PdfSharp.Pdf;
using Solidbody.Packet.Fonts;

namespace Solidbody.Packet.Sheets;

/// <summary>Prints the sheet a person takes to the machine: one A4 sheet a set-up, vector, true millimetres.</summary>
public static class SheetPrinter
{
    /// <summary>The day every sheet bears in its file, so that the same packet gives the same sheet; the change says which it is.</summary>
    private static readonly DateTime FixedDate = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>Prints one set-up's sheet.</summary>
    /// <param name="input">What it says.</param>
    /// <returns>A PDF. One page; more only when the table of programs, the checks or the notes are longer than it.</returns>
    public static byte[] Print(SheetInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        SheetFonts.Use();
        using var document = new PdfDocument();
        document.Info.Title = $"{input.Instrument}: {input.SetUp.Title}";
        document.Info.Subject = "Set-up sheet";
        document.Info.Creator = "Solidbody";
        document.Info.CreationDate = FixedDate;
        document.Info.ModificationDate = FixedDate;
        var id = input.SetUp.Order.ToString("D16", CultureInfo.InvariantCulture);
        document.Internals.FirstDocumentID = id;
        document.Internals.SecondDocumentID = id;
        using (var sheet = new Sheet(document, input)) sheet.Draw();
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        return stream.ToArray();
    }
}
