using System.Collections.Frozen;
using System.Globalization;

namespace Purlin.Reckoning.Quantities;

/// <summary>
/// The units that text may carry (<c>"22 °C"</c>, <c>"1.9 m"</c>) and their exact definitions in terms of one unit a dimension.
/// Defining constants: NIST SP 811 (2008), appendix B.8: inch 25.4 mm, pound 0.45359237 kg, Btu(IT) 1055.05585262 J, gallon 231 in³.
/// </summary>
public static class Units
{
    private sealed record Unit(string Dimension, double Scale, double Offset = 0);

    private static readonly FrozenDictionary<string, Unit> Known = new Dictionary<string, Unit>(StringComparer.Ordinal)
    {
        [""] = new("ratio", 1),
        ["%"] = new("ratio percent", 1),
        // Temperature in kelvin, by NIST SP 811 B.8: t/°C = (t/°F - 32)/1.8.
        ["K"] = new("temperature", 1),
        ["°C"] = new("temperature", 1, 273.15),
        ["C"] = new("temperature", 1, 273.15),
        ["°F"] = new("temperature", 1 / 1.8, 459.67 / 1.8),
        ["F"] = new("temperature", 1 / 1.8, 459.67 / 1.8),
        // A difference has no zero point, so it is a dimension of its own.
        ["Δ°F"] = new("temperature difference", 1 / 1.8),
        ["Δ°C"] = new("temperature difference", 1),
        ["ΔK"] = new("temperature difference", 1),
        ["mm"] = new("length", 0.001),
        ["cm"] = new("length", 0.01),
        ["m"] = new("length", 1),
        ["in"] = new("length", 0.0254),
        ["ft"] = new("length", 0.3048),
        ["in²"] = new("area", 0.0254 * 0.0254),
        ["ft²"] = new("area", 0.3048 * 0.3048),
        ["m²"] = new("area", 1),
        ["acre"] = new("area", 43_560 * 0.3048 * 0.3048),
        ["cm²"] = new("area", 1e-4),
        ["mm²"] = new("area", 1e-6),
        ["ft³"] = new("volume", 0.3048 * 0.3048 * 0.3048),
        ["m³"] = new("volume", 1),
        ["L"] = new("volume", 0.001),
        ["gal"] = new("volume", 231 * 0.0254 * 0.0254 * 0.0254),
        ["psi"] = new("pressure", 0.45359237 * 9.80665 / (0.0254 * 0.0254)),
        ["Pa"] = new("pressure", 1),
        ["kPa"] = new("pressure", 1000),
        ["bar"] = new("pressure", 1e5),
        ["inHg"] = new("pressure", 3386.389),
        ["inH2O"] = new("pressure", 249.08891),
        ["cfm"] = new("flow", 0.3048 * 0.3048 * 0.3048 / 60),
        ["m³/h"] = new("flow", 1.0 / 3600),
        ["L/s"] = new("flow", 0.001),
        ["L/min"] = new("flow", 0.001 / 60),
        ["gpm"] = new("flow", 231 * 0.0254 * 0.0254 * 0.0254 / 60),
        ["ft³/s"] = new("flow", 0.3048 * 0.3048 * 0.3048),
        ["ft³/h"] = new("flow", 0.3048 * 0.3048 * 0.3048 / 3600),
        ["W"] = new("power", 1),
        ["kW"] = new("power", 1000),
        ["Btu/h"] = new("power", 1055.05585262 / 3600),
        ["tons"] = new("power", 12_000 * 1055.05585262 / 3600),
        ["ton"] = new("power", 12_000 * 1055.05585262 / 3600),
        ["VA"] = new("apparent power", 1),
        ["kVA"] = new("apparent power", 1000),
        ["A"] = new("current", 1),
        ["V"] = new("voltage", 1),
        ["Ω"] = new("resistance", 1),
        ["in/h"] = new("rain", 0.0254),
        ["mm/h"] = new("rain", 0.001),
        ["in/ft"] = new("slope", 1.0 / 12),
        ["mm/m"] = new("slope", 0.001),
        ["lb/ft²"] = new("load", 0.45359237 * 9.80665 / (0.3048 * 0.3048)),
        ["psf"] = new("load", 0.45359237 * 9.80665 / (0.3048 * 0.3048)),
        ["s"] = new("time", 1),
        ["min"] = new("time", 60),
        ["h"] = new("time", 3600),
        ["years"] = new("years", 1),
        ["$"] = new("money", 1),
        ["lb"] = new("mass", 0.45359237),
        ["oz"] = new("mass", 0.45359237 / 16),
        ["kg"] = new("mass", 1),
        ["g"] = new("mass", 0.001),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> Spelled = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["ft2"] = "ft²",
        ["sq ft"] = "ft²",
        ["sqft"] = "ft²",
        ["in2"] = "in²",
        ["m2"] = "m²",
        ["cm2"] = "cm²",
        ["mm2"] = "mm²",
        ["ft3"] = "ft³",
        ["m3"] = "m³",
        ["degF"] = "°F",
        ["degC"] = "°C",
        ["deg F"] = "°F",
        ["deg C"] = "°C",
        ["l"] = "L",
        ["l/s"] = "L/s",
        ["l/min"] = "L/min",
        ["btu/h"] = "Btu/h",
        ["BTU/h"] = "Btu/h",
        ["Btuh"] = "Btu/h",
        ["m3/h"] = "m³/h",
        ["ft3/s"] = "ft³/s",
        ["cfs"] = "ft³/s",
        ["cfh"] = "ft³/h",
        ["ft3/h"] = "ft³/h",
        ["in H2O"] = "inH2O",
        ["in. w.c."] = "inH2O",
        ["iwc"] = "inH2O",
        ["inch"] = "in",
        ["inches"] = "in",
        ["feet"] = "ft",
        ["foot"] = "ft",
        ["amps"] = "A",
        ["volts"] = "V",
        ["watts"] = "W",
        ["gallons"] = "gal",
        ["percent"] = "%",
        ["year"] = "years",
        ["ohm"] = "Ω",
        ["\""] = "in",
        ["'"] = "ft",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether the two units measure the same kind of thing.</summary>
    public static bool Compatible(string unit, string other) =>
        Known.TryGetValue(Plain(unit), out var a) && Known.TryGetValue(Plain(other), out var b) && a.Dimension == b.Dimension;

    /// <summary>Converts a number between units of one dimension; false when they are not.</summary>
    public static bool TryConvert(double value, string from, string to, out double converted)
    {
        converted = double.NaN;
        if (!double.IsFinite(value)) return false;
        var (source, target) = (Plain(from), Plain(to));
        if (source == target && Known.ContainsKey(source)) { converted = value; return true; }
        if (!Known.TryGetValue(source, out var a) || !Known.TryGetValue(target, out var b)) return false;
        if (a.Dimension != b.Dimension && !OneOfLoads(source, target)) return false;
        converted = (value * a.Scale + a.Offset - b.Offset) / b.Scale;
        return double.IsFinite(converted);
    }

    /// <summary>Reads <c>"22 °C"</c> as a number in the wanted unit; bare digits are taken to be in it. False when it is neither.</summary>
    public static bool TryRead(string text, string wanted, out double value)
    {
        value = double.NaN;
        if (text is null || text.Length > 40) return false;
        var trimmed = text.Trim();
        var end = 0;
        while (end < trimmed.Length
            && (char.IsAsciiDigit(trimmed[end]) || trimmed[end] is '.' or '-' or '+'
            || (trimmed[end] is 'e' or 'E' && end + 1 < trimmed.Length
            && (char.IsAsciiDigit(trimmed[end + 1]) || trimmed[end + 1] is '-' or '+')))) end++;
        if (!double.TryParse(trimmed.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            || !double.IsFinite(number)) return false;
        var unit = trimmed[end..].Trim();
        // A difference is written "20 °F" by people; the wanted dimension decides what it means.
        if (wanted.StartsWith('Δ') && unit.Length > 0 && !unit.StartsWith('Δ')) unit = "Δ" + Plain(unit);
        if (unit.Length == 0) { value = number; return true; }
        return TryConvert(number, unit, wanted, out value);
    }

    // NEC 220.54 and 220.55: kVA counts as kW in a load calculation. Heat rates (Btu/h, tons) are no electrical load.
    private static bool OneOfLoads(string a, string b) =>
        (a is "W" or "kW" && b is "VA" or "kVA") || (a is "VA" or "kVA" && b is "W" or "kW");

    private static string Plain(string unit) => Spelled.TryGetValue(unit, out var plain) ? plain : unit;
}
