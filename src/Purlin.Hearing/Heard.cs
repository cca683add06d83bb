using System.Collections.Immutable;

namespace Purlin.Hearing;

/// <summary>What was understood of a narration.</summary>
/// <param name="Proposals">In the order of their first words.</param>
/// <param name="Ignored">How many words rest in no proposal.</param>
public sealed record Heard(ImmutableArray<HeardProposal> Proposals, int Ignored);
