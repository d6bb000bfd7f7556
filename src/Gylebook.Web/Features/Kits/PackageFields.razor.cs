using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Kits;

/// <summary>What the beer can be packaged in.</summary>
public sealed partial class PackageFields
{
    private static readonly Caution Rated = new(
        "pressure.rated", Severity.Warning, Stage.Package,
        "The weakest rated part sets the pressure. Leave a rating empty rather than guess it; read it on the bottle, keg or valve.",
        "common practice, no source");

    private Task Change(int at, Func<PackageKind, PackageKind> change) =>
        Put(Kit with { Packages = [.. Kit.Packages.Select((package, i) => i == at ? change(package) : package)] });

    private Task Named(int at, string? kind) =>
        string.IsNullOrWhiteSpace(kind) ? Task.CompletedTask : Change(at, package => package with { Kind = kind.Trim() });

    private Task Remove(int at) => Put(Kit with { Packages = [.. Kit.Packages.Where((_, i) => i != at)] });

    private Task Add()
    {
        string kind = Enumerable.Range(1, Kit.Packages.Count + 1)
            .Select(n => n == 1 ? "bottle" : $"bottle {n.ToString(System.Globalization.CultureInfo.InvariantCulture)}")
            .First(name => Kit.Packages.All(package => package.Kind != name));
        Entered<VolumeAt20C> half = new(VolumeAt20C.FromLitres(0.5), "0.5 L");
        return Put(Kit with { Packages = [.. Kit.Packages, new PackageKind(kind, half, null, null, null)] });
    }
}
