using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using Gylebook.Web.Drafting;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A food sheet on the desk: its label as typed, what that means, and what that much of the food does.</summary>
/// <remarks>When the text cannot be read, what was last readable stays in view and <see cref="IsStale"/> says so.</remarks>
public sealed class LabelDesk : DraftDesk<FileDraft<FoodSheet>>
{
    /// <summary>The part of a food file that holds the panel.</summary>
    public const string Panel = "label";

    private const string StylePath = $"{Panel}.style";
    private const string NamePath = "name";

    private readonly ReckoningDoor _door;
    private IReadOnlyList<Finding> _findings = [];
    private IReadOnlySet<string> _taken;
    private Kit? _kit;
    private object? _naming;

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="taken">Ids that other foods of the book have.</param>
    /// <param name="kit">The kit in use, for the height it stands at; null for the sea's.</param>
    /// <param name="asked">What is asked of the food.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="door">What its reckonings go through; null for one that tells nobody.</param>
    public LabelDesk(
        OpenDraft<FileDraft<FoodSheet>> draft, IReadOnlySet<string> taken, Kit? kit, FoodQuestion asked, Shown shown, ReckoningDoor? door = null)
        : base(draft, shown)
    {
        (_taken, _kit, Asked, _door) = (taken, kit, asked, door ?? new ReckoningDoor());
        Reckon(Now);
    }

    /// <summary>The food as it could be read last; null until it could for the first time.</summary>
    public FoodSheet? Food { get; private set; }

    /// <summary>Whose habits it borrows.</summary>
    public FoodFamily Family => FoodFamilies.Find(TextAt("family") ?? "").Match ?? FoodFamilies.Of("other");

    /// <summary>What is asked of the food.</summary>
    public FoodQuestion Asked { get; private set; }

    /// <summary>The amount asked for, or the family's usual one.</summary>
    public Entered<Mass> Amount => Asked.AmountOf(Family);

    /// <summary>What the label means and does; null until it could be reckoned.</summary>
    public FoodLabelReport? Report { get; private set; }

    /// <summary>The food as the balance takes it; null while next to nothing is known of it.</summary>
    public FoodMakeup? Makeup { get; private set; }

    /// <summary>Whether the report is of an earlier text, because the present one cannot be read.</summary>
    public bool IsStale { get; private set; }

    /// <summary>Why the panel must be European, when its numbers give that away and it is not taken for one; null otherwise.</summary>
    public string? LooksEuropean { get; private set; }

    /// <summary>Whether nobody has named it yet.</summary>
    public bool IsUnnamed => NewFoodName.IsSuggested(Now);

    /// <summary>Whose law the panel follows; where the file does not say, as the reader's shops have it.</summary>
    public PanelStyle Style => Now.Value?.Label?.Style ?? TextAt(StylePath) switch
    {
        "US" => PanelStyle.Us,
        "EU" => PanelStyle.Eu,
        _ => UsualStyle(Shown),
    };

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _findings;

    /// <summary>A food sheet's text as a draft.</summary>
    /// <exception cref="ArgumentException">Not a file at all.</exception>
    public static FileDraft<FoodSheet> TextOf(string text) => FileDraft.Of(FoodFile.Form, text);

    /// <summary>Who weighs in pounds or measures in US gallons shops where panels are American.</summary>
    public static PanelStyle UsualStyle(Shown shown) =>
        shown.Units is { Mass: MassUnit.Pound } or { Volume: VolumeUnit.UsGallon } ? PanelStyle.Us : PanelStyle.Eu;

    /// <summary>Changes the text of a field.</summary>
    /// <param name="path">Which field.</param>
    /// <param name="change">The text after, for the text before; an empty one for none.</param>
    public Task ChangeAsync(string path, Func<string, string> change) => EditAsync(draft => Put(draft, path, change(draft[path] ?? "")));

    /// <summary>Says whose law the panel follows.</summary>
    public Task SetStyleAsync(PanelStyle style) => ChangeAsync(StylePath, _ => WordOf(style));

    /// <summary>Asks something else of the food.</summary>
    public void Ask(FoodQuestion asked)
    {
        Asked = asked;
        ReckonAgain();
    }

