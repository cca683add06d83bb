namespace Purlin.Reckoning.Structure.Floor;

/// <summary>Gauss and Jordan's elimination with pivots, for the few terms of a surface.</summary>
internal static class Elimination
{
    /// <summary>
    /// Brings the square left part of the rows to the unit matrix, so that what stands to the right of it becomes the solution (or, of a
    /// unit matrix, the inverse). False when a pivot is smaller than <paramref name="least"/>: the terms cannot be told apart.
    /// </summary>
    public static bool Solve(double[][] rows, double least)
    {
        var width = rows[0].Length;
        for (var column = 0; column < rows.Length; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < rows.Length; row++)
            {
                if (Math.Abs(rows[row][column]) > Math.Abs(rows[pivot][column])) pivot = row;
            }
            if (Math.Abs(rows[pivot][column]) < least) return false;
            (rows[column], rows[pivot]) = (rows[pivot], rows[column]);
            var lead = rows[column][column];
            for (var at = column; at < width; at++) rows[column][at] /= lead;
            for (var row = 0; row < rows.Length; row++)
            {
                if (row == column) continue;
                var factor = rows[row][column];
                for (var at = column; at < width; at++) rows[row][at] -= factor * rows[column][at];
            }
        }
        return true;
    }
}
