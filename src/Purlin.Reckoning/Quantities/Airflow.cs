namespace Purlin.Reckoning.Quantities;

/// <summary>Volume of air moved, at the state it has where it was measured.</summary>
public readonly record struct Airflow
{
    private readonly double cubicFeetPerMinute;

    private Airflow(double cubicFeetPerMinute) => this.cubicFeetPerMinute = cubicFeetPerMinute;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Airflow FromCubicFeetPerMinute(double value) => new(Finite.AtLeast(0, value, "cfm"));

    /// <summary>In cfm.</summary>
    public double CubicFeetPerMinute => cubicFeetPerMinute;
}
