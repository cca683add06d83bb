namespace Purlin.Office.Storage;

/// <summary>Whose data: a value of every request and a part of every row's key. Nothing of one tenant is ever seen by another.</summary>
/// <param name="Id">Lower-case letters and digits; it names a folder too.</param>
public readonly record struct Tenant(string Id)
{
    /// <summary>The tenant of an office that one person runs for themselves.</summary>
    public static Tenant Own => new("own");

    /// <inheritdoc/>
    public override string ToString() => Id;
}
