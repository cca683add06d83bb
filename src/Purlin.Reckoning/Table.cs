using System.Collections.Immutable;
using System.Globalization;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>
/// A published table as data. The first line of its file starts with <c>#</c> and names the source; further <c>#</c> lines are notes;
/// then a line of column names and the rows, comma-separated, a cell in double quotes where it holds a comma or a quote.
/// Two columns have a meaning of their own wherever they stand: <c>source</c> (of that row, when it differs from the table's) and
/// <c>mark</c> (<c>from memory</c> where nobody has confirmed the row).
/// </summary>
public sealed class Table
{
    private Table(string name, string source, ImmutableArray<string> columns, ImmutableArray<TableRow> rows)
    {
        Name = name;
        Source = source;
        Columns = columns;
        Rows = rows;
    }

    /// <summary>Its path below <c>rulebook/tables</c>.</summary>
    public string Name { get; }

    /// <summary>Document, table and edition, from the first line.</summary>
    public string Source { get; }

    /// <summary>The column names, in order.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>The rows, in order.</summary>
    public ImmutableArray<TableRow> Rows { get; }

    /// <exception cref="FormatException">No source line, no columns, or a row of another width; the message names file and
    /// line.</exception>
    internal static Table Parse(string name, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        if (!lines[0].StartsWith('#')) throw new FormatException($"{name}: the first line must start with # and name the source");
        var source = lines[0][1..].Trim();
        ImmutableArray<string> columns = [];
        var rows = ImmutableArray.CreateBuilder<TableRow>(lines.Length);
        for (var index = 1; index < lines.Length; index++)
        {
            if (lines[index].Length == 0 || lines[index].StartsWith('#')) continue;
            var cells = Cells(lines[index]);
            if (columns.IsEmpty) columns = cells;
            else if (cells.Length != columns.Length)
                throw new FormatException($"{name}, line {index + 1}: {cells.Length} cells, {columns.Length} columns");
            else rows.Add(new TableRow(name, index + 1, source, columns, cells));
        }
        return columns.IsEmpty ? throw new FormatException($"{name}: no columns") : new Table(name, source, columns, rows.ToImmutable());
    }

    private static ImmutableArray<string> Cells(string line)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new System.Text.StringBuilder();
        var quoted = false;
        for (var at = 0; at < line.Length; at++)
        {
            var letter = line[at];
            if (quoted && letter == '"' && at + 1 < line.Length && line[at + 1] == '"') { cell.Append('"'); at++; }
            else if (letter == '"') quoted = !quoted;
            else if (letter == ',' && !quoted) { cells.Add(cell.ToString().Trim()); cell.Clear(); }
            else cell.Append(letter);
        }
        cells.Add(cell.ToString().Trim());
        return cells.ToImmutable();
    }
}

/// <summary>One row of a <see cref="Table"/>.</summary>
public sealed class TableRow
{
    private readonly string table;
    private readonly int line;
    private readonly ImmutableArray<string> columns;
    private readonly ImmutableArray<string> cells;
    private readonly string tableSource;

    internal TableRow(string table, int line, string tableSource, ImmutableArray<string> columns, ImmutableArray<string> cells)
    {
        this.table = table;
        this.line = line;
        this.tableSource = tableSource;
        this.columns = columns;
        this.cells = cells;
    }

    /// <summary>The cell of a column; empty when blank.</summary>
    /// <exception cref="FormatException">There is no such column.</exception>
    public string this[string column]
    {
        get
        {
            var at = columns.IndexOf(column);
            return at >= 0 ? cells[at] : throw new FormatException($"{table} has no column {column}");
        }
    }

    /// <summary>A number; the cell must hold one.</summary>
    /// <exception cref="FormatException">Blank, or no finite number; the message names file, line and column.</exception>
    public double Number(string column) =>
        NumberOrNone(column) ?? throw new FormatException($"{table}, line {line}, {column}: '{this[column]}' is not a number");

    /// <summary>A number, or none where the cell is blank.</summary>
    /// <exception cref="FormatException">Something stands there that is no finite number.</exception>
    public double? NumberOrNone(string column)
    {
        var cell = this[column];
        if (cell.Length == 0) return null;
        return double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw new FormatException($"{table}, line {line}, {column}: '{cell}' is not a number");
    }

    /// <summary>Whether nobody has confirmed this row against a public source.</summary>
    public bool IsFromMemory => columns.Contains("mark") && this["mark"].Contains("from memory", StringComparison.Ordinal);

    /// <summary>
    /// The words of a cell as a sentence for people: as they stand, unless a language has others for them under
    /// <c>structure/cracks/meaning/WORDS</c>. A cell that is rewritten loses its translation and says so by reading in English.
    /// </summary>
    public Said Words(string column) => Said.InData($"{table[..^4]}/{column}/{this[column]}", this[column]);

    /// <summary>What the row rests on, with <c>(from memory)</c> behind it where nobody has confirmed it.</summary>
    public string Source
    {
        get
        {
            var own = columns.Contains("source") ? this["source"] : "";
            var source = own.Length > 0 ? own : tableSource;
            return IsFromMemory && !source.Contains("from memory", StringComparison.Ordinal) ? source + " (from memory)" : source;
        }
    }
}
