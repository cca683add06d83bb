namespace Purlin.Book;

/// <summary>The facts that are asked for on a kind of component, in the order in which a person comes to them.</summary>
public sealed record FactSheet
{
    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>Kinds of place where such a thing stands; it is offered there.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>The facts.</summary>
    public required IReadOnlyList<FactKind> Facts { get; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }
}

/// <summary>One fact that is asked for.</summary>
public sealed record FactKind
{
    /// <summary>Its name.</summary>
    public required string Fact { get; init; }

    /// <summary>Unit of the number; none for words and counts.</summary>
    public string Unit { get => field ?? ""; init; }

    /// <summary>True when it is a number.</summary>
    public bool Number { get; init; }

    /// <summary>The usual answers, each one tap; <c>yes</c> and <c>no</c> are kept as such.</summary>
    public IReadOnlyList<string> Choices { get => field ?? []; init; }

    /// <summary>How it is usually known.</summary>
    public string Basis { get => field ?? Journal.Basis.Seen; init; }
}
