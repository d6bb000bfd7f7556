namespace Gylebook.Recipes.Checks;

/// <summary>How much beer is wanted, and how lively.</summary>
internal static class PackageCheck
{
    private const double LeastLitres = 0.1;
    private const double MostLitres = 2000;
    private const double MostVolumes = 6;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        var package = recipe.Package;
        if (package.Volume.Value.Litres is < LeastLitres or > MostLitres)
        {
            findings.Error(
                "package.volume", "package.volume",
                Invariant($"{package.Volume}; must be {LeastLitres} L to {MostLitres} L, the sizes these models were made for"),
                package.Volume.Text, Invariant($"{LeastLitres} L to {MostLitres} L"));
        }

        if (package.Carbonation is { } carbonation && carbonation.Value.Volumes > MostVolumes)
        {
            findings.Error(
                "package.carbonation", "package.carbonation",
                Invariant($"{carbonation}; must be at most {MostVolumes} volumes: bottles and kegs burst long before more is of use"),
                carbonation.Text, Invariant($"{MostVolumes} volumes"));
        }
    }
}
