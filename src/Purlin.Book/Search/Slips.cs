namespace Purlin.Book.Search;

/// <summary>How many slips of the finger lie between two words: a letter too many, too few, another, or two changed about.</summary>
internal static class Slips
{
    /// <summary>The slips between two words; any number above <paramref name="most"/> stands for too many.</summary>
    public static int Between(string some, string other, int most)
    {
        if (Math.Abs(some.Length - other.Length) > most) return most + 1;
        Span<int> before = stackalloc int[other.Length + 1], last = stackalloc int[other.Length + 1],
            row = stackalloc int[other.Length + 1];
        for (var column = 0; column <= other.Length; column++) last[column] = column;
        for (var line = 1; line <= some.Length; line++)
        {
            row[0] = line;
            var least = line;
            for (var column = 1; column <= other.Length; column++)
            {
                var change = some[line - 1] == other[column - 1] ? 0 : 1;
                row[column] = Math.Min(Math.Min(row[column - 1], last[column]) + 1, last[column - 1] + change);
                if (line > 1 && column > 1 && some[line - 1] == other[column - 2] && some[line - 2] == other[column - 1])
                    row[column] = Math.Min(row[column], before[column - 2] + 1);
                least = Math.Min(least, row[column]);
            }
            if (least > most) return most + 1;
            last.CopyTo(before);
            row.CopyTo(last);
        }
        return last[other.Length];
    }
}
