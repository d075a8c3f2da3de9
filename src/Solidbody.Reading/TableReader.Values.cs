using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Reading;

/// <content>Single values. Bounds and defaults are in the unit people write: mm, deg, mm/min, mm/s2, rpm, W, Hz, g/m, C, g, kg/m3, N/mm2, N; what comes back is in the unit used inside.
/// A default of null means that the key must be given.</content>
public sealed partial class TableReader
{
    static readonly ImmutableArray<(string Word, LengthUnit Value)> UnitWords = [("mm", LengthUnit.Millimetre), ("in", LengthUnit.Inch)];

    /// <summary>The file's declared unit; that it is missing is a mistake even where every length carries its own.</summary>
    internal LengthUnit? Units()
    {
        var sound = _mistakes;
        var unit = Choice("units", UnitWords, null, "unit of every length written as a bare number");
        return _mistakes == sound && Has("units") ? unit : null;
    }

    /// <returns>mm.</returns>
    public double Length(string key, double least, double most, double? or, string what) => Measured(Quantity.Length(_file.Unit), key, least, most, or, what);

    /// <summary>Bounds and default in degrees.</summary>
    /// <returns>Radians.</returns>
    public double Angle(string key, double least, double most, double? or, string what) => Measured(Quantity.Angle, key, least, most, or, what);

    /// <summary>Bounds and default in mm/min.</summary>
    /// <returns>mm/s.</returns>
    public double Speed(string key, double least, double most, double? or, string what) => Measured(Quantity.Speed, key, least, most, or, what);

    /// <returns>mm/s².</returns>
    public double Acceleration(string key, double least, double most, double? or, string what) => Measured(Quantity.Acceleration, key, least, most, or, what);

    /// <summary>Bounds and default in turns a minute.</summary>
    /// <returns>Turns a second.</returns>
    public double Turning(string key, double least, double most, double? or, string what) => Measured(Quantity.Turning, key, least, most, or, what);

    /// <returns>Watts.</returns>
    public double Power(string key, double least, double most, double? or, string what) => Measured(Quantity.Power, key, least, most, or, what);

    /// <returns>Specific cutting force, N/mm².</returns>
    public double CuttingForce(string key, double least, double most, double? or, string what) => Measured(Quantity.CuttingForce, key, least, most, or, what);

    /// <returns>N.</returns>
    public double Force(string key, double least, double most, double? or, string what) => Measured(Quantity.Force, key, least, most, or, what);

    /// <returns>Hz.</returns>
    public double Frequency(string key, double least, double most, double? or, string what) => Measured(Quantity.Frequency, key, least, most, or, what);

