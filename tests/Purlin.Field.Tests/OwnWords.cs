using System.Text;
using System.Text.Json;
using Purlin.Field.Tests.App;
using Purlin.Book;

namespace Purlin.Field.Tests;

/// <summary>Own wording on the phone: said from a matter, kept between visits, handed on as a file, and shown where the rule book moved on.</summary>
public sealed class OwnWords(Browser browser) : IAsyncLifetime
{
    private const string Condition = "water-heater.relief-pipe-missing";
    private const string Key = Condition + "/do";
    private const string Mine = "Have a plumber run a copper pipe from the valve to the drain pan.";
    private TinyHost host = null!;
    private Phone phone = null!;

    private IPage Page => phone.Page;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address, worker: true);
    }

    [Fact]
    public async Task A_sentence_said_my_way_offline_stands_in_the_matter_and_in_the_working_copy_and_can_be_taken_back()
    {
        var seed = await SeenAsync();
        await phone.OpenReadyAsync(seed.Url($"/matter/{Condition.Replace('.', ',')}"));
        Assert.True(await Page.EvaluateAsync<bool>("async () => { await navigator.serviceWorker.ready; return true; }"));
        await Page.ReloadAsync();
        await phone.ReadyAsync();
        await host.StopAsync();

        await Page.GetByRole(AriaRole.Link, new() { Name = "Say it my way" }).TapAsync();
        await Page.Locator($".sentence[data-key='{Key}']").TapAsync();
        await Assertions.Expect(Page.Locator(".says.book")).ToContainTextAsync(RuleBook.BuiltIn.Conditions[Condition].Do);
        await Page.GetByLabel("I say", new() { Exact = true }).FillAsync("The heater is safe to use.");
        await Assertions.Expect(Page.Locator(".saying .note")).ToContainTextAsync("promise");
        await Page.GetByLabel("I say", new() { Exact = true }).FillAsync(Mine);
        await Page.MeetsAsync("the sentence");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep my words" }).TapAsync();
        await phone.UntilAsync(seed.Insp, "wording.said", 1);
        await phone.UntilAsync(OwnWording.Journal, "wording.said", 1);
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync(Mine);
        await Page.MeetsAsync("the sentences behind a matter");

        await Page.Locator(".head .back").TapAsync();
        await Assertions.Expect(Page.Locator("[data-part='recommendation']")).ToContainTextAsync(Mine);
        await phone.OpenReadyAsync(seed.Url("/report"));
        await Assertions.Expect(Page.FrameLocator("iframe").Locator("body")).ToContainTextAsync(Mine);

        await phone.OpenReadyAsync(seed.Url($"/wording/{Condition.Replace('.', ',')}"));
        await SayAsync(Key, "Another way.");
        await Page.Locator(".undo button").TapAsync();
        await phone.UntilAsync(OwnWording.Journal, "entry.withdrawn", 1);
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync(Mine);
        await Page.Locator($".sentence[data-key='{Key}']").TapAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Back to the book" }).TapAsync();
        await Assertions.Expect(Page.Locator(".sentence.mine")).ToHaveCountAsync(0);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_new_inspection_takes_my_wording_along_in_the_transaction_that_opens_it()
    {
        await phone.OpenReadyAsync("/wording");
        await Page.GetByLabel("Words in it").FillAsync("relief valve discharge pipe");
        await Page.Locator($".sentence[data-key='{Key}']").TapAsync();
        await Page.GetByLabel("I say", new() { Exact = true }).FillAsync(Mine);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep my words" }).TapAsync();
        await phone.UntilAsync(OwnWording.Journal, "wording.said", 1);
        await Assertions.Expect(Page.Locator("[data-group='plumbing'] .sentence.mine")).ToContainTextAsync(Mine);
        await Page.MeetsAsync("my wording");
        await phone.OpenReadyAsync("/");
        await Assertions.Expect(Page.Locator(".visit")).ToHaveCountAsync(0);

        await phone.OpenReadyAsync("/new");
        await Page.GetByLabel("Where is the house?").FillAsync("3 Invented Court");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Draw the house" }).TapAsync();
        await Page.WaitForURLAsync("**/visit/*");
        var inspection = Page.Url[(Page.Url.LastIndexOf('/') + 1)..];
        var said = Assert.Single(await phone.LinesAsync(inspection), line => line.GetProperty("type").GetString() == "wording.said").GetProperty("body");
        Assert.Equal((Key, Mine, RuleBook.BuiltIn.Conditions[Condition].Do), (Text(said, "key"), Text(said, "now"), Text(said, "was")));
    }

    [Fact]
    public async Task A_condition_of_my_own_is_offered_where_its_places_say_found_by_its_words_and_judged()
    {
        var seed = await SeenAsync();
        await phone.OpenReadyAsync("/wording");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Add a condition of my own" }).TapAsync();
        await Page.GetByLabel("What it is called").FillAsync("Bats in the attic");
        await Page.GetByLabel("What is it on?").FillAsync("attic animals");
        await Page.GetByRole(AriaRole.Group, new() { Name = "Which system does it belong to?" }).GetByRole(AriaRole.Button, new() { Name = "attic", Exact = true }).TapAsync();
        await Page.GetByRole(AriaRole.Group, new() { Name = "Where is it looked for?" }).GetByRole(AriaRole.Button, new() { Name = "attic", Exact = true }).TapAsync();
        await Page.Locator("summary", new() { HasText = "More: other words" }).TapAsync();
        await Page.GetByLabel("Other words for it").FillAsync("guano, droppings");
        await Page.GetByLabel("What it means").FillAsync("Bats live here and their droppings soil the insulation.");
        await Page.GetByLabel("What to do").FillAsync("Have a pest control firm close the ways in after the bats have left.");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep this condition" }).TapAsync();
        await Assertions.Expect(Page.Locator(".page .refused").First).ToContainTextAsync("By whom: nothing");
        await Page.GetByRole(AriaRole.Group, new() { Name = "Who deals with it?" }).GetByRole(AriaRole.Button, new() { Name = "Pest control firm" }).TapAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "A question of my own" }).TapAsync();
        await Page.GetByLabel("What to look at").FillAsync("Look for droppings in the garage.");
        await Page.GetByRole(AriaRole.Group, new() { Name = "Where?", Exact = true }).GetByRole(AriaRole.Button, new() { Name = "garage", Exact = true }).TapAsync();
        await Page.GetByLabel("When nobody looked").FillAsync("Have the firm look in the garage too.");
        await Page.MeetsAsync("the condition");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep this condition" }).TapAsync();
        await phone.UntilAsync(OwnWording.Journal, "condition.written", 1);
        await Assertions.Expect(Page.Locator("[data-own='own.bats-in-the-attic']")).ToBeVisibleAsync();

        await Page.GotoAsync(phone.Address + seed.Url());
        await phone.ReadyAsync();
        await Page.EvaluateAsync("() => { const link = document.createElement('a'); link.href = '/wording'; link.id = 'to-wording'; link.textContent = 'wording'; document.body.append(link); link.click(); }");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Use my wording there too" }).TapAsync();
        await phone.UntilAsync(seed.Insp, "condition.written", 1);
        var attic = (await phone.LinesAsync(seed.Insp)).First(line => line.GetProperty("type").GetString() == "place.added" && Text(line.GetProperty("body"), "kind") == "attic");
        await phone.OpenReadyAsync(seed.PlaceUrl($"{Text(attic, "dev")}.{attic.GetProperty("seq").GetInt32()}"));
        await Page.Locator(".sayline input").FillAsync("droppings");
        await Page.Locator("[data-recognised='own.bats-in-the-attic']").TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 3);
        await phone.OpenReadyAsync(seed.Url("/matter/own,bats-in-the-attic"));
        await Assertions.Expect(Page.Locator("[data-part='recommendation']")).ToContainTextAsync("close the ways in");
        await phone.OpenReadyAsync(seed.Url("/walk"));
        await Assertions.Expect(Page.Locator("body")).ToContainTextAsync("Look for droppings in the garage.");
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task Wording_goes_to_a_file_and_comes_back_and_what_I_say_gives_way_only_where_I_choose_so()
    {
        await WriteAsync(("water-heater.relief-pipe-missing/name", "No pipe at the valve"), (Key, Mine));
        await phone.OpenReadyAsync("/wording");
        var saved = Page.WaitForDownloadAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Export to a file" }).TapAsync();
        var exported = await File.ReadAllBytesAsync((await (await saved).PathAsync())!, TestContext.Current.CancellationToken);
        var overlay = Overlay.Read(exported).OrThrow();
        Assert.Equal(Mine, overlay.Sentences[Key].Now);
        await ImportAsync(exported);
        await Assertions.Expect(Page.Locator(".bring")).ToContainTextAsync("You say everything in this file already.");

        var other = overlay.Say(RuleBook.BuiltIn, Key, "Ask a plumber.").Say(RuleBook.BuiltIn, "cautions/scald", "Hot water burns.");
        await ImportAsync(other.Write());
        await Assertions.Expect(Page.Locator("[data-brought]")).ToHaveCountAsync(2);
        await Page.MeetsAsync("what a file would change");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Take 1 of 2 over" }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-group='cautions'] .sentence.mine")).ToContainTextAsync("Hot water burns.");
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync(Mine);
        await ImportAsync(other.Write());
        await Page.GetByRole(AriaRole.Button, new() { Name = "Take the file" }).TapAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Take 1 of 1 over" }).TapAsync();
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync("Ask a plumber.");
        await Page.Locator(".undo button").TapAsync();
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync(Mine);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("{\"sentences\":{\"a/trade\":{\"was\":\"\",\"now\":\"a friend\"}}}")]
    [InlineData("{\"conditions\":[{\"id\":\"own.x\"}]}")]
    public async Task A_file_that_is_none_changes_nothing_and_says_why(string text)
    {
        await phone.OpenReadyAsync("/wording");
        await ImportAsync(Encoding.UTF8.GetBytes(text));
        await Assertions.Expect(Page.Locator(".bring [role=status]")).ToContainTextAsync("Nothing was taken.");
        Assert.Equal(0, await phone.CountAsync(OwnWording.Journal, "wording.said"));
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task Where_the_rule_book_moved_on_it_is_shown_and_stays_mine_until_I_decide()
    {
        await WriteAsync((Key, Mine), ("cautions/scald", "Hot water burns."), ("nothing.at-all/do", "Gone."));
        await phone.OpenReadyAsync("/wording");
        await Assertions.Expect(Page.Locator("[data-conflict]")).ToHaveCountAsync(3);
        var moved = Page.Locator($"[data-conflict='{Key}']");
        foreach (var words in (string[])["What an older edition said.", RuleBook.BuiltIn.Conditions[Condition].Do, Mine]) await Assertions.Expect(moved).ToContainTextAsync(words);
        await Page.MeetsAsync("conflicts");
        await moved.GetByRole(AriaRole.Button, new() { Name = "Keep mine" }).TapAsync();
        await Assertions.Expect(moved).ToHaveCountAsync(0);
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync(Mine);
        await Page.Locator("[data-conflict='cautions/scald']").GetByRole(AriaRole.Button, new() { Name = "Take the book" }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-conflict='cautions/scald']")).ToHaveCountAsync(0);
        await Assertions.Expect(Page.Locator(".sentence.mine[data-key='cautions/scald']")).ToHaveCountAsync(0);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Give mine up" }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-conflict]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_rule_book_that_moved_on_during_a_visit_is_told_there_and_a_decision_counts_in_it()
    {
        var seed = await SeenAsync();
        await Page.EvaluateAsync("async ([insp, key, was, now]) => { const { write } = await import('/device/writing.js'); await write(insp, [{ type: 'wording.said', body: { key, was, now } }]); }", new[] { seed.Insp, Key, "What an older edition said.", Mine });
        await phone.OpenReadyAsync(seed.Url("/matters"));
        await Page.GetByRole(AriaRole.Link, new() { Name = "The rule book has moved on under 1 of your own words" }).TapAsync();
        await Page.Locator($"[data-conflict='{Key}']").GetByRole(AriaRole.Button, new() { Name = "Keep mine" }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-conflict]")).ToHaveCountAsync(0);
        var said = (await phone.LinesAsync(seed.Insp)).Where(line => line.GetProperty("type").GetString() == "wording.said").ToArray();
        Assert.Equal(2, said.Length);
        Assert.Equal((Mine, RuleBook.BuiltIn.Conditions[Condition].Do), (Text(said[1].GetProperty("body"), "now"), Text(said[1].GetProperty("body"), "was")));
        Assert.Equal($"{Text(said[0], "dev")}.{said[0].GetProperty("seq").GetInt32()}", said[1].GetProperty("body").GetProperty("replaces")[0].GetString());
    }

    // Two phones that wrote apart: neither line names the other in what it replaces, so both stand.
    [Fact]
    public async Task What_two_phones_said_apart_is_shown_until_one_is_chosen()
    {
        await WriteAsync((Key, Mine), (Key, "Ask a plumber."));
        await phone.OpenReadyAsync("/wording");
        await Page.Locator($"[data-apart='{Key}'] button", new() { HasText = "Ask a plumber." }).TapAsync();
        await Assertions.Expect(Page.Locator("[data-apart]")).ToHaveCountAsync(0);
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{Key}']")).ToContainTextAsync("Ask a plumber.");
    }

    [Fact]
    public async Task A_new_phone_gets_my_wording_from_the_office_and_no_list_takes_it_for_an_inspection()
    {
        await using var office = await OfficeAtHand.StartAsync();
        await using var first = await browser.PhoneAsync(office.Address);
        await first.OpenBareAsync();
        await OfficeAtHand.SignInAsync(first);
        await first.Page.EvaluateAsync(Said, new[] { Key, "was", Mine });
        await first.Page.EvaluateAsync("async () => { await (await import('/device/send.js')).sendNow(); }");

        await using var second = await browser.PhoneAsync(office.Address);
        await second.OpenBareAsync();
        await OfficeAtHand.SignInAsync(second);
        await second.OpenReadyAsync("/wording");
        await second.UntilAsync(OwnWording.Journal, "wording.said", 1);
        await Assertions.Expect(second.Page.Locator(".sentence.mine").First).ToContainTextAsync(Mine);
        await second.OpenReadyAsync("/");
        await Assertions.Expect(second.Page.Locator(".visit")).ToHaveCountAsync(0);
        await Assertions.Expect(second.Page.GetByText("At the office, not on this phone")).ToHaveCountAsync(0);
        using var client = await office.ClientAsync();
        Assert.Equal("[]", await client.GetStringAsync("/office/inspections", TestContext.Current.CancellationToken));
    }

    private const string Said = """
        async ([key, was, now]) => {
          const { write } = await import('/device/writing.js');
          await write('own-wording', [{ type: 'wording.said', body: { key, was, now } }]);
        }
        """;

    /// <summary>Own sentences of an earlier edition of the book, unless what it said is what it says now.</summary>
    private async Task WriteAsync(params (string Key, string Now)[] said)
    {
        await phone.OpenBareAsync();
        foreach (var (key, now) in said) await Page.EvaluateAsync(Said, new[] { key, "What an older edition said.", now });
    }

    private async Task ImportAsync(byte[] bytes)
    {
        var chooser = await Page.RunAndWaitForFileChooserAsync(() => Page.GetByRole(AriaRole.Button, new() { Name = "Import from a file" }).TapAsync());
        await chooser.SetFilesAsync(new FilePayload { Name = "wording.json", MimeType = "application/json", Buffer = bytes });
    }

    private async Task SayAsync(string key, string now)
    {
        await Page.Locator($".sentence[data-key='{key}']").TapAsync();
        await Page.GetByLabel("I say", new() { Exact = true }).FillAsync(now);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep my words" }).TapAsync();
        await Assertions.Expect(Page.Locator($".sentence.mine[data-key='{key}']")).ToContainTextAsync(now);
    }

    private async Task<Seed> SeenAsync()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        await Page.EvaluateAsync("""
            async ([insp, kitchen, closet, component, condition]) => {
              const { write } = await import('/device/writing.js');
              await write(insp, [
                { type: 'observation.made', body: { place: closet, component, condition, outcome: 'seen', spot: 'left side' } },
                { type: 'observation.made', body: { place: kitchen, words: 'stain below the sink', outcome: 'seen' } },
              ]);
            }
            """, new[] { seed.Insp, seed.Kitchen, seed.Mechanical, seed.WaterHeater, Condition });
        return seed;
    }

    private static string? Text(JsonElement body, string name) => body.GetProperty(name).GetString();

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
