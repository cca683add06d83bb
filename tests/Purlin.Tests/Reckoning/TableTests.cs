using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning;

public sealed class TableTests
{
    public static TheoryData<string> Files() =>
        [.. typeof(Tables).Assembly.GetManifestResourceNames().Where(name => name.StartsWith("tables/", StringComparison.Ordinal)).Select(name => name["tables/".Length..])];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_table_names_its_source_and_has_rows(string file)
    {
        var table = Tables.Read(file);
        Assert.InRange(table.Source.Length, 10, 400);
        Assert.NotEmpty(table.Rows);
        Assert.All(table.Rows, row => Assert.NotEmpty(row.Source));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void No_row_stands_twice(string file)
    {
        var table = Tables.Read(file);
        var rows = table.Rows.Select(row => string.Join('|', table.Columns.Select(column => row[column]))).ToList();
        Assert.Equal(rows.Count, rows.Distinct().Count());
    }

    [Fact]
    public void Quotes_and_commas_are_read()
    {
        var table = Table.Parse("x.csv", "# A source\nname,value\n\"a, \"\"b\"\"\",1\n");
        Assert.Equal("a, \"b\"", table.Rows[0]["name"]);
        Assert.Equal(1, table.Rows[0].Number("value"));
    }

    [Theory]
    [InlineData("name\na\n")]
    [InlineData("# s\n")]
    [InlineData("# s\na,b\n1\n")]
    public void A_table_that_is_not_one_is_a_slip(string text) => Assert.Throws<FormatException>(() => Table.Parse("x.csv", text));

    [Fact]
    public void A_cell_that_is_no_number_is_a_slip() =>
        Assert.Throws<FormatException>(() => Table.Parse("x.csv", "# s\na\nNaN\n").Rows[0].Number("a"));

    [Fact]
    public void A_row_from_memory_says_so_in_its_source()
    {
        var table = Table.Parse("x.csv", "# A source\na,mark\n1,from memory\n2,confirmed\n");
        Assert.Equal("A source (from memory)", table.Rows[0].Source);
        Assert.Equal("A source", table.Rows[1].Source);
    }
}
