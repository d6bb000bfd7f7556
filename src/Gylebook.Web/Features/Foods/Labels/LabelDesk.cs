using Gylebook.Forecast.Report.Labels;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A food sheet on the desk: opened from the book or begun, changed, saved as one goes, and reckoned.</summary>
internal sealed class LabelDesk
{
    private readonly Book _book;
    private readonly TimeProvider _clock;
    private int _turn;

    private LabelDesk(Book book, TimeProvider clock, OpenSheet<FoodRow> sheet)
    {
        (_book, _clock) = (book, clock);
        Sheet = sheet;
    }

    /// <summary>The sheet in the book.</summary>
    public OpenSheet<FoodRow> Sheet { get; }

    /// <summary>The food; null when the sheet is not there or cannot be read.</summary>
    public FoodSheet? Food { get; private set; }

    /// <summary>The text of a sheet that cannot be read.</summary>
    public string? Unread { get; private init; }

    /// <summary>What the label means and does; null until it has been reckoned.</summary>
    public FoodLabelReport? Report { get; private set; }

    /// <summary>The food as the balance takes it; null while next to nothing is known of it.</summary>
    public FoodMakeup? Makeup { get; private set; }

    /// <summary>What was found, in the sheet or by reckoning.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>Why the panel must be European, when its numbers give that away and it is not taken for one; null otherwise.</summary>
    public string? LooksEuropean { get; private set; }

    /// <summary>When it was last saved, in words; empty before.</summary>
    public string Saved { get; private set; } = "";

    /// <summary>Whose habits it borrows.</summary>
    public FoodFamily Family => FoodFamilies.Find(Food!.Family).Match ?? FoodFamilies.Of("other");

    /// <summary>A new food, in the book from its first change on.</summary>
    public static async Task<LabelDesk> BeginAsync(Book book, TimeProvider clock, PanelStyle style)
    {
        (string name, string id) = await NewFoodName.ForAsync(TimeZoneInfo.ConvertTime(clock.GetUtcNow(), clock.LocalTimeZone), book);
        return new LabelDesk(book, clock, new OpenSheet<FoodRow>(book.Foods, null, 0))
        {
            Food = new FoodSheet { Id = id, Name = name, Family = "other", Label = new LabelPanel { Style = style } },
        };
    }

    /// <summary>A sheet of the book; without food and text when it has none of that id.</summary>
    public static async Task<LabelDesk> OpenAsync(Book book, TimeProvider clock, Guid id)
    {
        Sheet? stored = await book.Foods.FindAsync(id);
        Reading<FoodSheet>? reading = stored is null ? null : FoodFile.Read(stored.Document);
        return new LabelDesk(book, clock, new OpenSheet<FoodRow>(book.Foods, id, stored?.Revision ?? 0))
        {
            Food = reading?.Value,
            Unread = reading is { Value: null } ? stored!.Document : null,
            Findings = reading?.Findings ?? [],
        };
    }

    /// <summary>Changes the food and saves it.</summary>
    public Task EditAsync(Func<FoodSheet, FoodSheet> change)
    {
        Food = change(Food!);
        return SaveAsync(Sheet.SaveAsync);
    }

    /// <summary>Names the food; the first name somebody gives it makes its id.</summary>
    public async Task NameAsync(string name)
    {
        string id = NewFoodName.IsSuggested(Food!) ? await NewFoodName.FreeIdAsync(name, _book) : Food!.Id;
        await EditAsync(food => food with { Name = name, Id = id });
    }

    /// <summary>Ends a clash in favour of what stands here.</summary>
    public Task KeepMineAsync() => SaveAsync(Sheet.OverwriteAsync);

    /// <summary>Reckons what the label means and does, off the page's own thread; of several answers the last asked for counts.</summary>
    public async Task ReckonAsync(FoodQuestion asked)
    {
        if (Food is not { } food)
        {
            return;
        }

        int turn = ++_turn;
        var amount = asked.AmountOf(Family);
        KitInUse kit = await KitInUse.FindAsync(_book);
        (MadeUpFood made, FoodLabelReport report) = await Task.Run(() =>
        {
            MadeUpFood makeup = FoodMakeups.From(food);
            return (makeup, FoodLabelReport.Of(food.Id, food.Name, makeup, amount, asked.Into, [asked.At, asked.Beside], kit.Own));
        });
        if (turn == _turn)
        {
            Findings = [.. report.Findings.Select(finding => Here(finding, food.Id))];
            (Makeup, Report) = (made.Makeup, report with { Findings = Findings });
            LooksEuropean = food.Label is { Style: PanelStyle.Us } panel && PanelStyleGuess.Of(panel.AsPrinted()) is { Style: PanelStyle.Eu } guess
                ? guess.Reason
                : null;
        }
    }

    /// <summary>A finding about this food names its file as well; on this page that is plain.</summary>
    private static Finding Here(Finding finding, string id)
    {
        string file = $"foods/{id}.";
        return finding.Where.StartsWith(file, StringComparison.Ordinal) ? finding with { Where = finding.Where[file.Length..] } : finding;
    }

    private async Task SaveAsync(Func<Func<string>, Task> save)
    {
        await save(() => FoodFile.Write(Food!));
        Saved = Sheet.Clash is null ? $"Saved {Instants.Clock(_clock.GetUtcNow(), _clock)}" : "Not saved: this food was changed elsewhere";
    }
}
