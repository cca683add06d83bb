using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>How a conductor and its surroundings are given.</summary>
internal static class ConductorInputs
{
    // Editions whose ampacity table this program knows; the older table is that of the last editions before 2011.
    private const int OldestEdition = 1987;

    internal static Input Size { get; } = new Input.Choice("size", "conductor-inputs.input.size",
        ConductorSize.InAmpacityTable)
    { Required = true, Plain = ConductorSize.Plain };

    internal static Input Material { get; } = new Input.Choice("material", "conductor-inputs.input.material",
        ["copper", "aluminum"])
    { Required = true, Plain = ConductorSize.Metal };

    internal static ImmutableArray<Input> Surroundings { get; } =
    [
        new Input.Quantity("insulation", "conductor-inputs.input.insulation", "°C", 60, 90) { Required = true },
        new Input.Quantity("termination", "conductor-inputs.input.termination", "°C", 60, 90),
        new Input.Quantity("ambient", "conductor-inputs.input.ambient", "°F", -40, 185),
        new Input.Whole("current_carrying", "conductor-inputs.input.current-carrying", 1, 1000),
        new Input.Whole("edition", "conductor-inputs.input.edition", OldestEdition, 2026),
    ];

    /// <summary>A rating that is one of the three columns; refused by name otherwise.</summary>
    internal static Refusal? NotAColumn(Given given, string name) =>
        given.NumberOrNone(name) is { } celsius
        && !(Math.Abs(celsius - 60) < 0.01 || Math.Abs(celsius - 75) < 0.01 || Math.Abs(celsius - 90) < 0.01)
            ? new Refusal(name, new("refused.given.hundredth", ("given", celsius, "°C")), "conductor-inputs.allowed.or-c")
            : null;

    /// <summary>A metal and size that the table has.</summary>
    internal static Refusal? NotInTable(Given given) => Ampacity.Row(given.Text("material"), given.Text("size")) is null
        ? new Refusal("size", new("conductor-inputs.given.value", ("size", ConductorSize.Words(given.Text("size"))),
        ("material", given.Text("material"))), "conductor-inputs.allowed.size-table-metal-aluminum")
        : null;
}
