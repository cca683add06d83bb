using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>How a conductor and its surroundings are given.</summary>
internal static class ConductorInputs
{
    // Editions whose ampacity table this program knows; the older table is that of the last editions before 2011.
    private const int OldestEdition = 1987;

    internal static Input Size { get; } = new Input.Choice("size", "Conductor size, AWG or kcmil", ConductorSize.InAmpacityTable) { Required = true, Plain = ConductorSize.Plain };

    internal static Input Material { get; } = new Input.Choice("material", "Conductor metal; copper-clad aluminum counts as aluminum", ["copper", "aluminum"]) { Required = true, Plain = ConductorSize.Metal };

    internal static ImmutableArray<Input> Surroundings { get; } =
    [
        new Input.Quantity("insulation", "Temperature rating of the insulation: 60, 75 or 90 °C", "°C", 60, 90) { Required = true },
        new Input.Quantity("termination", "Temperature rating of the terminals: 60, 75 or 90 °C", "°C", 60, 90),
        new Input.Quantity("ambient", "Temperature around the conductor", "°F", -40, 185),
        new Input.Whole("current_carrying", "Current-carrying conductors in the same raceway or cable", 1, 1000),
        new Input.Whole("edition", "Edition of the NEC whose table applies", OldestEdition, 2026),
    ];

    /// <summary>A rating that is one of the three columns; refused by name otherwise.</summary>
    internal static Refusal? NotAColumn(Given given, string name) =>
        given.NumberOrNone(name) is { } celsius && !(Math.Abs(celsius - 60) < 0.01 || Math.Abs(celsius - 75) < 0.01 || Math.Abs(celsius - 90) < 0.01)
            ? new Refusal(name, $"{celsius:0.##} °C", "60, 75 or 90 °C")
            : null;

    /// <summary>A metal and size that the table has.</summary>
    internal static Refusal? NotInTable(Given given) => Ampacity.Row(given.Text("material"), given.Text("size")) is null
        ? new Refusal("size", $"{ConductorSize.Words(given.Text("size"))} {given.Text("material")}", "a size the table has for that metal; aluminum begins at 12 AWG")
        : null;
}
