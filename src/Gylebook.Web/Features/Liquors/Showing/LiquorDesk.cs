using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Drafting;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>A water plan on the desk: the text a tab has open, and what comes of it.</summary>
/// <remarks>When the text cannot be read, what was last readable stays in view and <see cref="IsStale"/> says so.</remarks>
public sealed class LiquorDesk : DraftDesk<WaterDraft>
{
    private readonly ReckoningDoor _door;
    private IReadOnlyList<Finding> _findings = [];

    /// <summary>A desk with that plan on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="brewed">The recipe it is for; null for none.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="door">What its reckonings go through; null for one that tells nobody.</param>
    public LiquorDesk(OpenDraft<WaterDraft> draft, RecipeToBrew? brewed, Shown shown, ReckoningDoor? door = null)
        : base(draft, shown)
    {
        (Brewed, _door) = (brewed, door ?? new ReckoningDoor());
        Reckon(Now);
    }

    /// <summary>The recipe it is for; null for none.</summary>
    public RecipeToBrew? Brewed { get; private set; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _findings;

    /// <summary>What comes of the plan; null until it could be read for the first time.</summary>
    public LiquorOutlook? Outlook { get; private set; }

    /// <summary>Whether the outlook is of an earlier text, because the present one cannot be read.</summary>
    public bool IsStale { get; private set; }

    /// <summary>How often the numbers were reckoned.</summary>
    public int Reckoned { get; private set; }

    /// <summary>The recipe it is for changed, or the kit, or a food in it.</summary>
    public void Brew(RecipeToBrew? brewed)
    {
        Brewed = brewed;
        ReckonAgain();
    }

    /// <inheritdoc/>
    private protected override DraftEdit<WaterDraft>? Put(WaterDraft draft, string path, string? text) => draft.Type(path, text);

    /// <inheritdoc/>
    private protected override void Reckon(WaterDraft text)
    {
        Reckoned++;
        Finding? problem = null;
        LiquorOutlook? outlook = text.Plan is { } plan ? _door.Reckon(() => LiquorOutlook.Of(plan, Brewed), () => $"{text.Text}\n{Brewed?.Recipe}", out problem) : null;
        _door.Note(outlook?.Brew?.Failure, () => $"{text.Text}\n{Brewed?.Recipe}");
        IsStale = outlook is null;
        Outlook = outlook ?? Outlook;
        IEnumerable<Finding> found = problem is null ? outlook?.Findings ?? [] : [problem];
        _findings = [.. text.Findings.Concat(found).Distinct()];
    }
}
