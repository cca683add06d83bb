using Purlin.Hearing.Matters;
using Purlin.Journal;

namespace Purlin.Hearing.Figures;

/// <summary>
/// What a figure measures, told by its unit, by the thing and condition it stands with, and by the words before it. What nothing tells
/// is no amount.
/// </summary>
internal sealed class Attribution(Book.RuleBook book)
{
    private const int Near = 9;

    // "Made in ninety six": the last two figures of a year.
    private const string Century = "year of the century";

    /// <summary>The reading or fact that a figure gives; none where nothing tells.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="texts">All words.</param>
    /// <param name="component">Kind of component that is spoken of.</param>
    /// <param name="condition">Id of the condition; none for a bare figure.</param>
    /// <param name="place">Kind of place.</param>
    public HeardAmount? Of(Figure figure, List<string> texts, string component, string? condition, string? place)
    {
        bool Says(params string[] words) => Said(texts, figure, words);
        var kind = figure.Unit switch
        {
            SpokenUnits.Inch or SpokenUnits.Foot => Length(Says, component, condition ?? "", place),
            SpokenUnits.Percent => Percent(Says, component, condition ?? "", place),
            SpokenUnits.Degree => Warmth(Says, Air(texts, figure), IsWet(texts, figure), component, place),
            SpokenUnits.Psi => component == "boiler" ? Kinds.BoilerPressure : Kinds.WaterPressure,
            SpokenUnits.Amp => Current(Says, component),
            SpokenUnits.Gallon when component is Kinds.WaterHeater or Kinds.ExpansionTank => "capacity",
            SpokenUnits.Ton when component is Kinds.OutdoorUnit or Kinds.HeatPump or Kinds.IndoorCoil => "capacity",
            SpokenUnits.Btu => "input",
            SpokenUnits.Ppm => Kinds.CarbonMonoxide,
            SpokenUnits.Gpm => Kinds.Flow,
            SpokenUnits.Volt => "voltage",
            SpokenUnits.Pascal when component == "vent" => "draft",
            null => Bare(Says, texts, Air(texts, figure), IsWet(texts, figure), figure, component, condition ?? "", place),
            _ => null,
        };
        if (kind == Century) return Measured(figure with { Value = 1900 + figure.Value }, "year", component);
        return kind is null ? null : Measured(figure, kind, component);
    }

    private static string? Length(Func<string[], bool> says, string component, string condition, string? place)
    {
        bool Says(params string[] words) => says(words);
        if (Says("headroom") || condition.EndsWith("-space.low", StringComparison.Ordinal)
            || condition.EndsWith(".headroom-low", StringComparison.Ordinal)) return place == PlaceKind.CrawlSpace ? Kinds.CrawlHeadroom
            : place == PlaceKind.Attic ? Kinds.AtticHeadroom : "headroom";
        if (Says("riser", "risers", "step", "steps") && component == "stairs") return Kinds.Riser;
        if (Says("tread", "treads") && component == "stairs") return Kinds.Tread;
        if (Says("span", "spans")) return place == PlaceKind.Attic ? Kinds.RafterSpan : component == "deck" ? Kinds.BeamSpan
            : Kinds.JoistSpan;
        if (condition.Length == 0 && !Says("depth", "level", "base", "minus", component)) return null;
        if (component == "insulation") return Kinds.Depth;
        if (condition.Contains("crack", StringComparison.Ordinal)
            && component is "foundation" or "siding" or "wall" or "slab") return Kinds.CrackWidth;
        bool Is(string fault) => condition.EndsWith(fault, StringComparison.Ordinal);
        return component switch
        {
            "guard" => Is(".openings-wide") ? Kinds.GuardOpening : Is(".missing") ? Kinds.GuardDrop : Kinds.GuardHeight,
            "handrail" when Is(".height-wrong") => Kinds.HandrailHeight,
            Kinds.OutdoorUnit when Is(".not-level") || (condition.Length == 0 && Says("base", "level")) => Kinds.UnitFall,
            "foundation" when Is(".wall-leaning") => Kinds.OutOfPlumb,
            "floor" when condition.Length == 0 && Says("level", "minus") => Kinds.FloorLevel,
            "window" when Is(".escape-too-small") && Says("sill", "floor") => Kinds.SillHeight,
            _ => null,
        };
    }

    private static string? Percent(Func<string[], bool> says, string component, string condition, string? place)
    {
        bool Says(params string[] words) => says(words);
        if (Says("humidity", "humid", "hygrometer", "relative") || condition.EndsWith(".humid", StringComparison.Ordinal)
            || condition.EndsWith(".humid-air", StringComparison.Ordinal)) return Kinds.Humidity;
        if (component is "framing" or Kinds.RoofFraming or Kinds.RoofDeck or "deck" or "beam"
            || Says("joist", "sill", "wood", "sheathing", "rafter", "post")) return Kinds.WoodMoisture;
        if (place is PlaceKind.CrawlSpace or PlaceKind.Attic) return Kinds.WoodMoisture;
        return Says("meter", "reads", "reading", "pinless", "scan", "wet", "moisture")
            || component is "ceiling" or "wall" or "moisture" or Kinds.Shower or "floor" ? Kinds.SurfaceMoisture : null;
    }

