using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Features.Larders;

/// <summary>A sheet of the larder on the desk.</summary>
public sealed class LarderDesk : DraftDesk<FileDraft>
{
    private IReadOnlyList<Finding> _findings = [];

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    public LarderDesk(OpenDraft<FileDraft> draft, Shown shown)
        : base(draft, shown) => Reckon(Now);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _findings;

    /// <inheritdoc/>
    private protected override void Reckon(FileDraft text) => _findings = text.Findings;
}
