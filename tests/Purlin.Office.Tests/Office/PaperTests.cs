using Purlin.Journal;

namespace Purlin.Office.Tests.Office;

/// <summary>The office serves each paper of one visit by its name.</summary>
public sealed class PaperTests
{
    private const string Visit = "papers1";

    [Theory]
    [InlineData("walk", "<h2>The walk</h2>")]
    [InlineData("talk", "<h2>The call</h2>")]
    [InlineData("second", "Inspection report")]
    [InlineData("nonsense", "Inspection report")]
    public async Task A_paper_is_asked_for_by_name(string name, string said)
    {
        await using var office = await RunningOffice.Start();
        Pen pen = new(Visit, "phone1");
        Entry opening = pen.Write(
            new EntryBody.InspectionOpened
            {
                Property = new Property { Address = "9 Invented Row", YearBuilt = 1968 },
                Date = new DateOnly(2026, 11, 25)
            },
            new DateTimeOffset(2026, 11, 25, 12, 0, 0, TimeSpan.Zero));
        await office.Push(Visit, [opening]);
        Assert.Contains(said, await office.Client.GetStringAsync($"/office/inspections/{Visit}/report?paper={name}"),
            StringComparison.Ordinal);
    }
}
