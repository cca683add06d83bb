using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>
    /// The house has a part beside its main part: with its own year, storeys, foundation, roof and sides. The main part is named by the
    /// opening entry and needs no entry of its own. What is known of a part is stated as facts of it (<c>year</c>, <c>foundation</c>,
    /// <c>roof form</c>).
    /// </summary>
    public sealed record PartAdded : EntryBody
    {
        /// <summary>See <see cref="PartKind"/>.</summary>
        public required string Kind { get; init; }

        /// <summary>What people call it.</summary>
        public required string Name { get; init; }

        /// <summary>The part it joins; the main part when not said.</summary>
        public EntryName? Joins { get; init; }

        /// <summary>On which side of that, see <see cref="PartSide"/>.</summary>
        public string? Side { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PartAdded>("part.added", Gathered.Parts, Gathered.Places,
            Gathered.StrayFacts);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => $"The part of the house “{Name}”";

        /// <inheritdoc/>
        public override string Told(Called called) => $"Part of the house: {Name}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Joins = Maybe(Joins, map) };

        internal override void Check(BodyCheck check) => check.NoneOrOneOf("side", Side, PartSide.All);
    }

    /// <summary>The levels of a part of the house, all of them together.</summary>
    public sealed record PartLeveled : Stating
    {
        private const int Most = 12;

        /// <summary>Which part; the opening entry for the main part.</summary>
        public required EntryName Part { get; init; }

        /// <summary>From the lowest up.</summary>
        public required IReadOnlyList<Level> Levels { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PartLeveled>("part.leveled", Gathered.Parts);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Part, "");

        internal override string Question => "the levels of a part of the house";

        internal override string Said => "The levels of a part of the house";

        /// <inheritdoc/>
        public override string Told(Called called) =>
            $"Levels: {string.Join(", ", Levels.Select(level => level.Name ?? $"{level.Form} at {level.At:0.#}"))}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Part = map(Part) };

        internal override void Check(BodyCheck check)
        {
            check.Must(Levels.Count is >= 1 and <= Most, "levels", new Said("journal.given.count-levels", ("count", Levels.Count)),
                new Said("journal.wanted.1-most", ("most", Most)));
            foreach (var level in Levels.Take(Most)) level.Check(check);
            for (var at = 1; at < Math.Min(Levels.Count, Most); at++)
                check.Must(Levels[at].At > Levels[at - 1].At, "levels",
                    new Said("journal.given.after-at2", ("at", $"{Levels[at].At:0.#}"), ("at2", $"{Levels[at - 1].At:0.#}")),
                    "journal.wanted.each-higher-than-one-before");
        }
    }

    /// <summary>What one side of a part of the house is clad with; a side may bear several claddings.</summary>
    public sealed record PartClad : Stating
    {
        private const int Most = 6;

        /// <summary>Which part; the opening entry for the main part.</summary>
        public required EntryName Part { get; init; }

        /// <summary>Which side, see <see cref="PartSide.Walls"/>.</summary>
        public required string Side { get; init; }

        /// <summary>Each cladding that is there.</summary>
        public required IReadOnlyList<Cladding> Claddings { get; init; }

        /// <summary>See <see cref="Journal.Basis"/>.</summary>
        public required string Basis { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.Of<PartClad>("part.clad", Gathered.Parts);

        internal override EntryKind OfKind => ItsKind;

        internal override SlotKey Slot => new(Type, Part, Side);

        internal override string Question => $"what the {Side} is clad with";

        internal override string Said => $"The cladding of the {Side}";

        /// <inheritdoc/>
        public override string Told(Called called) =>
            $"Cladding, {Side}: {string.Join(", ", Claddings.Select(cladding => cladding.Material))}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Part = map(Part) };

        internal override void Check(BodyCheck check)
        {
            check.OneOf("side", Side, PartSide.Walls);
            check.OneOf("basis", Basis, Journal.Basis.All);
            check.Must(Claddings.Count is >= 1 and <= Most, "claddings",
                new Said("journal.given.count-claddings", ("count", Claddings.Count)), new Said("journal.wanted.1-most", ("most", Most)));
            foreach (var cladding in Claddings.Take(Most)) check.AtMost("cladding", cladding.Material + cladding.Where, 200);
        }
    }
}

/// <summary>One level of a part of the house.</summary>
/// <param name="At">Height of its floor in storeys above the ground floor of the main part, in halves: -0.5 for the lower level of a split
/// level, 1 for the floor above.</param>
/// <param name="Form">See <see cref="LevelForm"/>.</param>
/// <param name="Name">What people call it.</param>
public sealed record Level(double At, string Form, string? Name = null)
{
    internal void Check(BodyCheck check)
    {
        check.Must(At is >= -4 and <= 12
            && At * 2 == Math.Floor(At * 2), "level", Journal.Said.Verbatim($"{At:0.##}"), "journal.wanted.halves-storey-from-4-12");
        check.OneOf("form", Form, LevelForm.All);
        check.AtMost("name", Name, 200);
    }
}

/// <summary>A cladding on a side.</summary>
/// <param name="Material">What it is: <c>brick veneer</c>, <c>vinyl siding</c>.</param>
/// <param name="Where">Where on the side, when it is not all of it: <c>gable</c>, <c>up to the sills</c>.</param>
public sealed record Cladding(string Material, string? Where = null);

/// <summary>The kinds of part that the drawing of the house knows.</summary>
public static class PartKind
{
    /// <summary>The main part, named by the opening entry.</summary>
    public const string Main = "main house";

    /// <summary>A part built with the house, to one side.</summary>
    public const string Wing = "wing";

    /// <summary>A part built later.</summary>
    public const string Addition = "addition";

    /// <summary>A level partly in the ground, beside or under another.</summary>
    public const string LowerLevel = "lower level";

    /// <summary>A garage that shares a wall with the house.</summary>
    public const string AttachedGarage = "attached garage";

    /// <summary>Another dwelling under the same roof.</summary>
    public const string SecondUnit = "second unit";

    /// <summary>A porch that was closed in.</summary>
    public const string EnclosedPorch = "enclosed porch";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Main, Wing, Addition, LowerLevel, AttachedGarage, SecondUnit, EnclosedPorch];
}

/// <summary>Sides of a part of the house, as one stands before the front door.</summary>
public static class PartSide
{
    /// <summary>The four sides that have walls.</summary>
    public static IReadOnlyList<string> Walls { get; } = ["front", "left", "rear", "right"];

    /// <summary>Where one part can be beside another.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Walls, "above", "below", "apart"];
}

/// <summary>How a level is built.</summary>
public static class LevelForm
{
    /// <summary>A full storey.</summary>
    public const string Full = "full";

    /// <summary>A half storey, under the slope of the roof.</summary>
    public const string Half = "half";

    /// <summary>Partly in the ground.</summary>
    public const string Lower = "lower";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Full, Half, Lower];
}
