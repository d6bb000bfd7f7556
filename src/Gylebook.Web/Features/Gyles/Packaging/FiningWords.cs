using Gylebook.Pictures;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>Doses of finings, told and read.</summary>
public static class FiningWords
{
    /// <summary>A usual dose for some litres: "1.0 to 4.8 g".</summary>
    public static string Dose(Fining fining, double litres, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(fining);
        ArgumentNullException.ThrowIfNull(shown);
        (double low, double high) = fining.DoseFor(litres);
        return fining.Unit == "g" ? $"{shown.Kilograms(low / 1000)} to {shown.Kilograms(high / 1000)}." : Invariant($"{low:0.#} to {high:0.#} mL.");
    }

    /// <summary>A dose as somebody typed it, in the fining's own unit; null, and why, where it is none.</summary>
    public static (double? Dose, string Problem) Read(Fining fining, string typed)
    {
        ArgumentNullException.ThrowIfNull(fining);
        string problem;
        return fining.Unit == "g"
            ? UnitTable.TryParse(typed, out Entered<Mass> mass, out problem) ? (1000 * mass.Value.Kilograms, "") : (null, problem)
            : UnitTable.TryParse(typed, out Entered<VolumeAt20C> volume, out problem) ? (1000 * volume.Value.Litres, "") : (null, problem);
    }
}
