namespace Purlin.Book;

/// <summary>Who deals with a matter.</summary>
public static class Trades
{
    /// <summary>All of them, as the rule book writes them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "licensed electrician", "licensed plumber", "heating and cooling contractor", "roofing contractor", "structural engineer",
        "geotechnical engineer",
        "general contractor", "carpenter", "mason", "chimney specialist", "pest control firm", "landscape contractor",
            "insulation contractor",
        "window contractor", "garage door specialist", "fire protection specialist", "septic contractor", "well contractor",
            "pool contractor",
        "environmental testing firm", "appliance technician", "gas utility", "electric utility", "water utility", "painter",
            "paving contractor",
        "stucco contractor", "foundation contractor", "solar contractor", "low-voltage contractor", "elevator contractor",
        "handy person", "the owner",
    ];
}