    /// <summary>A length that may be left out.</summary>
    /// <returns>mm; null when the person did not write it.</returns>
    public double? LengthIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Length(_file.Unit), key, least, most, what);

    /// <summary>A mass of a unit length that may be left out. Bounds in g/m.</summary>
    /// <returns>kg/m; null when the person did not write it.</returns>
    public double? UnitMassIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.UnitMass, key, least, most, what);

    /// <returns>°C.</returns>
    public double Temperature(string key, double least, double most, double? or, string what) => Measured(Quantity.Temperature, key, least, most, or, what);

    /// <summary>Bounds and default in g.</summary>
    /// <returns>kg.</returns>
    public double Mass(string key, double least, double most, double? or, string what) => Measured(Quantity.Mass, key, least, most, or, what);

    /// <returns>kg/m³; null when the person did not write it.</returns>
    public double? DensityIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Density, key, least, most, what);

    /// <returns>N/mm²; null when the person did not write it.</returns>
    public double? StressIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Stress, key, least, most, what);

    /// <returns>N; null when the person did not write it.</returns>
    public double? ForceIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Force, key, least, most, what);

    /// <summary>Bounds in mm/min.</summary>
    /// <returns>mm/s; null when the person did not write it.</returns>
    public double? SpeedIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Speed, key, least, most, what);

    /// <summary>Bounds in turns a minute.</summary>
    /// <returns>Turns a second; null when the person did not write it.</returns>
    public double? TurningIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Turning, key, least, most, what);

    /// <summary>A number without a unit that may be left out.</summary>
    public double? NumberIfGiven(string key, double least, double most, string what) => MeasuredIfGiven(Quantity.Number, key, least, most, what);

    /// <summary>A number without a unit.</summary>
    public double Number(string key, double least, double most, double? or, string what) => Measured(Quantity.Number, key, least, most, or, what);

    /// <summary>A whole number.</summary>
    public int Count(string key, int least, int most, int? or, string what)
    {
        var allowed = $"{least} to {most}";
        if (Ask(key, allowed, or?.ToString(CultureInfo.InvariantCulture), what) is not { } value) return or ?? least;
        return TryCount(key, value, least, most, out var count) ? count : or ?? least;
    }

    /// <summary>A list of whole numbers, rising, each once.</summary>
    public ImmutableArray<int> Counts(string key, int least, int most, ImmutableArray<int> or, string what)
    {
        if (Ask(key, $"a list of whole numbers, each {least} to {most}", $"[{string.Join(", ", or)}]", what) is not { } value) return or;
        if (value is not TomlArray array)
        {
            Refuse(key, $"{Named(key)} is {Describe(value)}", "a list of whole numbers", "write them in brackets: [3, 5, 7]");
            return or;
        }
        var counts = array.Items.Select(item => TryCount(key, item, least, most, out var count) ? count : -1).ToArray();
        if (counts.Contains(-1)) return or;
        if (counts.Distinct().Count() != counts.Length) Refuse(key, $"{Named(key)} names a number twice", "each number once", "remove the second");
        return [.. counts.Order()];
    }

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public bool Flag(string key, bool? or, string what)
    {
        if (Ask(key, "true or false", or is { } given ? (given ? "true" : "false") : null, what) is not { } value) return or ?? false;
        if (value is TomlScalar { Kind: TomlScalar.Boolean } flag) return flag.Text == "true";
        Refuse(key, $"{Named(key)} is {Describe(value)}", "true or false", "write true or false, without quotes");
        return or ?? false;
    }

    /// <summary>One of a few words.</summary>
    /// <param name="or">The default's word.</param>
    public T Choice<T>(string key, ImmutableArray<(string Word, T Value)> choices, string? or, string what)
    {
        var allowed = Listing.Or(choices.Select(c => c.Word));
        var fallback = choices.FirstOrDefault(c => c.Word == or, choices[0]).Value;
        if (Ask(key, allowed, or is null ? null : $"\"{or}\"", what) is not { } value) return fallback;
        if (value is TomlScalar { Kind: TomlScalar.String } text && choices.Any(c => c.Word == text.Text)) return choices.First(c => c.Word == text.Text).Value;
        var near = value is TomlScalar word ? NearestWord.To(word.Text, choices.Select(c => c.Word)) : null;
        Refuse(key, $"{Named(key)} is {Describe(value)}", allowed, near is null ? "use one of the words allowed" : $"did you mean \"{near}\"?");
        return fallback;
    }

    /// <summary>One of a few words, as itself.</summary>
    public string Word(string key, IEnumerable<string> words, string? or, string what) => Choice(key, [.. words.Select(w => (w, w))], or, what);

    /// <summary>A short text on one line.</summary>
    public string Text(string key, int longest, string? or, string what)
    {
        var allowed = $"a text of 1 to {longest} characters";
        if (Ask(key, allowed, or is null ? null : $"\"{or}\"", what) is not { } value) return or ?? "";
        if (value is TomlScalar { Kind: TomlScalar.String } text)
        {
            var words = text.Text.Trim();
            if (words.Length > 0 && words.Length <= longest && !words.Any(char.IsControl)) return words;
            Refuse(key, $"{Named(key)} has {words.Length} characters{(words.Any(char.IsControl) ? ", some of which cannot be printed" : "")}", allowed, "write a short name on one line");
        }
        else Refuse(key, $"{Named(key)} is {Describe(value)}", allowed, "write it in quotes");
        return or ?? "";
    }

    /// <summary>A short text on one line; null when the person did not write it.</summary>
    public string? TextIfGiven(string key, int longest, string what)
    {
        if (Has(key)) return Text(key, longest, null, what);
        _known.Add(key);
        _file.Note(new KeyNote(Path, Element, key, $"a text of 1 to {longest} characters", "not given", what));
        return null;
    }

    /// <summary>A text with a form of its own, such as a note's name. It must be given.</summary>
    /// <param name="allowed">The form in words, with an example.</param>
    /// <param name="read">Null for a text that has not the form.</param>
    /// <param name="standIn">Goes on in its stead after a mistake.</param>
    public T Form<T>(string key, string allowed, Func<string, T?> read, T standIn, string remedy, string what) where T : struct
    {
        if (Ask(key, allowed, null, what) is not { } value) return standIn;
        if (value is TomlScalar { Kind: TomlScalar.String } text && read(text.Text) is { } good) return good;
        Refuse(key, $"{Named(key)} is {Describe(value)}", allowed, value is TomlScalar { Kind: TomlScalar.String } ? remedy : "write it in quotes");
        return standIn;
    }

    /// <summary>The value of a key, noted as known; null when the default stands in or the key is missing.</summary>
    TomlValue? Ask(string key, string allowed, string? or, string what)
    {
        if (_known.Contains(key)) throw new InvalidOperationException($"The key {PathTo(key)} is read twice.");
        _known.Add(key);
        _file.Note(new KeyNote(Path, Element, key, allowed, or, what));
        if (_table.TryGet(key, out var entry)) return entry.Value;
        if (or is null) RefuseMissing(key, allowed);
        return null;
    }

    double? MeasuredIfGiven(Quantity quantity, string key, double least, double most, string what)
    {
        if (Has(key)) return Measured(quantity, key, least, most, null, what, NotGiven);
        _known.Add(key);
        _file.Note(new KeyNote(Path, Element, key, $"{quantity.Show(least)} to {quantity.Show(most)}", NotGiven, what));
        return null;
    }

    const string NotGiven = "not given";

    /// <param name="orWord">What the document says of its default where there is none.</param>
    double Measured(Quantity quantity, string key, double least, double most, double? or, string what, string? orWord = null)
    {
        var allowed = $"{quantity.Show(least)} to {quantity.Show(most)}";
        var fallback = quantity.ToInside(or ?? least);
        if (Ask(key, allowed, or is { } given ? quantity.ShowAsToml(given) : orWord, what) is not { } value) return fallback;
        if (value is not TomlScalar scalar || (scalar.Kind != TomlScalar.String && !scalar.IsNumber) || (quantity == Quantity.Number && !scalar.IsNumber))
        {
            Refuse(key, $"{Named(key)} is {Describe(value)}, not a {quantity.Noun}", allowed, $"write it as {quantity.Forms}");
            return fallback;
        }
        // Without a declared unit that one mistake is told; a bare length cannot be judged.
        if (quantity.Noun == "length" && _file.Unit is null && (scalar.IsNumber || char.IsAsciiDigit(scalar.Text.Trim().LastOrDefault()))) return fallback;
        if (!quantity.TryRead(scalar.Text, out var written, out var remedy))
        {
            Refuse(key, $"{Named(key)} is {scalar.Written}, not a {quantity.Noun} this file can hold", allowed, remedy);
            return fallback;
        }
        if (written >= least && written <= most) return quantity.ToInside(written);
        Refuse(key, $"{Named(key)} is {scalar.Written}", allowed, $"give a {quantity.Noun} within {allowed}");
        return fallback;
    }

    bool TryCount(string key, TomlValue value, int least, int most, out int count)
    {
        count = least;
        if (value is not TomlScalar { Kind: TomlScalar.Integer } scalar)
            Refuse(value.Place, $"{Named(key)} is {Describe(value)}", $"a whole number, {least} to {most}", "write a whole number without quotes");
        else if (!int.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out count) || count < least || count > most)
            Refuse(value.Place, $"{Named(key)} is {scalar.Written}", $"{least} to {most}", $"give a whole number from {least} to {most}");
        else return true;
        return false;
    }
}
