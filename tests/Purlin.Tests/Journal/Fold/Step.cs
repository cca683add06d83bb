namespace Purlin.Tests.Journal.Fold;

/// <summary>One thing that happens in a history: who, what, and two numbers that choose among what there is.</summary>
internal sealed record Step(int Device, int Kind, int First, int Second);
