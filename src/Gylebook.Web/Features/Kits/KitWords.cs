using Gylebook.Pictures;
using Gylebook.Recipes.Kits;

namespace Gylebook.Web.Features.Kits;

/// <summary>A kit in one line.</summary>
public static class KitWords
{
    /// <summary>Kettle, how grain and wort part, fermenter, packages.</summary>
    public static string Of(Kit kit, Shown shown)
    {
        string mash = (kit.Tun, kit.Bag) switch
        {
            (not null, not null) => "tun and bag",
            (not null, null) => "tun",
            (null, not null) => "bag",
            _ => "no mash",
        };
        string packages = string.Join(", ", kit.Packages.Select(package => package.Kind).Distinct(StringComparer.Ordinal));
        return $"{shown.Litres(kit.Kettle.Brim.Value.Litres)} kettle, {mash}, {shown.Litres(kit.Fermenter.Brim.Value.Litres)} fermenter, {packages}";
    }
}
