using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Kits;

/// <summary>The kit a forecast uses when nobody has described their own: Lantern Shed, <c>samples/kits/lantern-shed.json</c>.</summary>
public static class BuiltInKit
{
    // What is written on the shed's lids and labels is the shed's own.
    private static readonly Lazy<Kit> Shed = new(() => KitFile.Read(ReferenceData.Text("kits/lantern-shed.json")).Value! with
    {
        Vessels = [],
        Cleaning = null,
    });

    /// <summary>The kit.</summary>
    public static Kit LanternShed => Shed.Value;

    /// <summary>What others' mashes reach, until a brewer has measured their own.</summary>
    public static StartingValue UsualConversion => StartingValues.Of("kit.conversion");

    /// <summary>A kit to begin one's own with: the built-in vessels, and no better a mash than is usual.</summary>
    public static Kit New(string name) => LanternShed with
    {
        Name = name,
        Conversion = new(Fraction.FromRatio(UsualConversion.Value), Invariant($"{100 * UsualConversion.Value:0.#} %")),
    };
}
