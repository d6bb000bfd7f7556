using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Store;

namespace Gylebook.Web.Features.Kits;

/// <summary>Fermenters and kegs by name, and how long cleaner and sanitiser stay on.</summary>
public sealed partial class VesselFields
{
    private const string List = "vessels";

    private static readonly Caution Never = new(
        "clean.mixed", Stage.Cast,
        "Never mix cleaners: acid and chlorine together make a poisonous gas. Eyes and hands covered; strength and contact time are those of each product's own label.",
        "common practice, no source");

    private Task AddAsync(string kind, string called) => Desk.EditAsync(draft =>
    {
        string name = FreeName.Of(called, Enumerable.Range(0, draft.CountOf(List)).Select(i => draft[Invariant($"{List}[{i}].name")] ?? ""));
        return draft.AddItem(List, ("name", name), ("kind", kind));
    });
}
