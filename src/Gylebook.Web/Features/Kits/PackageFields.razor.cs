using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Store;

namespace Gylebook.Web.Features.Kits;

/// <summary>What the beer can be packaged in.</summary>
public sealed partial class PackageFields
{
    private const string List = "packages";

    private static readonly Caution Rated = new(
        "pressure.rated", Stage.Package,
        "The weakest rated part sets the pressure. Leave a rating empty rather than guess it; read it on the bottle, keg or valve.",
        "common practice, no source");

    private Task AddAsync() => Desk.EditAsync(draft =>
    {
        string kind = FreeName.Of("bottle", Enumerable.Range(0, draft.CountOf(List)).Select(i => draft[Invariant($"{List}[{i}].kind")] ?? ""));
        return draft.AddItem(List, ("kind", kind), ("brim", "0.5 L"));
    });
}
