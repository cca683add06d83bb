namespace Purlin.Reckoning.Years;

/// <summary>
/// How many of a kind are alive at an age: S(t) = 1 up to the delay, then exp(−((t − delay)/scale)^shape), the form of the U.S. Energy
/// Information Administration's residential model (NEMS, resd.f, function SVRTE).
/// </summary>
/// <param name="Shape">Above 1 the chance of failure grows with age.</param>
/// <param name="ScaleYears">Age, beyond the delay, by which 63 % have failed.</param>
/// <param name="DelayYears">Age before which none fails.</param>
public readonly record struct Weibull(double Shape, double ScaleYears, double DelayYears = 0)
{
    /// <summary>
    /// The distribution of which a tenth has failed at the low age and nine tenths at the high one:
    /// shape = ln(ln 10 / −ln 0.9) / ln(high/low), scale = high / (ln 10)^(1/shape).
    /// </summary>
    public static Weibull FromTenthAndNinetieth(double lowYears, double highYears)
    {
        var shape = Math.Log(Math.Log(10) / -Math.Log(0.9)) / Math.Log(highYears / lowYears);
        return new Weibull(shape, highYears / Math.Pow(Math.Log(10), 1 / shape));
    }

    /// <summary>Share of new ones alive at an age.</summary>
    public double Survival(double ageYears) => Math.Exp(-Hazard(ageYears));

    /// <summary>
    /// Share of those alive at an age that fail within the next years. Works on hazards, so that it holds where survival itself is too
    /// small to write.
    /// </summary>
    public double FailsWithin(double ageYears, double years) => -Math.Exp(Hazard(ageYears) - Hazard(ageYears + years)) + 1;

    /// <summary>Years from an age, by which a share of those alive then has failed.</summary>
    public double YearsLeft(double ageYears, double share) =>
        Math.Max(0, DelayYears + ScaleYears * Math.Pow(Hazard(ageYears) - Math.Log(1 - share), 1 / Shape) - ageYears);

    private double Hazard(double ageYears) => ageYears <= DelayYears ? 0 : Math.Pow((ageYears - DelayYears) / ScaleYears, Shape);
}
