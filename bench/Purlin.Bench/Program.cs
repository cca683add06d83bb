using Purlin.Bench;

// dotnet run -c Release --project bench/Purlin.Bench -- fold judgement ...   writes bench/results/NAME.md
Dictionary<string, (string Title, Action<Results> Run)> all = new(StringComparer.Ordinal)
{
    ["fold"] = ("Folding a journal", FoldBench.Run),
    ["judgement"] = ("Judging", JudgementBench.Run),
    ["browser-judgement"] = ("Judging again after one act, in the browser", BrowserJudgementBench.Run),
    ["report"] = ("Writing the report", ReportBench.Run),
    ["reckonings"] = ("Reckoning", ReckoningBench.Run),
    ["spoken"] = ("Finding conditions by words", SpokenBench.Run),
    ["hearing"] = ("Understanding an hour of narration", HearingBench.Run),
    ["office"] = ("The office", OfficeBench.Run),
    ["cold-start"] = ("Cold start with the server stopped", ColdStartBench.Run),
};
if (args.Length == 0 || args.Any(name => !all.ContainsKey(name)))
{
    Console.Error.WriteLine($"Name what to measure: {string.Join(", ", all.Keys)}");
    return 2;
}
Directory.CreateDirectory("bench/results");
foreach (var name in args)
{
    Results results = new();
    all[name].Run(results);
    await File.WriteAllTextAsync($"bench/results/{name}.md", results.Page(all[name].Title) + "\n");
}
return 0;
