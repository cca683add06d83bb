using Microsoft.AspNetCore.Components;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.Visits;

/// <summary>Ways through the app, and names of things as people say them.</summary>
public sealed class Hand(NavigationManager navigation, OpenVisit visit)
{
    public static string Address(EntryName name) => name.ToString().Replace('.', '-');

    public static EntryName? Read(string? address) => EntryName.TryParse(address?.Replace('-', '.'), out var name) ? name : null;

    public string House => $"/visit/{visit.Id}";

    public string Of(EntryName place) => $"/visit/{visit.Id}/place/{Address(place)}";

    public void To(string url) => navigation.NavigateTo(url);

    public string NameOf(EntryName? place) => visit.Inspection.Places.FirstOrDefault(one => one.Id == place)?.Name ?? "Whole house";

    public Purlin.Journal.Fold.Place? Place(EntryName? name) => name is { } id ? visit.Inspection.Places.FirstOrDefault(one => one.Id == id) : null;

    public static string ComponentInWords(Component component) =>
        component.Name is { Length: > 0 } name ? $"{Sentence(component.Kind)}, {name}" : Sentence(component.Kind);

    public static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
