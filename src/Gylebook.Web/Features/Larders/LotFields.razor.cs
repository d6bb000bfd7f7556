using System.Globalization;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Drafting;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Larders;

/// <summary>The lots of a sheet, whatever it is of.</summary>
/// <typeparam name="TDraft">Its draft.</typeparam>
public sealed partial class LotFields<TDraft>
{
    private const string List = "lots";

    /// <summary>The desk the sheet lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk<TDraft> Desk { get; set; }

    /// <summary>Today.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>A lot bought today, called by the day until somebody says what stands on the sack.</summary>
    private Task AddAsync() => Desk.EditAsync(draft =>
    {
        string today = Clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string name = FreeName.Of(today, Enumerable.Range(0, draft.CountOf(List)).Select(i => draft[Invariant($"{List}[{i}].lot")] ?? ""));
        return draft.AddItem(List, ("lot", name), ("bought", today));
    });
}
