namespace Purlin.Field.Visits;

/// <summary>Names drawn by lot, so that two phones that write apart never mean one thing by them.</summary>
public static class Minted
{
    /// <summary>The part of a new note.</summary>
    public static string Part() => $"n{Guid.NewGuid().ToString("N")[..16]}";
}
