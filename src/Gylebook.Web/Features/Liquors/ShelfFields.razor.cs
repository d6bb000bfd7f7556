using Gylebook.Recipes.Editing;
using Gylebook.Science.Water;
using Gylebook.Web.Features.Liquors.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>What is on the brewer's shelf.</summary>
public sealed partial class ShelfFields
{
    private static readonly PrintedAs GramsPerLitre = new("g/L", "most", "g/L");
    private static readonly (string, string)[] Places = [("liquor", "mash and sparge"), ("mash", "the mash"), ("sparge", "the sparge"), ("kettle", "the kettle"), ("package", "the package")];
    private static readonly (string, string) Salt = ("salts", "salt");
    private static readonly (string, string) Acid = ("acids", "acid");

    private readonly string _saltId = FieldIds.Next();
    private readonly string _acidId = FieldIds.Next();

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    private IEnumerable<string> SaltsLeft => BrewingSalts.All.Select(salt => salt.Name).Except(Listed("salts", "salt"), StringComparer.OrdinalIgnoreCase);

    private IEnumerable<string> AcidsLeft => AcidAsSold.Shelf.Select(acid => acid.Name).Except(Listed("acids", "acid"), StringComparer.OrdinalIgnoreCase);

    private static bool IsCalciumChloride(string name) => name.StartsWith("calcium chloride", StringComparison.OrdinalIgnoreCase);

    private bool Has(string item, params string[] keys) => keys.Any(key => Desk.TextAt($"{item}.{key}") is not null);

    private IEnumerable<string> Listed(string list, string key) =>
        Enumerable.Range(0, Desk.Now.CountOf(list)).Select(i => Desk.TextAt(Invariant($"{list}[{i}].{key}")) ?? "");

    private Task AddAsync(ChangeEventArgs change, (string List, string Key) kind) => change.Value?.ToString() is { Length: > 0 } name
        ? Desk.EditAsync(draft => draft.AddItem(kind.List, (kind.Key, name)))
        : Task.CompletedTask;
}
