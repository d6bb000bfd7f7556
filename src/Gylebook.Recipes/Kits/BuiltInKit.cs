using Gylebook.Recipes.Data;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Kits;

/// <summary>The kit a forecast uses when nobody has described their own: Lantern Shed, <c>samples/kits/lantern-shed.json</c>.</summary>
public static class BuiltInKit
{
    private static readonly Lazy<Kit> Shed = new(() => KitFile.Read(ReferenceData.Text("kits/lantern-shed.json")).Value!);

    /// <summary>The kit.</summary>
    public static Kit LanternShed => Shed.Value;
}
