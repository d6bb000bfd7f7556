using Gylebook.Recipes;
using Gylebook.Recipes.Kits;

namespace Gylebook.Gyles.Vessels;

/// <summary>Which vessels a gyle is to stand in, and for which days.</summary>
/// <param name="Fermenter">Name of the fermenter; null for none.</param>
/// <param name="Keg">Name of the keg; null for none.</param>
public sealed record VesselPlan(string? Fermenter, string? Keg)
{
    /// <summary>Whether a recipe's beer goes into kegs: its package is called one.</summary>
    public static bool WantsKeg(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return PackageKind.IsKegCalled(recipe.Package.In);
    }

    /// <summary>The stays: in the fermenter from the day of the cast to the day of packaging, in the keg from then until somebody says that it is empty.</summary>
    /// <param name="cast">The day of brewing.</param>
    /// <param name="packaged">The day of packaging; null where the recipe says no rest of its fermentation.</param>
    public IEnumerable<VesselStay> Stays(DateOnly cast, DateOnly? packaged)
    {
        if (Fermenter is { } fermenter)
        {
            yield return new(VesselKind.Fermenter, fermenter, cast, packaged);
        }

        if (Keg is { } keg)
        {
            yield return new(VesselKind.Keg, keg, packaged ?? cast, null);
        }
    }

    /// <summary>The same with the names as the kit spells them.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="recipe">The recipe.</param>
    /// <param name="findings">Takes what cannot be.</param>
    public VesselPlan In(Kit kit, Recipe recipe, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(findings);
        if (Keg is { } keg && !WantsKeg(recipe))
        {
            findings.Add(new("vessel.noKeg", Severity.Error, "keg", $"\"{keg}\"; the recipe is packaged in {recipe.Package.In}, so that no keg is filled", keg));
        }

        return new(Named(Fermenter, VesselKind.Fermenter, "fermenter", kit, findings), Named(Keg, VesselKind.Keg, "keg", kit, findings));
    }

    private static string? Named(string? name, VesselKind kind, string field, Kit kit, ICollection<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            return null;
        }

        Vessel[] known = [.. kit.Vessels.Where(vessel => vessel.Kind == kind)];
        if (Array.Find(known, vessel => string.Equals(vessel.Name, name.Trim(), StringComparison.OrdinalIgnoreCase)) is { } meant)
        {
            return meant.Name;
        }

        string has = known.Length > 0 ? $"it has {string.Join(", ", known.Select(vessel => vessel.Name))}" : "it names none: add them to the kit";
        findings.Add(new("vessel.unknown", Severity.Error, field, $"\"{name.Trim()}\" is no {field} of the kit {kit.Name}; {has}", name.Trim(), string.Join(", ", known.Select(vessel => vessel.Name))));
        return null;
    }
}
