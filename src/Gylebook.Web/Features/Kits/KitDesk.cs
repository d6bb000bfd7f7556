using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Features.Kits;

/// <summary>A kit on the desk.</summary>
public sealed class KitDesk : DraftDesk<FileDraft<Kit>>
{
    private IReadOnlyList<Finding> _findings = [];

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    public KitDesk(OpenDraft<FileDraft<Kit>> draft, Shown shown)
        : base(draft, shown) => Reckon(Now);

    /// <summary>The kit as it could be read last; null until it could for the first time.</summary>
    public Kit? Kit { get; private set; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _findings;

    /// <summary>A kit's text as a draft.</summary>
    /// <exception cref="ArgumentException">Not a file at all.</exception>
    public static FileDraft<Kit> TextOf(string text) => FileDraft.Of(KitFile.Form, text);

    /// <inheritdoc/>
    private protected override void Reckon(FileDraft<Kit> text)
    {
        Kit = text.Value ?? Kit;

        // What was taken for usual is said by the fields themselves.
        IEnumerable<Finding> ofText = text.Findings.Where(finding => finding.Severity != Severity.Note);
        _findings = [.. ofText, .. text.Value is { } kit ? KitCheck.Findings(kit) : []];
    }
}
