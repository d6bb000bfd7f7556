using Gylebook.Recipes;

namespace Gylebook.Forecast.Treating;

/// <summary>Tells of a pH that is not reached, with what would bring it.</summary>
internal static class PhMissed
{
    /// <summary>The finding.</summary>
    /// <param name="place">mash, sparge or wort: its key in the plan is <c>mashPh</c> and so on.</param>
    /// <param name="ph">What is reached.</param>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="what">What to offer.</param>
    public static Finding Finding(string place, double ph, double wanted, string what)
    {
        string reached = DiagnosisFinding.Number(ph, ""), asked = DiagnosisFinding.Number(wanted, "");
        return new(
            $"{place}.phNotReached", Severity.Warning, $"{place}Ph",
            $"{reached} where {asked} is wanted; offer {what}, or more of it", reached, asked);
    }
}
