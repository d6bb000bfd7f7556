using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

/// <summary>The ion a strong acid leaves behind: chloride, sulphate.</summary>
internal static class AcidAnion
{
    public static IonProfile Added(IonProfile ions, AcidAsSold acid, double units, double litres) =>
        acid.Acid.Anion is Ion anion
            ? ions.With(anion, ions[anion] + (units * acid.MillimolesPerUnit * anion.MolarMass() / litres))
            : ions;
}
