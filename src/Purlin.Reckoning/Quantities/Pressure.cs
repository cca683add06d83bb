namespace Purlin.Reckoning.Quantities;

/// <summary>Absolute pressure; what a gauge shows is less by the air's own.</summary>
public readonly record struct Pressure
{
    // Pound-force over square inch, from the exact pound, inch and standard gravity (NIST SP 811, B.8).
    private const double PascalsPerPsi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
    private readonly double psi;

    private Pressure(double psi) => this.psi = psi;

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Pressure FromPsi(double value) => new(Finite.AtLeast(0, value, "psi"));

    /// <exception cref="ArgumentOutOfRangeException">Not finite, or negative.</exception>
    public static Pressure FromPascals(double value) => FromPsi(value / PascalsPerPsi);

    /// <summary>In psi.</summary>
    public double Psi => psi;

    /// <summary>In Pa.</summary>
    public double Pascals => psi * PascalsPerPsi;
}
