using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange.OpenFormats.Leaving;

/// <summary>The waters of a plan as the open standards have them: ions, and no more.</summary>
internal static class LeavingWaters
{
    /// <summary>The waters.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="strike">Litres of liquor, of which each has its share; null when nobody has reckoned them.</param>
    /// <param name="travels">Takes what stays behind.</param>
    public static IReadOnlyList<OpenWater> Of(WaterPlan plan, VolumeAt20C? strike, TravelList travels)
    {
        if (plan.Targets.Count + plan.Salts.Count + plan.Acids.Count > 0 || plan.MashPh is not null || plan.Dilution is not null)
        {
            travels.Leave("water", $"the plan \"{plan.Name}\": wishes, salts, acids and pH; only its waters travel, untreated");
        }

        return [.. plan.Sources.Select(source => Of(source, strike, travels))];
    }

    private static OpenWater Of(WaterSource source, VolumeAt20C? strike, TravelList travels)
    {
        if (source.Boiled)
        {
            travels.Leave("water", $"{source.Name}: it is boiled first");
        }

        IonProfile ions = source.Report?.ToProfile() ?? IonProfile.Distilled;
        return new OpenWater
        {
            Name = source.Name,
            Amount = strike is { } litres && UnitTable.TryParse(UnitTable.Format(VolumeAt20C.FromLitres(litres.Litres * source.Share.Ratio), "L", 4), out Entered<VolumeAt20C> amount, out _) ? amount : null,
            Calcium = Ion(ions.Calcium),
            Magnesium = Ion(ions.Magnesium),
            Sodium = Ion(ions.Sodium),
            Bicarbonate = Ion(ions.Bicarbonate),
            Sulphate = Ion(ions.Sulphate),
            Chloride = Ion(ions.Chloride),
            Potassium = ions.Potassium > 0 ? Ion(ions.Potassium) : null,
            Nitrate = ions.Nitrate > 0 ? Ion(ions.Nitrate) : null,
        };
    }

    private static Entered<Concentration> Ion(double milligramsPerLitre) =>
        new(Concentration.FromMilligramsPerLitre(milligramsPerLitre), Invariant($"{milligramsPerLitre:0.##} mg/L"));
}
