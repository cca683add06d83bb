using System.Collections.Immutable;

namespace Purlin.Journal;

/// <summary>Something from outside that we do not take: what it was, what was given, what is allowed. Plain words, one line.</summary>
/// <param name="Input">The input, field, line or file that is refused.</param>
/// <param name="Given">What was given, shortened to 80 characters.</param>
/// <param name="Allowed">What is allowed there, and what to do next.</param>
public sealed record Refusal(string Input, Said Given, Said Allowed)
{
    /// <summary>The refusal in words.</summary>
    public string In(Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(tongue);
        return tongue.Say("refused", ("input", Input), ("given", Given), ("allowed", Allowed));
    }

    /// <summary>In the standard language, for the command line and for logs.</summary>
    public override string ToString() => In(Tongue.BuiltIn(Tongue.Standard));
}

/// <summary>Text from outside never throws: it becomes a value, or the list of all its refusals.</summary>
/// <typeparam name="T">What the text means when it is accepted.</typeparam>
public readonly struct Checked<T>
{
    private readonly T? value;
    private readonly ImmutableArray<Refusal> refusals;

    private Checked(T? value, ImmutableArray<Refusal> refusals)
    {
        this.value = value;
        this.refusals = refusals;
    }

    /// <summary>Accepted.</summary>
    public static implicit operator Checked<T>(T value) => new(value, []);

    /// <summary>Refused, for one reason.</summary>
    public static implicit operator Checked<T>(Refusal refusal) => new(default, [refusal]);

    /// <summary>Refused, for all these reasons; there must be at least one.</summary>
    public static Checked<T> Refused(IEnumerable<Refusal> reasons)
    {
        ImmutableArray<Refusal> all = [.. reasons];
        return all.IsEmpty ? throw new ArgumentException("a refusal needs a reason", nameof(reasons)) : new(default, all);
    }

    /// <summary>True when a value is there.</summary>
    public bool IsAccepted => !refusals.IsDefault && refusals.IsEmpty;

    /// <summary>All the reasons for refusing; empty when accepted.</summary>
    public ImmutableArray<Refusal> Refusals =>
        refusals.IsDefault ? [new Refusal("value", "journal.given.nothing", "journal.wanted.value-made")] : refusals;

    /// <summary>One function a case.</summary>
    public TResult Match<TResult>(Func<T, TResult> accepted, Func<ImmutableArray<Refusal>, TResult> refused) =>
        IsAccepted ? accepted(value!) : refused(Refusals);

    /// <summary>The value, where refusal would be a slip of ours (built-in data, tests).</summary>
    /// <exception cref="InvalidOperationException">It was refused; the message lists why.</exception>
    public T OrThrow() => IsAccepted ? value! : throw new InvalidOperationException(string.Join('\n', Refusals));

}
