namespace Gylebook.Science.Water;

/// <summary>The ways a printed number is commonly taken for another, each tried on a report.</summary>
internal static class WaterMisreadings
{
    internal static IEnumerable<(string Code, string Message, IonProfile Reread)> Of(
        WaterReport report, IonProfile profile)
    {
        // HCO3 for CO3 of the same number of mg: twice the charge on 60.009 instead of once on 61.017.
        double asCarbonate = 2 * AtomicMass.Bicarbonate / AtomicMass.Carbonate;
        if (report is { Alkalinity: null, Bicarbonate: not null, Carbonate: null })
        {
            yield return ("water.bicarbonateIsCarbonate", "This bicarbonate is probably carbonate, CO3.",
                profile.With(Ion.Bicarbonate, profile.Bicarbonate * asCarbonate));
            yield return ("water.bicarbonateIsAlkalinity", "This bicarbonate is probably alkalinity as CaCO3.",
                profile.With(Ion.Bicarbonate,
                    profile.Bicarbonate * HardnessUnits.MilligramsCalciumCarbonate * AtomicMass.Bicarbonate));
        }

        if (report is { Alkalinity: null, Bicarbonate: null, Carbonate: not null })
        {
            yield return ("water.carbonateIsBicarbonate", "This carbonate is probably bicarbonate, HCO3.",
                profile.With(Ion.Bicarbonate, profile.Bicarbonate / asCarbonate));
        }

        if (report.Sulphate is not null)
        {
            yield return ("water.sulphateIsSulphur", "This sulphate is probably given as sulphur, SO4-S.",
                profile.With(Ion.Sulphate, profile.Sulphate * HardnessUnits.SulphatePerSulphur));
        }

        if (report.Nitrate is not null)
        {
            yield return ("water.nitrateIsNitrogen", "This nitrate is probably given as nitrogen, NO3-N.",
                profile.With(Ion.Nitrate, profile.Nitrate * HardnessUnits.NitratePerNitrogen));
        }
    }
}
