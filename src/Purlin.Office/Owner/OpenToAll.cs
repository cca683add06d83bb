namespace Purlin.Office.Owner;

/// <summary>Marks the few endpoints under the office's prefixes that need no session. Everything not marked needs one.</summary>
internal sealed class OpenToAll
{
    public static readonly OpenToAll Yes = new();

    private OpenToAll() { }
}
