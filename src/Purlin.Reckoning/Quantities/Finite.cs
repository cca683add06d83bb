namespace Purlin.Reckoning.Quantities;

/// <summary>The check every quantity makes on its way in; NaN fails each comparison, so it is refused first.</summary>
internal static class Finite
{
    internal static double Any(double value, string unit) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"must be a finite number of {unit}");

    internal static double AtLeast(double least, double value, string unit) =>
        Any(value, unit) >= least ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"must be at least {least} {unit}");

    internal static double Between(double least, double most, double value, string unit) =>
        AtLeast(least, value, unit) <= most
        ? value : throw new ArgumentOutOfRangeException(nameof(value), value, $"must be at most {most} {unit}");
}
