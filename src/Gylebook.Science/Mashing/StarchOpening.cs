namespace Gylebook.Science.Mashing;

/// <summary>How fast the starch of barley malt swells and opens to the enzymes of a mash.</summary>
/// <remarks>
/// <para>Symbols: k = A·e^(−Ea/(R·T)) per second, T temperature (K), R = 8.314 J/mol/K; share open after t: 1 − e^(−k t). Below 60 °C
/// A = 5.7·10³¹, Ea = 220.6 kJ/mol; from 60 °C up A = 3.1·10¹⁴, Ea = 108.3 kJ/mol.</para>
/// <para>Source: Brandam et al. 2003 (Biochem. Eng. J. 13:43–52), from memory.</para>
/// <para>Valid for: barley malt, well ground; not stated where we could read it.</para>
/// <para>Accuracy: whole models of that kind hold within 10 % on other malts (Koljonen et al. 1995). The step at 60 °C, from 0.0014 to
/// 0.0032 per second, is theirs. By the table of <see cref="Gelatinisation"/> no barley starch opens below 60 °C: there this is the
/// most that may be hoped for.</para>
/// </remarks>
public static class StarchOpening
{
    private const double GasConstant = 8.314;
    private const double StepCelsius = 60;

    /// <summary>Rate at which closed starch opens, per minute.</summary>
    public static double PerMinute(double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        double thermal = GasConstant * (celsius + 273.15);
        return 60 * (celsius < StepCelsius ? 5.7e31 * Math.Exp(-220.6e3 / thermal) : 3.1e14 * Math.Exp(-108.3e3 / thermal));
    }
}
