using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Salts into the packaged beer, found last: for the same wishes, against the ions that liquor, mash and kettle brought.</summary>
/// <remarks>What the boil thickens and what malt brings of its own is not counted: the forecast's ions of the glass tell the first.</remarks>
internal static class PackageTreatment
{
    /// <summary>The salts, and the ions then.</summary>
    public static TreatedLiquor Treat(WaterPlan plan, IonProfile arriving, double? litres, List<Finding> findings)
    {
        OfferedSalt[] offers = [.. plan.Salts.Where(offer => offer.Into == LiquorPlace.Package)];
        if (offers.Length == 0)
        {
            return TreatedLiquor.None;
        }

        if (litres is not double packaged)
        {
            findings.Add(new("key.missing", Severity.Error, "package", "this key is missing, and no recipe says how much is packaged; salts into the package need it"));
            return TreatedLiquor.None;
        }

        SaltSolution solution = DoseFinder.Find(plan, arriving, packaged, offers, mayDilute: false);
        IReadOnlyList<SaltDose> salts = DoseFinder.Doses(solution, packaged);
        IonProfile ions = salts.Aggregate(arriving, (sum, dose) =>
            sum + dose.Salt.Added(Mass.FromGrams(dose.Grams), VolumeAt20C.FromLitres(packaged)));
        return new(packaged, 0, salts, [], ions, ions, null) { Misses = solution.Misses };
    }
}
