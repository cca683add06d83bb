namespace Purlin.Journal;

/// <summary>
/// Something of a line that was not taken as it was written: taken otherwise, or left out. The bytes of the line keep it; a person is told.
/// </summary>
/// <param name="Member">Where it stands in the body: <c>property.yearBuilt</c>; <c>type</c> for the kind of the entry itself.</param>
/// <param name="Given">What stands there, shortened to 80 characters.</param>
/// <param name="Taken">What it was taken as; none for what was left out.</param>
/// <param name="Nearest">What is most likely meant, the nearest first; empty when nothing is near.</param>
public sealed record Misread(string Member, string Given, string? Taken, IReadOnlyList<string> Nearest);
