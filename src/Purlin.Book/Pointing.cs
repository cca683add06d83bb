namespace Purlin.Book;

/// <summary>How a reading says where in its place it was taken.</summary>
public enum Pointing
{
    /// <summary>By its place alone.</summary>
    None,

    /// <summary>By the distance from the wall.</summary>
    Distance,

    /// <summary>By a point of the plan.</summary>
    Plan,
}
