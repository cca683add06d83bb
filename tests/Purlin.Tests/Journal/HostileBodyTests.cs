using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Tests.Journal;

/// <summary>Bodies that say what cannot be are refused in words that name the member and what is allowed.</summary>
public sealed class HostileBodyTests
{
    [Theory]
    [InlineData("part.added", """{"kind":"wing","name":"x","side":"north"}""", "side")]
    [InlineData("part.leveled", """{"part":"a.1","levels":[]}""", "levels")]
    [InlineData("part.leveled", """{"part":"a.1","levels":[{"at":0.3,"form":"full"}]}""", "level")]
    [InlineData("part.leveled", """{"part":"a.1","levels":[{"at":1,"form":"full"},{"at":0,"form":"full"}]}""", "levels")]
    [InlineData("part.leveled", """{"part":"a.1","levels":[{"at":0,"form":"attic"}]}""", "form")]
    [InlineData("part.clad", """{"part":"a.1","side":"above","claddings":[{"material":"x"}],"basis":"seen"}""", "side")]
    [InlineData("part.clad", """{"part":"a.1","side":"left","claddings":[],"basis":"seen"}""", "claddings")]
    [InlineData("part.clad", """{"part":"a.1","side":"left","claddings":[{"material":"x"}],"basis":"dreamed"}""", "basis")]
    [InlineData("place.added", """{"kind":"room","name":"x","level":99}""", "level")]
    [InlineData("place.placed", """{"place":"a.1","level":0.2}""", "level")]
    [InlineData("plan.drawn", """{"place":"a.1","outline":[{"x":0,"y":0},{"x":1,"y":0}]}""", "outline")]
    [InlineData("plan.drawn", """{"place":"a.1","outline":[{"x":0,"y":0},{"x":1,"y":0},{"x":2,"y":0}]}""", "outline")]
    [InlineData("plan.drawn", """{"place":"a.1","outline":[{"x":0,"y":0},{"x":1e9,"y":0},{"x":2,"y":7}]}""", "outline")]
    [InlineData("component.absent", """{"kind":""}""", "kind")]
    [InlineData("photo.taken", """{"sha":"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa","size":1,"mediaType":"image/png","use":"pretty"}""", "use")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"star","from":{"x":0,"y":0},"to":{"x":1,"y":1}}""", "shape")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"arrow","from":{"x":0,"y":0},"to":{"x":1.1,"y":1}}""", "point")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"arrow","from":{"x":0,"y":0}}""", "to")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"words","from":{"x":0,"y":0}}""", "words")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"ring","from":{"x":0,"y":0},"to":{"x":1,"y":1},"length":{"value":3,"unit":"in"}}""", "length")]
    [InlineData("limitation.completed", """{"limitation":"a.1","member":"mood","text":"x"}""", "member")]
    [InlineData("note.fated", """{"how":"kept out","reason":"x"}""", "note")]
    [InlineData("note.fated", """{"note":"a.1","sound":"a.2","how":"kept out","reason":"x"}""", "note")]
    [InlineData("note.fated", """{"note":"a.1","how":"kept out"}""", "reason")]
    [InlineData("note.fated", """{"note":"a.1","how":"under"}""", "under")]
    [InlineData("note.fated", """{"note":"a.1","how":"matter","title":"x"}""", "matter")]
    [InlineData("note.fated", """{"note":"a.1","how":"forgotten"}""", "how")]
    [InlineData("note.fated", """{"note":"a.1","how":"kept out","reason":"x","origin":"a.3"}""", "origin")]
    [InlineData("entry.withdrawn", """{"entry":"a.1","origin":"a.3"}""", "origin")]
    [InlineData("proposal.made", """{"entry":"entry.withdrawn","body":{"entry":"a.1"},"from":[{"entry":"a.1"}],"confidence":1}""", "entry")]
    [InlineData("proposal.made", """{"entry":"proposal.made","body":{},"from":[{"entry":"a.1"}],"confidence":1}""", "entry")]
    [InlineData("proposal.made", """{"entry":"no.such","body":{},"from":[{"entry":"a.1"}],"confidence":1}""", "entry")]
    [InlineData("proposal.made", """{"entry":"fact.stated","body":{"component":"a.1","fact":"year","value":1,"basis":"dreamed"},"from":[{"entry":"a.1"}],"confidence":1}""", "basis")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x","origin":"a.3"},"from":[{"entry":"a.1"}],"confidence":1}""", "origin")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x"},"from":[],"confidence":1}""", "from")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x"},"from":[{"entry":"a.1"}],"confidence":1.5}""", "confidence")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x"},"from":[{"entry":"a.1","box":{"x":0.9,"y":0,"width":0.2,"height":1}}],"confidence":1}""", "box")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x"},"from":[{"entry":"a.1","start":3}],"confidence":1}""", "span")]
    [InlineData("proposal.made", """{"entry":"component.added","body":{"kind":"x"},"from":[{"entry":"a.1","line":0}],"confidence":1}""", "line")]
    public void What_cannot_be_is_refused_by_name(string type, string body, string member)
    {
        var read = BodyJson.Read(type, JsonElement.Parse(body));
        Assert.False(read.IsAccepted);
        Assert.Contains(read.Refusals, refusal => refusal.Input == member && refusal.ToString().Length > member.Length);
    }

    [Theory]
    [InlineData("proposal.made", """{"entry":"component.added","body":7,"from":[{"entry":"a.1"}],"confidence":1}""")]
    [InlineData("photo.marked", """{"photo":"a.1","shape":"ring","from":null,"to":{"x":1,"y":1}}""")]
    [InlineData("plan.drawn", """{"place":"a.1","outline":[null,{"x":1,"y":1},{"x":1,"y":2}]}""")]
    [InlineData("part.clad", """{"part":"a.1","side":"left","claddings":[{"where":"up"}],"basis":"seen"}""")]
    public void What_has_another_shape_is_refused_whole(string type, string body) => Assert.False(BodyJson.Read(type, JsonElement.Parse(body)).IsAccepted);
}