    private static string? Warmth(Func<string[], bool> says, string? air, bool isWet, string component, string? place)
    {
        bool Says(params string[] words) => says(words);
        if (Says("shower") && place == PlaceKind.Bathroom) return Kinds.ShowerTemperature;
        if (Says("hot", "tap", "faucet", "tub") || component is Kinds.WaterHeater) return Kinds.HotWater;
        var heating = component is "furnace" or Kinds.HeatPump || Says("heating", "heat") ? Kinds.Heating : "";
        if (air is { } side) return isWet ? side + Kinds.WetBulb : heating + side + Kinds.DryBulb;
        if (Says("fridge", "refrigerator", "freezer")) return Kinds.FridgeTemperature;
        return place == PlaceKind.Attic ? Kinds.AtticAir : null;
    }

    private static string? Current(Func<string[], bool> says, string component)
    {
        if (component is "service" or "panelboard") return "rating";
        if (component is not (Kinds.OutdoorUnit or Kinds.HeatPump)) return null;
        if (says(["minimum", "ampacity"])) return Kinds.LeastAmpacity;
        return says(["maximum", "max", "plate", "fuse"]) ? Kinds.LargestDevice : says(["breaker"]) ? "breaker" : null;
    }

    private static string? Bare(Func<string[], bool> says, List<string> texts, string? air, bool isWet, Figure figure, string component,
        string condition, string? place)
    {
        bool Says(params string[] words) => says(words);
        if (figure.Value is >= 50 and < 100 && figure.Value % 1 == 0 && Follows(texts, figure, "made", "from", "dated", "built")
            && !figure.MayBeYear) return Century;
        if (figure.MayBeYear && Says("made", "from", "date", "dates", "code", "dated", "year", "built", "manufactured", "manufacture",
            "sticker", "unit", "back")) return "year";
        if (Says("p", "ppm", "monoxide") && figure.Value < 2000) return Kinds.CarbonMonoxide;
        if (figure.Value is > 20 and <= 100 && Says("meter", "pinless", "humidity")) return Percent(says, component, condition, place);
        if (component is Kinds.OutdoorUnit or Kinds.HeatPump && figure.Value is >= 10 and <= 100
            && Says("ampacity", "max", "maximum", "breaker")) return Current(says, component);
        if (figure.Value is >= 30 and <= 160 && (air is not null || Says("thermometer", "temperature", "hot"))) return Warmth(says, air,
            isWet, component, place);
        if (component == Kinds.SupplyPiping && figure.Value is >= 15 and <= 180 && Says("pressure", "static")) return Kinds.WaterPressure;
        if (component == "guard" && condition.Length > 0) return condition.EndsWith(".openings-wide", StringComparison.Ordinal)
            && figure.Value < 12 ? Kinds.GuardOpening : figure.Value is >= 20 and <= 60 ? Kinds.GuardHeight : null;
        if (condition.Contains("crack", StringComparison.Ordinal) && figure.Value < 1
            && component is "foundation" or "siding" or "wall") return Kinds.CrackWidth;
        return null;
    }

    /// <summary>"return 74", "58 out": which side of the machine the air was measured on.</summary>
    private static string? Air(List<string> texts, Figure figure)
    {
        for (var at = figure.End; at < Math.Min(texts.Count, figure.End + 2); at++)
            if (texts[at] is "in" or "out") return texts[at] == "in" ? "return" : "supply";
        for (var at = figure.Start - 1; at >= Math.Max(0, figure.Start - 6); at--)
            if (texts[at] is "return" or "supply") return texts[at];
        return null;
    }

    private static bool Follows(List<string> texts, Figure figure, params string[] words) =>
        (figure.Start > 0 && Array.IndexOf(words, texts[figure.Start - 1]) >= 0)
            || (figure.Start > 1 && texts[figure.Start - 1] == "in" && Array.IndexOf(words, texts[figure.Start - 2]) >= 0);

    private static bool IsWet(List<string> texts, Figure figure) =>
        Enumerable.Range(Math.Max(0, figure.Start - 4), Math.Min(4, figure.Start)).Any(at => texts[at] == "wet");

    private static bool Said(List<string> texts, Figure figure, string[] words)
    {
        for (var at = Math.Max(0, figure.Start - Near); at < Math.Min(texts.Count, figure.End + 3); at++)
            if ((at < figure.Start || at >= figure.End) && Array.IndexOf(words, texts[at]) >= 0) return true;
        return false;
    }

    /// <summary>The figure in the unit of the book; none where no such reading can be that much.</summary>
    private HeardAmount? Measured(Figure figure, string kind, string component)
    {
        if (book.ReadingKinds.TryGetValue(kind, out var reading))
        {
            var value = figure.Unit == SpokenUnits.Foot && reading.Unit == "in" ? figure.Value * 12 : figure.Unit == SpokenUnits.Inch
                && reading.Unit == "ft" ? figure.Value / 12 : figure.Value;
            return value >= reading.Least && value <= reading.Most ? new HeardAmount(kind, value, reading.Unit) : null;
        }
        var fact = book.Sheets.GetValueOrDefault(component)?.Facts.FirstOrDefault(one => one.Fact == kind);
        return fact is null ? null : new HeardAmount(kind, figure.Value, fact.Unit);
    }
}
