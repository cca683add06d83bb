using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Purlin.Book.Takings;

/// <summary>
/// Where one input of a reckoning comes from. Each case says by itself what it gives, what it lacks when it gives nothing, and what
/// evidence it can take, so that the reckoning, the question to the inspector and the checks of the book rest on one definition. In the
/// book the member <c>take</c> names the case.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "take")]
[JsonDerivedType(typeof(Fact), "fact")]
[JsonDerivedType(typeof(Reading), "reading")]
[JsonDerivedType(typeof(Readings), "readings")]
[JsonDerivedType(typeof(Property), "property")]
[JsonDerivedType(typeof(StandardSetting), "setting")]
[JsonDerivedType(typeof(Now), "now")]
[JsonDerivedType(typeof(Kind), "kind")]
[JsonDerivedType(typeof(FixedWords), "text")]
[JsonDerivedType(typeof(FixedNumber), "number")]
[JsonDerivedType(typeof(Count), "count")]
[JsonDerivedType(typeof(First), "first")]
[JsonDerivedType(typeof(Presumed), "presumed")]
[JsonDerivedType(typeof(Mapped), "mapped")]
[JsonDerivedType(typeof(Banded), "banded")]
[JsonDerivedType(typeof(Group), "group")]
[JsonDerivedType(typeof(List), "list")]
[JsonDerivedType(typeof(Each), "each")]
[JsonDerivedType(typeof(Worked), "worked")]
[JsonDerivedType(typeof(SurveyPoints), "survey points")]
[JsonDerivedType(typeof(LevelsFromWall), "levels from the wall")]
[JsonDerivedType(typeof(RoomVolume), "room volume")]
[JsonDerivedType(typeof(PlateText), "plate text")]
[JsonDerivedType(typeof(GasBurners), "gas burners")]
[JsonDerivedType(typeof(LongestGasRun), "longest gas run")]
[JsonDerivedType(typeof(StoredHotWater), "stored hot water")]
public abstract partial record Taking
{
    private Taking() { }

    /// <summary>True when the reckoning does without.</summary>
    public bool Optional { get; init; }

    /// <summary>The reckoning does without unless this other input is given.</summary>
    public string? With { get; init; }

    /// <summary>What it gives, as the reckoning reads it; none when that is not on record. Nothing is guessed.</summary>
    /// <param name="ground">The evidence.</param>
    /// <param name="group">What the working is made for.</param>
    /// <param name="fed">Takes the entries that it came from.</param>
    public abstract JsonNode? Value(Ground ground, FeedGroup group, FedInputs fed);

    /// <summary>What keeps it from giving something; asked only where it gives nothing or a known part is missing.</summary>
    public virtual IEnumerable<Lack> Lacks(Ground ground, FeedGroup group) => [Lack.Nothing];

    /// <summary>Kinds of reading that it can take, however deep they stand.</summary>
    [JsonIgnore]
    public virtual IEnumerable<string> ReadingKinds => [];

    /// <summary>Facts that it can take, as kind of component and name.</summary>
    /// <param name="components">Kinds of component that the group's own one can be of.</param>
    public virtual IEnumerable<(string Component, string Name)> FactsOf(IReadOnlyList<string> components) => [];

    /// <summary>Names of the maps that put its words into those of the reckoning.</summary>
    [JsonIgnore]
    public virtual IEnumerable<string> WordMaps => [];

    /// <summary>How a reading of this kind must say where it was taken, for this to take it.</summary>
    public virtual Pointing PointingOf(string readingKind) => Pointing.None;

    /// <summary>
    /// Whether something stands on record here, understood or not. What nobody understands is not presumed to be the usual: an iron wire is
    /// no copper wire.
    /// </summary>
    internal virtual bool IsOnRecord(Ground ground, FeedGroup group) => false;

    /// <summary>Whether it was begun: most of its parts are on record, and one is known to be missing.</summary>
    private bool LacksKnownPart(Ground ground, FeedGroup group)
    {
        var scratch = new FedInputs(group.Component?.Id);
        Value(ground, group, scratch);
        return scratch.LacksKnownPart;
    }
}
