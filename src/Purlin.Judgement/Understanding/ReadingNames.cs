using Purlin.Book;
using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Understanding;

/// <summary>Readings in the names and units of the book.</summary>
internal sealed class ReadingNames(RuleBook book, KnownNames names, Telling telling)
{
    public Reading Reading(Reading reading, List<LookAgain> again)
    {
        var body = reading.Body;
        var kind = names.Reading(body.Kind);
        if (telling.Name(reading.Id, "kind", telling.Say("again.what.reading"), body.Kind, kind, bars: true) is { } told) again
            .Add(told with { Place = body.Place, Given = $"{body.Kind} {body.Amount}" });
        var amount = kind.IsUnderstood && book.ReadingKinds.TryGetValue(kind.Name, out var known) ? Amount(reading, known,
            again) : body.Amount;
        return kind.Name == body.Kind && amount == body.Amount ? reading : reading with
        {
            Body = body with
            {
                Kind = kind.Name,
                Amount = amount
            }
        };
    }

    private Amount Amount(Reading reading, ReadingKind kind, List<LookAgain> again)
    {
        var given = reading.Body.Amount;
        if (given.Unit.Length == 0 && kind.Unit.Length > 0)
        {
            // A number alone is in the unit that everybody writes it in, unless it cannot be.
            if (given.Value < kind.Least || given.Value > kind.Most) return Tell("again.no-unit", given);
            Tell("again.unit.taken", given);
            return given with { Unit = kind.Unit };
        }
        var unit = names.Unit(given.Unit);
        // Counts and shares are written with words that are no units: "2 risers".
        if (kind.Unit.Length == 0) return given.Unit.Length == 0 ? given : Tell("again.unit", given);
        if (!unit.IsUnderstood || !(unit.Name == kind.Unit || Units.Compatible(unit.Name, kind.Unit))) return Tell("again.unit", given);
        var plain = given with { Unit = unit.Name };
        if (Within(plain, kind) is false) Tell("again.beyond", plain);
        return plain;

        Amount Tell(string key, Amount amount)
        {
            var said = telling.Say(key, ("what", kind.Kind), ("given", amount.ToString()), ("unit", kind.Unit), ("least", kind.Least,
                kind.Unit), ("most", kind.Most, kind.Unit));
            again.Add(Telling.Odd(reading.Id, key == "again.beyond" ? "amount" : "unit", amount.ToString(), said,
                bars: key is "again.unit" or "again.no-unit") with
            {
                Place = reading.Body.Place,
                Taken = key == "again.unit.taken" ? $"{amount} {kind.Unit}" : null,
            });
            return amount;
        }
    }

    private static bool? Within(Amount amount, ReadingKind kind)
    {
        var number = amount.Value;
        if (amount.Unit != kind.Unit && !Units.TryConvert(amount.Value, amount.Unit, kind.Unit, out number)) return null;
        return number >= kind.Least && number <= kind.Most;
    }
}
