using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>A definition as text, lists and all: records compare lists by reference.</summary>
static partial class Records
{
    static readonly JsonSerializerOptions Options = new() { IncludeFields = true };

    public static string Text(InstrumentDefinition definition) =>
        JsonSerializer.Serialize(definition, Options) + JsonSerializer.Serialize<object>(definition.Body.Outline.Treble) + JsonSerializer.Serialize<object>(definition.Body.Outline.Bass);

    /// <summary>To 1e-5: angles that went through degrees and values written to 1e-6 are not the same to the last bit.</summary>
    public static string Rounded(InstrumentDefinition definition) => Number().Replace(Text(definition),
        m => Math.Round(double.Parse(m.Value, CultureInfo.InvariantCulture), 5).ToString(CultureInfo.InvariantCulture));

    [GeneratedRegex(@"-?\d+\.\d+(E-\d+)?")]
    private static partial Regex Number();
}
