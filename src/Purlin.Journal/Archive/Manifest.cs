using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Journal.Archive;

/// <summary>What an archive holds, with the hash of everything in it. Its schema is <c>docs/schema/manifest.schema.json</c>.</summary>
public sealed record Manifest
{
    /// <summary>The word every manifest of ours begins with.</summary>
    public const string FormatName = "purlin-archive";

    /// <summary>Always <see cref="FormatName"/>.</summary>
    public required string Format { get; init; }

    /// <summary>Version of the archive format: 1.</summary>
    public required int Version { get; init; }

    /// <summary>The inspection.</summary>
    public required string Inspection { get; init; }

    /// <summary>Highest sequence of each device up to which nothing is missing.</summary>
    public required IReadOnlyDictionary<string, int> Heads { get; init; }

    /// <summary>Number of readable lines.</summary>
    public required int Entries { get; init; }

    /// <summary>Lines kept that the writing program could not read.</summary>
    public required int Held { get; init; }

    /// <summary>SHA-256 of <c>journal.jsonl</c>.</summary>
    public required string Journal { get; init; }

    /// <summary>
    /// Merkle root over the hashes of all its lines, held ones too: a program that can read fewer or more of them still checks it.
    /// </summary>
    public required string LinesRoot { get; init; }

    /// <summary>Every other file, by name.</summary>
    public required IReadOnlyList<ArchivedFile> Files { get; init; }

    /// <summary>Hashes of photographs and sounds that the lines name and that are not in the archive.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}

/// <summary>A file of an archive.</summary>
/// <param name="Name">As <see cref="ArchiveNames"/> allows.</param>
/// <param name="Sha256">Hash of its bytes.</param>
/// <param name="Size">Bytes.</param>
/// <param name="MediaType">Its kind.</param>
public sealed record ArchivedFile(string Name, string Sha256, long Size, string MediaType);

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    WriteIndented = true,
    NewLine = "\n",
    MaxDepth = Limits.JsonDepth)]
[JsonSerializable(typeof(Manifest))]
internal sealed partial class ManifestContext : JsonSerializerContext;