    /// <summary>Another kit is in use, or other foods stand in the book.</summary>
    /// <param name="kit">The kit in use; null for none.</param>
    /// <param name="taken">Ids that other foods of the book have.</param>
    public void Use(Kit? kit, IReadOnlySet<string> taken)
    {
        (_kit, _taken) = (kit, taken);
        ReckonAgain();
    }

    /// <summary>Shows what a food that could be read once meant, until this one can be read.</summary>
    public void Recall(FoodSheet earlier)
    {
        Food ??= earlier;
        ReckonAgain();
    }

    /// <inheritdoc/>
    public override void Blur(object field)
    {
        base.Blur(field);
        _naming = field == _naming ? null : _naming;
    }

    /// <inheritdoc/>
    public override Task CommitAsync(object field, string path, string? text)
    {
        if (path != NamePath || string.IsNullOrWhiteSpace(text) || !(IsUnnamed || field == _naming))
        {
            return base.CommitAsync(field, path, text);
        }

        // The first name makes the id, and a name is typed with pauses: until the field is left it is the first name still.
        _naming = field;
        string id = NewFoodName.IdOf(text, _taken);
        return DoAsync(Draft.EditFocusedAsync(field, draft => draft.InTurn(food => food.Put(NamePath, text), food => food.Put("id", id))));
    }

    /// <summary>A figure of a panel whose style nobody has said says it too: without one a file cannot be read.</summary>
    private protected override DraftEdit<FileDraft<FoodSheet>>? Put(FileDraft<FoodSheet> draft, string path, string? text)
    {
        bool lacksStyle = path.StartsWith($"{Panel}.", StringComparison.Ordinal) && path != StylePath && draft[StylePath] is null && !string.IsNullOrWhiteSpace(text);
        return lacksStyle ? draft.InTurn(food => food.Put(path, text), food => food.Put(StylePath, WordOf(UsualStyle(Shown)))) : draft.Put(path, text);
    }

    /// <inheritdoc/>
    private protected override void Reckon(FileDraft<FoodSheet> text)
    {
        IsStale = text.Value is null;
        Food = text.Value ?? Food;
        Finding? problem = null;
        Answer? answer = Food is { } food ? _door.Reckon(() => Answer.Of(food, Amount, Asked, _kit), () => $"{text.Text}\n{Asked}", out problem) : null;
        (Makeup, Report, LooksEuropean) = (answer?.Made.Makeup, answer?.Report, answer?.LooksEuropean);
        IEnumerable<Finding> ofAnswer = IsStale ? [] : answer?.Report.Findings ?? [];
        IEnumerable<Finding> found = [.. text.Findings, .. ofAnswer, .. problem is null ? (Finding[])[] : [problem]];
        _findings = [.. found.Where(IsTold).Distinct()];
    }

    // What was taken for usual is said by the fields themselves; the style has its own line, and an empty panel needs no scolding.
    private static bool IsTold(Finding finding) => finding.Severity != Severity.Note && finding.Code is not ("label.style" or "food.nothingKnown");

    private static string WordOf(PanelStyle style) => style == PanelStyle.Us ? "US" : "EU";

    private sealed record Answer(MadeUpFood Made, FoodLabelReport Report, string? LooksEuropean)
    {
        public static Answer Of(FoodSheet food, Entered<Mass> amount, FoodQuestion asked, Kit? kit)
        {
            MadeUpFood made = FoodMakeups.From(food);
            FoodLabelReport report = FoodLabelReport.Of(food.Id, food.Name, made, amount, asked.Into, [asked.At, asked.Beside], kit);
            string? european = food.Label is { Style: PanelStyle.Us } panel && PanelStyleGuess.Of(panel.AsPrinted()) is { Style: PanelStyle.Eu } guess ? guess.Reason : null;
            return new Answer(made, report with { Findings = [.. report.Findings.Select(finding => Here(finding, food.Id))] }, european);
        }

        /// <summary>A finding about this food names its file as well; on this page that is plain.</summary>
        private static Finding Here(Finding finding, string id)
        {
            string file = $"foods/{id}.";
            return finding.Where.StartsWith(file, StringComparison.Ordinal) ? finding with { Where = finding.Where[file.Length..] } : finding;
        }
    }
}
